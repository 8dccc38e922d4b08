import type { Dimension } from '../core/dimension.ts';
import { dimensionOf, DIMENSIONS, type DimensionName } from '../core/dimensionOf.ts';
import { refuse } from '../core/read.ts';

/** The name of a kind of quantity: what it is called, without the article. */
export function nameOf({ kind }: Dimension<string>): DimensionName {
  return kind.slice(kind.indexOf(' ') + 1) as DimensionName;
}

/** The kind of quantity of that name. */
export function dimensionNamed(fn: string, name: DimensionName): Dimension<string> {
  const names = () => DIMENSIONS.map(nameOf).join(', ');
  return (
    DIMENSIONS.find((dimension) => nameOf(dimension) === name) ??
    refuse(fn, 'out-of-range', ['dimension'], `one of ${names()}`, name)
  );
}

/** The kind of quantity that the unit in the field `key` belongs to. */
export function dimensionOfUnit(fn: string, unit: unknown, key = 'unit'): Dimension<string> {
  return dimensionOf(unit) ?? refuse(fn, 'wrong-unit', [key], 'a unit code of this library', unit);
}
