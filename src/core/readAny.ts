import type { Dimension } from './dimension.ts';
import { scaleOf, type UnitScale } from './dimensionOf.ts';
import type { InputPath } from './InputError.ts';
import { ABSOLUTE, ANY } from './limits.ts';
import type { Quantity } from './quantity.ts';
import { read, refuse, write } from './read.ts';

/** Stands in for the kind of a quantity whose unit is not known, so that the refusal reads the same. */
const UNKNOWN = { name: 'quantity', factor: { 'a known unit': NaN } } as unknown as Dimension<string>;

/** A quantity of any kind in base units, with its kind. */
export interface AnyReading {
  readonly base: number;
  readonly dimension: Dimension<string>;
}

/** Reads the quantity that came in the field `key` into base units of a kind known only at run time. */
export function readAs(
  fn: string,
  key: string | number,
  quantity: Quantity | undefined,
  dimension: Dimension<string>,
  path: InputPath = [],
): number {
  read(fn, key, quantity, dimension, ANY, path);
  const { value, unit } = quantity as Quantity;
  const { zero, factor, least } = scaleOf(unit) as UnitScale;
  const base = (value - zero) * factor;
  if (base >= least) return base;
  return refuse(fn, 'out-of-range', [...path, key], `a ${dimension.name}${ABSOLUTE.words}`, quantity);
}

/** Reads the quantity that came in the field `key`, of whatever kind its unit says. */
export function readAny(
  fn: string,
  key: string | number,
  quantity: Quantity | undefined,
  path?: InputPath,
): AnyReading {
  const given = quantity as Partial<Quantity> | null | undefined;
  const dimension = (scaleOf(given?.unit)?.dimension ?? UNKNOWN) as Dimension<string>;
  return { base: readAs(fn, key, quantity, dimension, path), dimension };
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
