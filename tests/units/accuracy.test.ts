/** The fast route against exact fractions, for every pair of units. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/convert.ts';
import { kinds, pairs, exactly } from '../support/definitions.ts';
import { decimal, double, minus, toNumber, ulpsOff } from '../support/rational.ts';

const go = (value: number, from: string, to: string) =>
  convert({ quantity: { value, unit: from as 'm' }, unit: to as 'm' }).value;

/** Doubles of every size that a floor and a laboratory can ask for, all bits of them used. */
const values = fc
  .tuple(fc.double({ min: 1, max: 2, noNaN: true }), fc.integer({ min: -40, max: 40 }), fc.boolean())
  .map(([part, power, below]) => (below ? -1 : 1) * part * 2 ** power);

describe.each(pairs.filter(({ name }) => name !== 'temperature'))('$from to $to', ({ from, to }) => {
  it('is within 3 units in the last place', () => {
    fc.assert(
      fc.property(values, (value) => {
        expect(ulpsOff(go(value, from, to), exactly(double(value), from, to))).toBeLessThanOrEqual(3);
      }),
      { numRuns: 60, seed: 11 },
    );
  });
});

/** Doubles so large that base units may have no room for them, and as small as the digits of a double allow. */
const extremes = fc
  .tuple(
    fc.double({ min: 1, max: 2, noNaN: true }),
    fc.oneof(fc.integer({ min: -960, max: -900 }), fc.integer({ min: 900, max: 960 })),
  )
  .map(([part, power]) => part * 2 ** power);

it('is as near at either end of what doubles can hold', () => {
  const scaled = pairs.filter(({ name }) => name !== 'temperature');
  fc.assert(
    fc.property(fc.constantFrom(...scaled), extremes, ({ from, to }, value) => {
      expect(ulpsOff(go(value, from, to), exactly(double(value), from, to))).toBeLessThanOrEqual(3);
    }),
    { numRuns: 20_000, seed: 13 },
  );
});

describe.each(pairs.filter(({ name }) => name === 'temperature'))('$from to $to', ({ from, to }) => {
  it('is within 2e-13 K from −100 to 1000 °C', () => {
    const step = to === 'degF' ? 5 / 9 : 1;
    fc.assert(
      fc.property(fc.double({ min: -100, max: 1000, noNaN: true }), (celsius) => {
        const value = go(celsius, 'degC', from);
        const off = toNumber(minus(double(go(value, from, to)), exactly(double(value), from, to)));
        expect(Math.abs(off) * step).toBeLessThanOrEqual(2e-13);
      }),
      { numRuns: 5000, seed: 11 },
    );
  });
});

it('from °F to K is as near to the digits typed as doubles of that size allow', () => {
  const decimals = fc.tuple(fc.integer({ min: -148000, max: 1832000 }), fc.integer({ min: 0, max: 3 }));
  fc.assert(
    fc.property(decimals, ([thousandths, places]) => {
      const typed = Number((thousandths / 1000).toFixed(places));
      const off = minus(double(go(typed, 'degF', 'K')), exactly(decimal(typed), 'degF', 'K'));
      // The doubles nearest to the digits and to the answer are off by up to 1.74e-13 K together.
      expect(Math.abs(toNumber(off))).toBeLessThanOrEqual(2.1e-13);
    }),
    { numRuns: 20_000, seed: 11 },
  );
});

it.each(kinds)('$name: the same unit leaves every value untouched', ({ units }) => {
  for (const unit of units) {
    fc.assert(
      fc.property(values.map(Math.abs), (value) => {
        expect(go(value, unit, unit)).toBe(value);
      }),
      { numRuns: 60, seed: 12 },
    );
  }
});

it('holds the perm to its parts: a grain per hour, square foot and inch of mercury', () => {
  const grain_ng = 64798910;
  const inHg_Pa = go(1, 'inHg', 'Pa');
  expect(go(1, 'perm', 'ng/s/m2/Pa')).toBeCloseTo(grain_ng / (3600 * 0.09290304 * inHg_Pa), 12);
});
