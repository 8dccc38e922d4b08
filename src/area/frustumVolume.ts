import { AREA, LENGTH, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link frustumVolume}. */
export interface FrustumVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Area of the upper face. */
  readonly topArea: Area;
  /** Area of the lower face. */
  readonly baseArea: Area;
  /** From one face to the other. */
  readonly height: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Volume of a plinth, a sump or a spall whose sides slope the same way all round.
 *
 * @formula
 * ```math
 * V = \frac{h}{3} \left( A_1 + A_2 + \sqrt{A_1 A_2} \right)
 * ```
 * @units areas, length; answers volume.
 * @validRange topArea and baseArea above 0 and of one shape, height above 0.
 * @monotone topArea +, baseArea +, height +
 * @accuracy Exact up to round-off: relative error below 1e-15.
 * @source machinery-handbook-31
 * @param input - Areas, height and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.frustumVolume({
 *   topArea: { value: 1.5, unit: 'ft2' },
 *   baseArea: { value: 6, unit: 'ft2' },
 *   height: { value: 4.5, unit: 'ft' },
 *   unit: 'ft3',
 * }).value.toFixed(2); // => '15.75'
 * ```
 */
export const frustumVolume = /* @__PURE__ */ monotone(
  { topArea: '+', baseArea: '+', height: '+' },
  <U extends VolumeUnit>(input: FrustumVolumeInput<U>): Quantity<U> => {
    const { topArea, baseArea, height, unit } = fields('frustumVolume', input);
    const top_m2 = read('frustumVolume', 'topArea', topArea, AREA, POSITIVE);
    const base_m2 = read('frustumVolume', 'baseArea', baseArea, AREA, POSITIVE);
    const height_m = read('frustumVolume', 'height', height, LENGTH, POSITIVE);
    const middle_m2 = Math.sqrt(top_m2) * Math.sqrt(base_m2);
    return write('frustumVolume', (height_m / 3) * (top_m2 + base_m2 + middle_m2), VOLUME, unit);
  },
);
