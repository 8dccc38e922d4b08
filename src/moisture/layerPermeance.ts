import { LENGTH, PERMEANCE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Permeance, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { PermeanceUnit } from '../core/unitCodes.ts';

/** Input of {@link layerPermeance}. */
export interface LayerPermeanceInput<U extends PermeanceUnit = PermeanceUnit> {
  /** Permeance of the material at a thickness for which it is known. */
  readonly permeance: Permeance;
  /** That thickness: 1 in where a table says perm·in, 1 m where it says ng/(s·m·Pa). */
  readonly knownAt: Length;
  /** Thickness of the layer. */
  readonly thickness: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How easily vapour gets through a layer of a material, such as the slab: twice as thick, half as easily.
 *
 * @formula
 * ```math
 * W = W_0 \, \frac{d_0}{d}
 * ```
 * @units permeance, lengths; answers permeance.
 * @validRange all above 0.
 * @monotone permeance +, knownAt +, thickness -
 * @accuracy Exact up to round-off: relative error below 1e-15. Concretes differ by far more.
 * @source definition, ashrae-vapour-permeability, en-iso-12572
 * @param input - What is known of the material, the thickness of the layer and the unit wanted.
 * @returns The permeance in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * // Concrete of 3.2 perm·in, 5 in thick.
 * moisture.layerPermeance({
 *   permeance: { value: 3.2, unit: 'perm' },
 *   knownAt: { value: 1, unit: 'in' },
 *   thickness: { value: 5, unit: 'in' },
 *   unit: 'perm',
 * }).value.toFixed(2); // => '0.64'
 * ```
 */
export const layerPermeance = /* @__PURE__ */ monotone(
  { permeance: '+', knownAt: '+', thickness: '-' },
  <U extends PermeanceUnit>(input: LayerPermeanceInput<U>): Quantity<U> => {
    const { permeance, knownAt, thickness, unit } = fields('layerPermeance', input);
    const known_ng = read('layerPermeance', 'permeance', permeance, PERMEANCE, POSITIVE);
    const known_m = read('layerPermeance', 'knownAt', knownAt, LENGTH, POSITIVE);
    const layer_m = read('layerPermeance', 'thickness', thickness, LENGTH, POSITIVE);
    return write('layerPermeance', (known_ng * known_m) / layer_m, PERMEANCE, unit);
  },
);
