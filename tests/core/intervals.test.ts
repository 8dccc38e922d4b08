/**
 * Ranges through formulas of the caller, against the tests of interval arithmetic by IEEE Std 1788-2015 (source
 * ieee-1788-2015): subtraction, multiplication and division over ranges.
 */
import { describe, expect, it } from 'vitest';
import { across, type AcrossAnswer } from '../../src/core/across.ts';
import { between } from '../../src/core/between.ts';
import { monotone } from '../../src/core/monotone.ts';
import type { Quantity } from '../../src/core/quantity.ts';
import { refusal } from '../support/issues.ts';
import { sources } from '../support/library.ts';

type Difference = Quantity<'deltaC'>;
interface Two {
  readonly a: Difference;
  readonly b: Difference;
}
const of = (value: number): Difference => ({ value, unit: 'deltaC' });
const subtraction = ({ a, b }: Two) => of(a.value - b.value);
const declaredSubtraction = monotone({ a: '+', b: '-' }, ({ a, b }: Two) => of(a.value - b.value));
const multiplication = ({ a, b }: Two) => of(a.value * b.value);
const division = ({ a, b }: Two) => of(a.value / b.value);

type Ends = readonly [low: number, high: number];
const range = ([low, high]: Ends) => between(low, high, 'deltaC');
const over = (formula: (input: Two) => Difference, a: Ends, b: Ends): AcrossAnswer<'deltaC'> =>
  across(formula, { a: range(a), b: range(b) });
const ends = ({ low, high }: AcrossAnswer) => [low.value, high.value];

/** What the tests of the standard expect; their intervals of one number are ranges without width. */
describe('IEEE Std 1788-2015 (ieee-1788-2015)', () => {
  it('is in the register of sources', () => {
    expect(sources).toHaveProperty('ieee-1788-2015');
  });

  it.each([
    ['[1, 2] − [3, 4]', subtraction, [1, 2], [3, 4], [-3, -1]],
    ['[0, 0] − [−3, 4]', subtraction, [0, 0], [-3, 4], [-4, 3]],
    ['[−10, 2] · [−5, 3]', multiplication, [-10, 2], [-5, 3], [-30, 50]],
    ['[−10, −5] · [−5, −1]', multiplication, [-10, -5], [-5, -1], [5, 50]],
    ['[−30, −15] / [−5, −3]', division, [-30, -15], [-5, -3], [3, 10]],
    ['[−30, 15] / [3, 5]', division, [-30, 15], [3, 5], [-10, 5]],
  ] as const)('%s', (_, formula, a, b, expected) => {
    const answer = over(formula, a, b);
    expect(ends(answer)).toEqual(expected);
    expect(answer.enclosure).toBe('corners only');
  });

  it.each([
    [
      [1, 2],
      [3, 4],
      [-3, -1],
    ],
    [
      [0, 0],
      [-3, 4],
      [-4, 3],
    ],
  ] as const)('%j − %j is proven where the formula declares how it moves', (a, b, expected) => {
    const answer = over(declaredSubtraction, a, b);
    expect(ends(answer)).toEqual(expected);
    expect(answer.enclosure).toBe('proven');
  });

  it('[−2, −1] / [−10, −3] is rounded to the nearest, within one unit in the last place of outwards', () => {
    const [low = 0, high = 0] = ends(over(division, [-2, -1], [-10, -3]));
    // Outwards: 0x1.9999999999999p-4 and 0x1.5555555555556p-1.
    const [outwardLow, outwardHigh] = [0.09999999999999999, 0.6666666666666667];
    expect(low - outwardLow).toBeGreaterThanOrEqual(0);
    expect(low - outwardLow).toBeLessThanOrEqual(2 ** -56);
    expect(outwardHigh - high).toBeGreaterThanOrEqual(0);
    expect(outwardHigh - high).toBeLessThanOrEqual(2 ** -53);
  });

  it('[0, 0] / [−3, 3] is [0, 0] by the standard; a divisor that may be 0 is refused here', () => {
    const by = (a: Ends, b: Ends) => refusal(() => over(division, a, b), 0);
    expect(by([0, 0], [-3, 3])).toBe('not-a-quantity formula');
    expect(by([1, 2], [-3, 4])).toBe('not-a-quantity formula');
    expect(by([1, 2], [0, 4])).toBe('not-a-quantity formula');
    expect(by([1, 2], [1, 4])).toBe('');
  });
});

describe('a quantity that stands twice', () => {
  it('is taken once where one formula is composed: x − x is 0', () => {
    const composed = across(({ x }: { x: Difference }) => subtraction({ a: x, b: x }), { x: range([1, 2]) });
    expect(ends(composed)).toEqual([0, 0]);
  });

  it('widens the range where calls are chained: −1 to 1', () => {
    const once = across(({ x }: { x: Difference }) => x, { x: range([1, 2]) });
    expect(ends(across(subtraction, { a: once, b: range([1, 2]) }))).toEqual([-1, 1]);
  });
});

it('a range that ends in −0 ends in 0', () => {
  const answer = over(multiplication, [0, 0], [-3, -1]);
  expect(ends(answer).map((end) => Object.is(end, 0))).toEqual([true, true]);
});

it('what bends at 0 is tried there', () => {
  const square = ({ x }: { x: Difference }) => of(x.value ** 2);
  expect(ends(across(square, { x: range([-1, 2]) }))).toEqual([0, 4]);
});
