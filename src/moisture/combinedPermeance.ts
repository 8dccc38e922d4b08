import { PERMEANCE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Permeance, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { PermeanceUnit } from '../core/unitCodes.ts';

/** Input of {@link combinedPermeance}. */
export interface CombinedPermeanceInput<U extends PermeanceUnit = PermeanceUnit> {
  /** Permeance of the slab: its permeability over its thickness. */
  readonly slab: Permeance;
  /** Permeance of the membrane on it. */
  readonly membrane: Permeance;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How easily vapour gets through a slab and the membrane on it together: always less than through either.
 *
 * @formula
 * ```math
 * \frac{1}{W} = \frac{1}{W_{slab}} + \frac{1}{W_{membrane}}
 * ```
 * @units permeances; answers permeance.
 * @validRange both above 0.
 * @monotone slab +, membrane +
 * @accuracy Exact up to round-off: relative error below 1e-15. No published figure: resistances in series.
 * @source series-resistance
 * @param input - Both permeances and the unit wanted.
 * @returns The permeance in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * moisture.combinedPermeance({
 *   slab: { value: 0.4, unit: 'perm' },
 *   membrane: { value: 0.1, unit: 'perm' },
 *   unit: 'perm',
 * }).value.toFixed(3); // => '0.080'
 * ```
 */
export const combinedPermeance = /* @__PURE__ */ monotone(
  { slab: '+', membrane: '+' },
  <U extends PermeanceUnit>(input: CombinedPermeanceInput<U>): Quantity<U> => {
    const { slab, membrane, unit } = fields('combinedPermeance', input);
    const slab_ng = read('combinedPermeance', 'slab', slab, PERMEANCE, POSITIVE);
    const membrane_ng = read('combinedPermeance', 'membrane', membrane, PERMEANCE, POSITIVE);
    return write('combinedPermeance', 1 / (1 / slab_ng + 1 / membrane_ng), PERMEANCE, unit);
  },
);
