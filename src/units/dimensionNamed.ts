import type { Dimension } from '../core/dimension.ts';
import { dimensionOf, DIMENSIONS, type DimensionName } from '../core/dimensionOf.ts';
import { refuse } from '../core/read.ts';

/** The kind of quantity of that name. */
export function dimensionNamed(fn: string, name: DimensionName): Dimension<string> {
  const names = () => DIMENSIONS.map((dimension) => dimension.name).join(', ');
  return (
    DIMENSIONS.find((dimension) => dimension.name === name) ??
    refuse(fn, 'out-of-range', ['dimension'], `one of ${names()}`, name)
  );
}

/** The kind of quantity that the unit in the field `key` belongs to. */
export function dimensionOfUnit(fn: string, unit: unknown, key = 'unit'): Dimension<string> {
  return dimensionOf(unit) ?? refuse(fn, 'wrong-unit', [key], 'a unit code of this library', unit);
}
