import { scaleOf, type UnitScale } from '../core/dimensionOf.ts';
import type { Dimension } from '../core/dimension.ts';
import type { InputPath } from '../core/InputError.ts';
import { ABSOLUTE } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';
import { readScale } from '../core/readScale.ts';
import { rescaled } from './rescaled.ts';

/** The number of a quantity of one kind in another unit of that kind; in the same unit it is left untouched. */
export function valueIn(
  fn: string,
  key: string | number,
  quantity: Quantity,
  dimension: Dimension<string>,
  unit: string,
  path: InputPath = [],
): number {
  const from = readScale(fn, key, quantity, dimension, path);
  const value = rescaled(quantity.value, from, scaleOf(unit) as UnitScale);
  if (Number.isFinite(value)) return value;
  return refuse(fn, 'too-large', [...path, key], `finite in ${unit}`, quantity);
}

/** Answers a number that is already in the unit asked for. Refuses what no double can hold. */
export function answer<U extends string>(
  fn: string,
  value: number,
  unit: U,
  path: InputPath = [],
): Quantity<U> {
  if (!Number.isFinite(value)) refuse(fn, 'too-large', path, 'finite', value);
  const { zero, factor, least } = scaleOf(unit) as UnitScale;
  if ((value - zero) * factor < least) {
    refuse(fn, 'out-of-range', path, `such that the answer is${ABSOLUTE.words}`, { value, unit });
  }
  return { value: value + 0, unit };
}
