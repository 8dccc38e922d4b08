/** Other formulas for the vapour pressure, each within the difference that is known of it. */
import psychrolib from 'psychrolib';
import { expect, it } from 'vitest';
import * as climate from '../../src/climate/index.ts';

const overWater = (t: number) =>
  climate.saturationPressureOverWater({ temperature: { value: t, unit: 'degC' }, unit: 'hPa' }).value;

const OTHERS: Readonly<Record<string, (t: number) => number>> = {
  'WMO-No. 8': (t) => 6.112 * Math.exp((17.62 * t) / (243.12 + t)),
  'Buck 1996': (t) => 6.1121 * Math.exp(((18.678 - t / 234.5) * t) / (257.14 + t)),
  'Buck 1981': (t) => 6.1121 * Math.exp((17.502 * t) / (240.97 + t)),
  'Hyland and Wexler 1983': (t) => psychrolib.GetSatVapPres(t) / 100,
};

const WRITTEN_DOWN: readonly [name: string, t: number, hPa: number][] = [
  ['WMO-No. 8', 0, 6.112],
  ['WMO-No. 8', 15, 17.01672],
  ['WMO-No. 8', 20, 23.32596],
  ['WMO-No. 8', 30, 42.33724],
  ['Buck 1996', 10, 12.2786],
  ['Buck 1996', 15, 17.05173],
  ['Buck 1996', 30, 42.45126],
  ['Buck 1996', 40, 73.8236],
  ['Buck 1981', 15, 17.04571],
  ['Buck 1981', 20, 23.37282],
  ['Buck 1981', 30, 42.43509],
  ['Hyland and Wexler 1983', 10, 12.27995],
  ['Hyland and Wexler 1983', 40, 73.8346],
];

it.each(WRITTEN_DOWN)('%s gives its own figure at %d °C', (name, t, hPa) => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  expect(OTHERS[name]?.(t)).toBeCloseTo(hPa, 4);
});

it.each([
  ['WMO-No. 8', 0.00325],
  ['Buck 1996', 0.0005],
  ['Buck 1981', 0.0015],
  ['Hyland and Wexler 1983', 0.0003],
] as const)('%s differs from ours by at most %d over 0.5 to 50 °C', (name, most) => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  for (let t = 0.5; t <= 50; t += 0.5) {
    expect(Math.abs((OTHERS[name]?.(t) ?? NaN) / overWater(t) - 1)).toBeLessThan(most);
  }
});

it('both curves over water meet where they change over', () => {
  const [below, above] = [overWater(-0.0088 - 1e-9), overWater(-0.0088 + 1e-9)];
  expect(above).toBeGreaterThan(below);
  expect(above / below - 1).toBeLessThan(1e-9);
});

it('water and ice have one vapour pressure at the triple point', () => {
  const ice = climate.saturationPressureOverIce({ temperature: { value: 0.01, unit: 'degC' }, unit: 'hPa' });
  expect(Math.abs(ice.value / overWater(0.01) - 1)).toBeLessThan(1e-5);
});

it('refuses temperatures that the curves do not reach', () => {
  expect(() => overWater(374)).toThrow(/temperature/);
  expect(() =>
    climate.saturationPressureOverIce({ temperature: { value: 1, unit: 'degC' }, unit: 'Pa' }),
  ).toThrow(/temperature/);
  expect(() =>
    climate.frostPoint({
      air: { value: 20, unit: 'degC' },
      relativeHumidity: { value: 50, unit: '%' },
      unit: 'degC',
    }),
  ).toThrow(/relativeHumidity must be air dry enough to give frost rather than dew/);
});
