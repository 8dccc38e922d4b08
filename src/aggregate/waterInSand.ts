import { MASS, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Mass, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { MassUnit } from '../core/unitCodes.ts';

/** Input of {@link waterInSand}. */
export interface WaterInSandInput<U extends MassUnit = MassUnit> {
  /** Sand as it is used, its water included. */
  readonly sand: Mass;
  /** Water over dry sand, as `sandMoisture` answers it. */
  readonly moisture: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much water a batch of damp sand carries into the resin.
 *
 * @formula
 * ```math
 * m_w = m \, \frac{u}{1 + u}
 * ```
 * @units mass, share; answers mass.
 * @validRange sand above 0, weighed damp as it is used; moisture 0 or more, on dry mass.
 * @monotone sand +, moisture +
 * @accuracy Exact up to round-off: relative error below 8e-16.
 * @source definition
 * @param input - Sand, its moisture and the unit wanted.
 * @returns The water in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.waterInSand({
 *   sand: { value: 1150.56, unit: 'kg' },
 *   moisture: { value: 0.3613, unit: '%' },
 *   unit: 'kg',
 * }).value.toFixed(2); // => '4.14'
 * ```
 */
export const waterInSand = /* @__PURE__ */ monotone(
  { sand: '+', moisture: '+' },
  <U extends MassUnit>(input: WaterInSandInput<U>): Quantity<U> => {
    const { sand, moisture, unit } = fields('waterInSand', input);
    const sand_kg = read('waterInSand', 'sand', sand, MASS, POSITIVE);
    const moistureShare = read('waterInSand', 'moisture', moisture, SHARE, NOT_NEGATIVE);
    return write('waterInSand', (sand_kg * moistureShare) / (1 + moistureShare), MASS, unit);
  },
);
