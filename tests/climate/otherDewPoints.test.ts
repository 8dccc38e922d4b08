/** Dew points by other formulas: each gives its own figures, and is off by what is known of it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as climate from '../../src/climate/index.ts';
import { dewPointOf, pressureOverWater } from '../../src/climate/vapour.ts';

interface Sweep {
  readonly air_C: number[];
  readonly relativeHumidity_percent: number[];
  readonly dewPoint_C: number[][];
}
const sweep = JSON.parse(readFileSync('tests/climate/data/dew-points.json', 'utf8')) as Sweep;

type Form = (air: number, percent: number) => number;
const magnus =
  (b: number, c: number): Form =>
  (t, percent) => {
    const g = Math.log(percent / 100) + (b * t) / (c + t);
    return (c * g) / (b - g);
  };
/** Dew point over any curve of ln p, by halving. */
const over =
  (lnP: (t: number) => number): Form =>
  (t, percent) => {
    const wanted = lnP(t) + Math.log(percent / 100);
    let [low, high] = [-100, t];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (lnP(middle) < wanted) low = middle;
      else high = middle;
    }
    return high;
  };
const murphyKoop = over((t) => {
  const T = t + 273.15;
  const lnT = Math.log(T);
  const warm = 53.878 - 1331.22 / T - 9.44523 * lnT + 0.014025 * T;
  return 54.842763 - 6763.22 / T - 4.21 * lnT + 0.000367 * T + Math.tanh(0.0415 * (T - 218.8)) * warm;
});
const FORMS = {
  'a degree for 5 %': (t, percent) => t - (100 - percent) / 5,
  'eighth root': (t, percent) => Math.pow(percent / 100, 1 / 8) * (112 + 0.9 * t) + 0.1 * t - 112,
  'WMO-No. 8': magnus(17.62, 243.12),
  'Alduchov and Eskridge 1996': magnus(17.625, 243.04),
  'Buck 1981': magnus(17.502, 240.97),
  'Buck 1996': over((t) => ((18.678 - t / 234.5) * t) / (257.14 + t)),
  'Murphy and Koop 2005': murphyKoop,
} satisfies Record<string, Form>;
type Name = keyof typeof FORMS;

const ours: Form = (air, percent) =>
  climate.dewPoint({
    air: { value: air, unit: 'degC' },
    relativeHumidity: { value: percent, unit: '%' },
    unit: 'degC',
  }).value;

const WRITTEN_DOWN: readonly [air: number, percent: number, figures: Partial<Record<Name, number>>][] = [
  [
    20,
    50,
    {
      'a degree for 5 %': 10,
      'eighth root': 9.211,
      'WMO-No. 8': 9.2552,
      'Alduchov and Eskridge 1996': 9.2611,
      'Buck 1981': 9.2671,
    },
  ],
  [
    10,
    85,
    {
      'a degree for 5 %': 7,
      'eighth root': 7.567,
      'WMO-No. 8': 7.5924,
      'Alduchov and Eskridge 1996': 7.5938,
      'Buck 1981': 7.5961,
    },
  ],
  [
    30,
    40,
    {
      'a degree for 5 %': 18,
      'eighth root': 14.957,
      'WMO-No. 8': 14.9251,
      'Alduchov and Eskridge 1996': 14.933,
      'Buck 1981': 14.9346,
    },
  ],
];
it.each(WRITTEN_DOWN)('at %d °C and %d % each gives its own figure', (air, percent, figures) => {
  for (const [name, figure] of Object.entries(figures)) {
    expect(Math.abs(FORMS[name as Name](air, percent) - figure), name).toBeLessThan(0.001);
  }
});

/** Largest error over air of −20 to 60 °C and 5 to 100 %, against IAPWS-95 and below 0.01 °C Murphy and Koop. */
const largest = (form: Form, keep: (air: number, percent: number) => boolean = () => true) => {
  let most = 0;
  sweep.air_C.forEach((air, i) => {
    sweep.relativeHumidity_percent.forEach((percent, j) => {
      const off = Math.abs(form(air, percent) - (sweep.dewPoint_C[i]?.[j] ?? NaN));
      if (keep(air, percent)) most = Math.max(most, off);
    });
  });
  return most;
};

describe('over air of −20 to 60 °C and 5 to 100 %', () => {
  it.each([
    ['a degree for 5 %', 34.07],
    ['WMO-No. 8', 0.0955],
    ['Alduchov and Eskridge 1996', 0.1091],
    ['Buck 1981', 0.0852],
    ['Buck 1996', 0.1019],
    ['Murphy and Koop 2005', 0.0081],
  ] as const)('%s is off by up to %d K, and ours by far less', (name, most) => {
    const off = largest(FORMS[name]);
    expect(off / most).toBeGreaterThan(0.98);
    expect(off).toBeLessThan(most * 1.01);
    expect(largest(ours)).toBeLessThan(off / 5);
  });

  it('the eighth root stays within 0.12 K from 50 % up for air of 0 to 30 °C, as was known of it', () => {
    const usual = (air: number, percent: number) => air >= 0 && air <= 30 && percent >= 50;
    expect(largest(FORMS['eighth root'], usual)).toBeLessThan(0.12);
  });
});

it('Murphy and Koop, whose range ends at 58.9 °C, carried on to 60 °C is up to 0.0081 K off', () => {
  const beyond = (air: number) => air > 58.85;
  expect(largest(murphyKoop, beyond)).toBeLessThan(0.0082);
  expect(largest(ours, beyond)).toBeLessThan(0.0015);
  expect(Math.abs(murphyKoop(60, 50) - ours(60, 50))).toBeCloseTo(0.0073, 3);
});

it('the closed way back meets the published saturation temperature of 10 MPa', () => {
  const air_C = 350;
  const got = dewPointOf('test', air_C, 1e7 / pressureOverWater(air_C)) + 273.15;
  // Printed to nine digits.
  expect(Math.abs(got - 584.149488)).toBeLessThan(1e-6);
});
