import { dimensionOf, type Unit } from './dimensionOf.ts';
import { checkOrder, type Range } from './range.ts';
import { refuse } from './read.ts';
import { readObject } from './readPlain.ts';

/**
 * A range of one quantity, for what nobody knows exactly: a slab drinks, a crew slows down.
 *
 * @param low - Smallest value, in `unit`.
 * @param high - Largest value, in `unit`.
 * @param unit - Unit code of both.
 * @param more - `likely`: the most likely value, in `unit`.
 * @returns The range as plain data.
 * @throws An `InputError`: `not-finite`, `wrong-unit`, or `conflict` when the values are out of order.
 * @example
 * ```ts
 * import { between } from 'coating-math/core';
 *
 * between(600, 800, 'ft2/usgal').low; // => { value: 600, unit: 'ft2/usgal' }
 * between(600, 800, 'ft2/usgal', { likely: 700 }).likely?.value; // => 700
 * ```
 */
export function between<U extends Unit>(
  low: number,
  high: number,
  unit: U,
  more: { readonly likely?: number | undefined } = {},
): Range<U> {
  if (!dimensionOf(unit)) refuse('between', 'wrong-unit', ['unit'], 'a unit code of this library', unit);
  const end = (key: string, value: number) => {
    if (!Number.isFinite(value)) refuse('between', 'not-finite', [key], 'a finite number', value);
    // Adding 0 turns −0 into 0.
    return { value: value + 0, unit };
  };
  const ends = { low: end('low', low), high: end('high', high) };
  const { likely } = readObject('between', 'more', more);
  const range = likely === undefined ? ends : { ...ends, likely: end('likely', likely) };
  checkOrder('between', range, []);
  return range;
}
