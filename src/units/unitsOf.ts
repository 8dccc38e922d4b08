import type { DimensionName, UnitsByDimension } from '../core/dimensionOf.ts';
import { dimensionNamed } from './dimensionNamed.ts';

/**
 * The unit codes of one kind of quantity, smaller units first within each system: what a unit picker offers.
 *
 * @param dimension - Name of the kind, such as `'length'` or `'spread rate'`.
 * @returns The codes.
 * @throws An `InputError` for a name that is no kind of quantity.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.unitsOf('length'); // => ['um', 'mm', 'cm', 'm', 'mil', 'in', 'ft', 'yd']
 * ```
 */
export function unitsOf<D extends DimensionName>(dimension: D): readonly UnitsByDimension[D][] {
  return Object.keys(dimensionNamed('unitsOf', dimension).exact) as UnitsByDimension[D][];
}
