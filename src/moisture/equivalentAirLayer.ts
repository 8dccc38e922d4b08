import { LENGTH, PERMEANCE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Permeance, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link equivalentAirLayer}. */
export interface EquivalentAirLayerInput<U extends LengthUnit = LengthUnit> {
  /** Permeance of the membrane. */
  readonly permeance: Permeance;
  /** Permeance of 1 m of still air: 195 ng/s/m2/Pa at 23 °C by the European standard, often rounded to 200. */
  readonly airPermeance: Permeance;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How thick still air would have to be to hold vapour back as a membrane does: the sd value of European data sheets.
 *
 * The way back, from an sd value to a permeance, is `layerPermeance` with that of 1 m of air.
 *
 * @formula
 * ```math
 * s_d = \frac{W_{1\,m\,air}}{W} \cdot 1 \text{ m}
 * ```
 * @units permeances; answers length.
 * @validRange both above 0.
 * @monotone permeance -, airPermeance +
 * @accuracy Exact up to round-off: relative error below 1e-15. The two usual figures for air differ by 2.5 %.
 * No published figure: a ratio.
 * @source definition, en-iso-12572
 * @param input - Permeance of the membrane and of air, and the unit wanted.
 * @returns The equivalent air layer in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const membrane = {
 *   permeance: { value: 0.1, unit: 'perm' },
 *   airPermeance: { value: 200, unit: 'ng/s/m2/Pa' },
 * } as const;
 * moisture.equivalentAirLayer({ ...membrane, unit: 'm' }).value.toFixed(0); // => '35'
 * ```
 */
export const equivalentAirLayer = /* @__PURE__ */ monotone(
  { permeance: '-', airPermeance: '+' },
  <U extends LengthUnit>(input: EquivalentAirLayerInput<U>): Quantity<U> => {
    const { permeance, airPermeance, unit } = fields('equivalentAirLayer', input);
    const permeance_ng = read('equivalentAirLayer', 'permeance', permeance, PERMEANCE, POSITIVE);
    const air_ng = read('equivalentAirLayer', 'airPermeance', airPermeance, PERMEANCE, POSITIVE);
    return write('equivalentAirLayer', air_ng / permeance_ng, LENGTH, unit);
  },
);
