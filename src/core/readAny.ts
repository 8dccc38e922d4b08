import type { Dimension } from './dimension.ts';
import { scaleOf, type UnitScale } from './dimensionOf.ts';
import type { InputPath } from './InputError.ts';
import type { Quantity } from './quantity.ts';
import { refuse, write } from './read.ts';
import { readScale } from './readScale.ts';

/** A quantity of any kind in base units, with its kind. */
export interface AnyReading {
  readonly base: number;
  readonly dimension: Dimension<string>;
}

/** Reads the quantity that came in the field `key` into base units, of one kind or of whatever kind its unit says. */
export function readAny(
  fn: string,
  key: string | number,
  quantity: Quantity | undefined,
  due?: Dimension<string>,
  path: InputPath = [],
): AnyReading {
  const { dimension, zero, factor } = readScale(fn, key, quantity, due, path);
  const base = ((quantity as Quantity).value - zero) * factor;
  if (Number.isFinite(base)) return { base, dimension };
  return refuse(fn, 'too-large', [...path, key], 'finite', quantity);
}

/** Answers a number in base units in a unit of that kind, whatever the kind. */
export function writeAny<U extends string>(
  fn: string,
  { base, dimension }: AnyReading,
  unit: U,
): Quantity<U> {
  const { value } = write(fn, base, dimension, unit);
  return { value: value + (scaleOf(unit) as UnitScale).zero, unit };
}
