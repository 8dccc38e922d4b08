/** Means and deviations against the certified figures of NIST, and what too few or mixed readings come to. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arithmeticMean } from '../../src/statistics/arithmeticMean.ts';
import type { Quantity } from '../../src/core/quantity.ts';
import { lagOneAutocorrelation } from '../../src/statistics/lagOneAutocorrelation.ts';
import { readingsNeeded } from '../../src/statistics/readingsNeeded.ts';
import { sampleStandardDeviation } from '../../src/statistics/sampleStandardDeviation.ts';
import { studentInterval } from '../../src/statistics/studentInterval.ts';
import { convert } from '../../src/units/convert.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

/** What NIST certifies of a set of readings. */
interface Certified {
  readonly mean: number;
  readonly standardDeviation: number;
  readonly lagOneAutocorrelation: number;
}
const { default: sets } = (await import('./data/nist-strd.json', { with: { type: 'json' } })) as {
  default: Record<string, Certified & { readings: number[] }>;
};
/** The first reading, then 500 pairs about it. */
const alternating = (first: number, low: number, high: number) => [
  first,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
];

/** Relative agreement with the certified deviation and autocorrelation: limited by readings that doubles cannot hold. */
const about = (mean: number): Certified => ({ mean, standardDeviation: 0.1, lagOneAutocorrelation: -0.999 });
const certified: [string, number[], Certified, number][] = [
  ...Object.entries(sets).map(([name, { readings, ...set }]): [string, number[], Certified, number] => [
    name,
    readings,
    set,
    // Michelson's speeds of light are hundredths, which doubles cannot hold: 1e-12 of 300 in 0.08.
    ['Lew', 'NumAcc1'].includes(name) ? 1e-13 : 1e-12,
  ]),
  ['NumAcc2', alternating(1.2, 1.1, 1.3), about(1.2), 1e-13],
  ['NumAcc3', alternating(1000000.2, 1000000.1, 1000000.3), about(1000000.2), 1e-8],
  ['NumAcc4', alternating(10000000.2, 10000000.1, 10000000.3), about(10000000.2), 1e-7],
];

describe.each(certified)('%s', (name, values, set, agreement) => {
  const readings = values.map((value) => q(value, 'mm'));
  it('has the certified mean to 13 digits', () => {
    const got = arithmeticMean({ readings, unit: 'mm' }).value;
    expect(Math.abs(got / set.mean - 1)).toBeLessThanOrEqual(1e-15);
  });
  it('has the certified deviation', () => {
    const got = sampleStandardDeviation({ readings, unit: 'mm' }).value;
    expect(Math.abs(got / set.standardDeviation - 1)).toBeLessThanOrEqual(agreement);
  });
  it('has the certified lag-1 autocorrelation', () => {
    const got = lagOneAutocorrelation({ readings });
    expect(Math.abs(got / set.lagOneAutocorrelation - 1)).toBeLessThanOrEqual(agreement);
  });
});

describe('readings in their order', () => {
  it('that are all alike follow nothing, in one unit or in several', () => {
    const alike = (...readings: Quantity[]) => refusal(lagOneAutocorrelation, { readings });
    expect(alike(q(0.1, 'mm'), q(0.1, 'mm'), q(0.1, 'mm'))).toBe('out-of-range readings');
    expect(alike(q(1, 'ft'), q(0.3048, 'm'), q(12, 'in'))).toBe('out-of-range readings');
    expect(alike(q(32, 'degF'), q(0, 'degC'), q(273.15, 'K'))).toBe('out-of-range readings');
    expect(alike(q(0, 'mm'), q(0, 'mm'), q(0, 'mm'))).toBe('out-of-range readings');
  });
  it('are three or more of one kind', () => {
    expect(() => lagOneAutocorrelation({ readings: [q(1, 'mm'), q(2, 'mm')] })).toThrow(
      '3 readings or more, 1 more than came',
    );
    expect(refusal(lagOneAutocorrelation, { readings: [q(1, 'mm'), q(2, 'mm'), q(3, 'm2')] })).toBe(
      'wrong-unit readings.2',
    );
  });
  it('have one coefficient whatever their unit and size', () => {
    const films = [14, 15, 15, 16, 17, 18, 18, 19];
    const of = (unit: 'mil' | 'um', times = 1) =>
      lagOneAutocorrelation({
        readings: films.map((film) => ({ ...convert({ quantity: q(film * times, 'mil'), unit }) })),
      });
    expect(of('um')).toBeCloseTo(of('mil'), 12);
    expect(of('mil', -1e306)).toBeCloseTo(of('mil'), 12);
    expect(of('mil', 1e-306)).toBeCloseTo(of('mil'), 12);
  });
  it('never follow each other more closely than themselves', () => {
    const reading = fc.double({ min: -1e3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 3, maxLength: 30 }), (values) => {
        fc.pre(Math.max(...values) - Math.min(...values) > 1e-9);
        const coefficient = lagOneAutocorrelation({ readings: values.map((value) => q(value, 'mm')) });
        expect(Math.abs(coefficient)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('too few readings', () => {
  it('are refused with how many are missing', () => {
    expect(() => sampleStandardDeviation({ readings: [q(1, 'mm')], unit: 'mm' })).toThrow(
      '2 readings or more, 1 more than came',
    );
    expect(() => arithmeticMean({ readings: [], unit: 'mm' })).toThrow('1 readings or more');
  });
});

describe('readings in mixed units', () => {
  it('are of one kind', () => {
    expect(arithmeticMean({ readings: [q(1, 'ft'), q(2, 'yd')], unit: 'ft' }).value).toBeCloseTo(3.5, 12);
    expect(refusal(arithmeticMean, { readings: [q(1, 'ft'), q(2, 'ft2')], unit: 'ft' })).toBe(
      'wrong-unit readings.1',
    );
  });

  it('of temperature deviate by a difference', () => {
    const readings = [q(10, 'degC'), q(53.6, 'degF')];
    expect(arithmeticMean({ readings, unit: 'degC' }).value).toBeCloseTo(11, 12);
    expect(sampleStandardDeviation({ readings, unit: 'deltaF' }).value).toBeCloseTo(1.8 * Math.SQRT2, 12);
    expect(refusal(sampleStandardDeviation, { readings, unit: 'degC' })).toBe('wrong-unit unit');
    expect(
      refusal(sampleStandardDeviation, { readings: [q(10, 'degC'), q(1, 'deltaC')], unit: 'deltaC' }),
    ).toBe('wrong-unit readings.1');
  });
});

it('how many readings a temperature needs is told by its differences', () => {
  const asked = (unit: string) => ({
    standardDeviation: q(1.2, unit),
    halfWidth: q(0.8, unit),
    confidence: q(95, '%'),
  });
  expect(readingsNeeded(asked('deltaC'))).toMatchObject({ count: 12 });
  expect(refusal(readingsNeeded, asked('degC'))).toBe('wrong-unit standardDeviation');
});

it('equal readings do not deviate', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.integer({ min: 2, max: 50 }),
      (value, n) => {
        const readings = Array.from({ length: n }, () => q(value, 'mil'));
        const { value: deviation } = sampleStandardDeviation({ readings, unit: 'mil' });
        expect(deviation).toBeLessThanOrEqual(1e-15 * Math.abs(value));
      },
    ),
  );
});

it('the interval of a mean holds it as often as it says', () => {
  // A fixed sequence that fills the unit interval evenly, made normal by sums of twelve.
  let seed = 1;
  const next = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
  const normal = () => Array.from({ length: 12 }, next).reduce((a, b) => a + b) - 6;
  let held = 0;
  for (let run = 0; run < 2000; run++) {
    const readings = Array.from({ length: 4 }, () => q(10 + normal(), 'mil'));
    const { low, high } = studentInterval({ readings, confidence: q(90, '%'), unit: 'mil' });
    if (low.value <= 10 && 10 <= high.value) held++;
  }
  expect(held / 2000).toBeGreaterThan(0.88);
  expect(held / 2000).toBeLessThan(0.92);
});
