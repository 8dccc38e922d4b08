import { factorOf } from '../core/dimension.ts';
import type { DimensionName, UnitsByDimension } from '../core/dimensionOf.ts';
import { dimensionNamed } from './dimensionNamed.ts';

/**
 * Whether a text is a unit code of one kind of quantity: the guard between a unit picker and a typed quantity.
 *
 * @param dimension - Name of the kind, such as `'length'`.
 * @param text - Whatever came from outside.
 * @returns True for a code of that kind; the compiler then knows it as one.
 * @throws An `InputError` for a name that is no kind of quantity.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.isUnitOf('volume', 'usgal'); // => true
 * units.isUnitOf('volume', 'gal'); // => false
 * ```
 */
export function isUnitOf<D extends DimensionName>(dimension: D, text: unknown): text is UnitsByDimension[D] {
  return factorOf(dimensionNamed('isUnitOf', dimension), text) !== undefined;
}
