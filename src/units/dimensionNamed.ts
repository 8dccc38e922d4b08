import type { Dimension } from '../core/dimension.ts';
import { dimensionOf, DIMENSIONS, type DimensionName } from '../core/dimensionOf.ts';
import { refuse } from '../core/read.ts';

/** The kind of quantity of that name. */
export function dimensionNamed(fn: string, name: DimensionName): Dimension<string> {
  return typeof name === 'string' && Object.hasOwn(DIMENSIONS, name)
    ? DIMENSIONS[name]
    : refuse(fn, 'out-of-range', ['dimension'], `one of ${Object.keys(DIMENSIONS).join(', ')}`, name);
}

/** The kind of quantity that the unit in the field `key` belongs to. */
export function dimensionOfUnit(fn: string, unit: unknown, key = 'unit'): Dimension<string> {
  return dimensionOf(unit) ?? refuse(fn, 'wrong-unit', [key], 'a unit code of this library', unit);
}
