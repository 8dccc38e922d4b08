import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { convertExact } from '../../src/exact/convertExact.ts';
import { decimals } from '../../src/exact/exactUnits.ts';
import { pairs, exactly } from '../support/definitions.ts';
import { decimal, double, toDigits } from '../support/rational.ts';

const go = (value: number, from: string, to: string, digits: number, valueAs?: 'double' | 'digits') =>
  convertExact({ quantity: { value, unit: from as 'm' }, unit: to as 'm', digits, valueAs });

const values = fc
  .tuple(fc.double({ min: 1, max: 2, noNaN: true }), fc.integer({ min: -60, max: 60 }))
  .map(([part, power]) => part * 2 ** power);

describe.each(pairs)('$from to $to', ({ from, to }) => {
  it('equals the arithmetic of fractions to 30 digits', () => {
    fc.assert(
      fc.property(values, (value) => {
        expect(go(value, from, to, 30)).toBe(toDigits(exactly(double(value), from, to), 30));
        expect(go(value, from, to, 30, 'digits')).toBe(toDigits(exactly(decimal(value), from, to), 30));
      }),
      { numRuns: 6, seed: 3 },
    );
  });
});

it('answers as many digits as asked for', () => {
  expect(go(1, 'm', 'ft', 1)).toBe('3');
  expect(go(1, 'm', 'ft', 1000)).toBe(toDigits(exactly([1n, 1n], 'm', 'ft'), 1000));
});

it('stops where the result ends', () => {
  expect(go(5, 'usgal', 'in3', 1000)).toBe('1155');
  expect(go(1, 'ft', 'm', 40)).toBe('0.3048');
  expect(go(-459.67, 'degF', 'K', 40, 'digits')).toBe('0');
  expect(go(0, 'ft', 'm', 5)).toBe('0');
  expect(go(-0, 'ft', 'm', 5)).toBe('0');
});

it('rounds half up what ends in 5 exactly', () => {
  expect(go(5, 'usqt', 'usgal', 2)).toBe('1.3');
  expect(go(-5, 'usqt', 'usgal', 2)).toBe('-1.3');
});

it('writes the smallest and the largest doubles without exponent', () => {
  expect(go(5e-324, 'm', 'm', 3)).toBe(`0.${'0'.repeat(323)}494`);
  expect(go(1e300, 'um', 'm', 3)).toBe(`1${'0'.repeat(294)}`);
});

it('turns degrees by the circle constant', () => {
  expect(go(180, 'deg', 'rad', 60)).toBe('3.14159265358979323846264338327950288419716939937510582097494');
});

it.each([
  [{ digits: 0 }, 'out-of-range', ['digits']],
  [{ digits: 1001 }, 'out-of-range', ['digits']],
  [{ digits: 2.5 }, 'out-of-range', ['digits']],
  [{ digits: undefined }, 'out-of-range', ['digits']],
  [{ valueAs: 'text' }, 'out-of-range', ['valueAs']],
  [{ unit: 'l' }, 'wrong-unit', ['unit']],
  [{ quantity: { value: NaN, unit: 'm' } }, 'not-finite', ['quantity']],
  [{ quantity: { value: -300, unit: 'degC' }, unit: 'K' }, 'out-of-range', ['quantity']],
])('refuses %o', (bad, code, path) => {
  const good = { quantity: { value: 1, unit: 'm' }, unit: 'ft', digits: 10 };
  expect(attempt(convertExact, { ...good, ...bad })).toMatchObject({ ok: false, issues: [{ code, path }] });
});

it('the number type of the converter compares as numbers do', () => {
  const found = [decimals.lt('1', 2), decimals.lte('2', 2), decimals.gt('1', 2), decimals.gte('2', 2)];
  expect(found).toEqual([true, true, false, true]);
});
