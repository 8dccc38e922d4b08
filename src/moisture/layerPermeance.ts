import { LENGTH, PERMEABILITY, PERMEANCE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Permeability, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { PermeanceUnit } from '../core/unitCodes.ts';

/** Input of {@link layerPermeance}. */
export interface LayerPermeanceInput<U extends PermeanceUnit = PermeanceUnit> {
  /** Permeability of the material; that of air where a layer is told by its equivalent air layer. */
  readonly permeability: Permeability;
  /** Thickness of the layer. */
  readonly thickness: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How easily vapour gets through a layer of a material, such as the slab: the thicker, the less.
 *
 * @formula
 * ```math
 * W = \frac{\delta}{d}
 * ```
 * @units permeability, length; answers permeance.
 * @validRange both above 0.
 * @monotone permeability +, thickness -
 * @accuracy Exact up to round-off: relative error below 1e-15. Permeabilities of concrete differ by far more.
 * @source definition, ashrae-vapour-permeability, en-iso-12572
 * @param input - Permeability, thickness and the unit wanted.
 * @returns The permeance in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * moisture.layerPermeance({
 *   permeability: { value: 3.2, unit: 'perm.in' },
 *   thickness: { value: 5, unit: 'in' },
 *   unit: 'perm',
 * }).value.toFixed(2); // => '0.64'
 * ```
 */
export const layerPermeance = /* @__PURE__ */ monotone(
  { permeability: '+', thickness: '-' },
  <U extends PermeanceUnit>(input: LayerPermeanceInput<U>): Quantity<U> => {
    const { permeability, thickness, unit } = fields('layerPermeance', input);
    const permeability_ng = read('layerPermeance', 'permeability', permeability, PERMEABILITY, POSITIVE);
    const thickness_m = read('layerPermeance', 'thickness', thickness, LENGTH, POSITIVE);
    return write('layerPermeance', permeability_ng / thickness_m, PERMEANCE, unit);
  },
);
