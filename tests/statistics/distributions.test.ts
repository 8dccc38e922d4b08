/** Student's and the normal distribution, and tolerance factors, against figures of independent libraries. */
import { describe, expect, it } from 'vitest';
import { gammaTail } from '../../src/statistics/gamma.ts';
import { normalTail } from '../../src/statistics/normal.ts';
import { studentTail } from '../../src/statistics/student.ts';
import { coverageFactor } from '../../src/statistics/coverageFactor.ts';
import { normalToleranceFactor } from '../../src/statistics/normalToleranceFactor.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

type Rows = readonly (readonly number[])[];
const { default: student } = (await import('./data/student.json', { with: { type: 'json' } })) as {
  default: Rows;
};
const { default: oneSided } = (await import('./data/one-sided.json', { with: { type: 'json' } })) as {
  default: Rows;
};

it.each(student)(
  'coverage factor: %s degrees of freedom at %s',
  (degreesOfFreedom = 0, level = 0, factor = 0) => {
    const got = coverageFactor({ confidence: q(level, 'fraction'), degreesOfFreedom });
    expect(Math.abs(got / factor - 1)).toBeLessThanOrEqual(1e-12);
  },
);

it.each(oneSided)(
  'one-sided factor: %s readings, %s with %s',
  (count = 0, share = 0, level = 0, factor = 0) => {
    const got = normalToleranceFactor({
      count,
      share: q(share, 'fraction'),
      confidence: q(level, 'fraction'),
      sides: 'low',
    });
    expect(Math.abs(got / factor - 1)).toBeLessThanOrEqual(1e-9);
  },
);

describe('tails', () => {
  it('of few degrees of freedom have closed forms', () => {
    for (const t of [-40, -3, -0.5, 0, 1e-6, 0.2, 1, 2.5, 12, 1e4]) {
      expect(studentTail(t, 1)).toBeCloseTo(0.5 - Math.atan(t) / Math.PI, 14);
      expect(studentTail(t, 2)).toBeCloseTo(0.5 - t / (2 * Math.sqrt(2 + t * t)), 14);
    }
  });

  it('of many degrees of freedom go over into the normal one', () => {
    for (const t of [-2, 0.1, 1, 3, 6]) {
      expect(studentTail(t, 1e15)).toBeCloseTo(normalTail(t), 14);
      // On both sides of the change from the fraction to the series.
      const [before, after] = [studentTail(t, 9999.999), studentTail(t, 10000.001)];
      expect(Math.abs(after / before - 1)).toBeLessThan(1e-8);
    }
  });

  it('of the gamma distribution have closed forms for whole numbers', () => {
    for (const x of [0, 0.1, 1, 2.9, 3.1, 4, 20, Infinity]) {
      const closed = x === Infinity ? 0 : Math.exp(-x) * (1 + x + (x * x) / 2);
      expect(gammaTail(3, x)).toBeCloseTo(closed, 14);
    }
  });
});

describe('tolerance factors', () => {
  const ask = (count: number, share: number, sides: 'both' | 'low' | 'high') =>
    normalToleranceFactor({ count, share: q(share, '%'), confidence: q(95, '%'), sides });
  it('of one side are refused where they would be below 0', () => {
    // Two readings: Φ(−0.253347 · √2) = 36.006 % of their means lie beyond the point that 60 % are below.
    const two = (confidence: number, sides: 'both' | 'low') => ({
      count: 2,
      share: q(60, '%'),
      confidence: q(confidence, '%'),
      sides,
    });
    expect(refusal(normalToleranceFactor, two(36, 'low'))).toBe('out-of-range confidence');
    expect(normalToleranceFactor(two(37, 'low'))).toBeGreaterThan(0);
    expect(normalToleranceFactor(two(36, 'both'))).toBeGreaterThan(0);
  });
  it('fall towards those of a known distribution', () => {
    expect(ask(1_000_000, 95, 'both')).toBeCloseTo(1.96, 2);
    expect(ask(1_000_000, 95, 'high')).toBeCloseTo(1.645, 2);
    expect(ask(6, 95, 'both')).toBeGreaterThan(ask(7, 95, 'both'));
    expect(ask(6, 95, 'both')).toBeLessThan(ask(6, 97, 'both'));
  });
  it('need two readings', () => {
    const rest = { share: q(95, '%'), confidence: q(95, '%'), sides: 'both' };
    for (const count of [1, 1e6 + 1])
      expect(refusal(normalToleranceFactor, { ...rest, count })).toBe('out-of-range count');
    expect(refusal(normalToleranceFactor, { ...rest, count: 2.5 })).toBe('wrong-type count');
  });
});
