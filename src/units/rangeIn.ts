import type { Dimension } from '../core/dimension.ts';
import type { InputPath } from '../core/InputError.ts';
import type { Quantity } from '../core/quantity.ts';
import { checkOrder, isRange, type BaseRange, type Range, type Ranged } from '../core/range.ts';
import { answer, valueIn } from './valueIn.ts';

/** The ends of a range of one kind in another unit of that kind; one value is a range without width. */
export function rangeIn(
  fn: string,
  key: string | number,
  given: Ranged<Quantity>,
  dimension: Dimension<string>,
  unit: string,
  path: InputPath = [],
): BaseRange {
  if (!isRange(given)) {
    const value = valueIn(fn, key, given, dimension, unit, path);
    return { low: value, likely: value, high: value };
  }
  const inside = [...path, key];
  const end = (name: string, quantity: Quantity) => valueIn(fn, name, quantity, dimension, unit, inside);
  const { low, likely, high } = given;
  const ends = {
    low: end('low', low),
    likely: likely === undefined ? undefined : end('likely', likely),
    high: end('high', high),
  };
  checkOrder(fn, given, inside);
  return ends;
}

/** Answers ends that are already in the unit asked for. */
export function answerRange<U extends string>(
  fn: string,
  { low, likely, high }: BaseRange,
  unit: U,
): Range<U> {
  return {
    low: answer(fn, low, unit),
    ...(likely !== undefined && { likely: answer(fn, likely, unit) }),
    high: answer(fn, high, unit),
  };
}
