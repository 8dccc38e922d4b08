/** Means and deviations against the certified figures of NIST, and what too few or mixed readings come to. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arithmeticMean } from '../../src/statistics/arithmeticMean.ts';
import { readingsNeeded } from '../../src/statistics/readingsNeeded.ts';
import { sampleStandardDeviation } from '../../src/statistics/sampleStandardDeviation.ts';
import { studentInterval } from '../../src/statistics/studentInterval.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const { default: sets } = (await import('./data/nist-strd.json', { with: { type: 'json' } })) as {
  default: Record<string, { mean: number; standardDeviation: number; readings: number[] }>;
};
/** The first reading, then 500 pairs about it. */
const alternating = (first: number, low: number, high: number) => [
  first,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
];

/** Relative agreement with the certified deviation: limited by readings that doubles cannot hold. */
const certified: [string, number[], number, number, number][] = [
  ...Object.entries(sets).map(
    ([name, { readings, mean, standardDeviation }]): [string, number[], number, number, number] => [
      name,
      readings,
      mean,
      standardDeviation,
      ['Lew', 'NumAcc1'].includes(name) ? 1e-13 : 1e-12,
    ],
  ),
  ['NumAcc2', alternating(1.2, 1.1, 1.3), 1.2, 0.1, 1e-13],
  ['NumAcc3', alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-8],
  ['NumAcc4', alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-7],
];

describe.each(certified)('%s', (name, values, mean, deviation, agreement) => {
  // Michelson's speeds of light are hundredths, which doubles cannot hold: 1e-12 of 300 in 0.08.
  const readings = values.map((value) => q(value, 'mm'));
  it('has the certified mean to 13 digits', () => {
    const got = arithmeticMean({ readings, unit: 'mm' }).value;
    expect(Math.abs(got / mean - 1)).toBeLessThanOrEqual(5e-14);
  });
  it('has the certified deviation', () => {
    const got = sampleStandardDeviation({ readings, unit: 'mm' }).value;
    expect(Math.abs(got / deviation - 1)).toBeLessThanOrEqual(agreement);
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
