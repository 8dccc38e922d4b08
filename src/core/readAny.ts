import type { Dimension } from './dimension.ts';
import { dimensionOf } from './dimensionOf.ts';
import { TEMPERATURE } from './dimensions.ts';
import type { InputPath } from './InputError.ts';
import { ABSOLUTE, ANY } from './limits.ts';
import type { Quantity, Temperature } from './quantity.ts';
import { read, write } from './read.ts';
import { readTemperature, writeTemperature } from './temperature.ts';
import type { TemperatureUnit } from './unitCodes.ts';

/** Stands in for the kind of a quantity whose unit is not known, so that the refusal reads the same. */
const UNKNOWN = { name: 'quantity', factor: {} } as Dimension<string>;

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
  path?: InputPath,
): number {
  return dimension.name === TEMPERATURE.name
    ? readTemperature(fn, key, quantity as Temperature, ABSOLUTE, path)
    : read(fn, key, quantity, dimension, ANY, path);
}

/** Reads the quantity that came in the field `key`, of whatever kind its unit says. */
export function readAny(
  fn: string,
  key: string | number,
  quantity: Quantity | undefined,
  path?: InputPath,
): AnyReading {
  const given = quantity as Partial<Quantity> | null | undefined;
  const dimension = (dimensionOf(given?.unit) ?? UNKNOWN) as Dimension<string>;
  return { base: readAs(fn, key, quantity, dimension, path), dimension };
}

/** Answers a number in base units in a unit of that kind, whatever the kind. */
export function writeAny<U extends string>(
  fn: string,
  { base, dimension }: AnyReading,
  unit: U,
): Quantity<U> {
  return dimension.name === TEMPERATURE.name
    ? (writeTemperature(fn, base, unit as TemperatureUnit) as Quantity<U>)
    : write(fn, base, dimension, unit);
}
