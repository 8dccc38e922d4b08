import { SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link volumeWithSpare}. */
export interface VolumeWithSpareInput<U extends VolumeUnit = VolumeUnit> {
  /** What is needed. */
  readonly volume: Volume;
  /** What is bought beyond it, as a share of the need. */
  readonly spare: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What is bought so that some is to spare: a mark-up on the need, which multiplies, where a loss divides.
 *
 * @formula
 * ```math
 * V = V_n \, (1 + m)
 * ```
 * @units volume, share; answers volume.
 * @validRange volume above 0, spare 0 or more. It does not replace the losses: they are in the need already.
 * @monotone volume +, spare +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source common-practice
 * @param input - Volume, spare and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.volumeWithSpare({
 *   volume: { value: 72.83, unit: 'usgal' },
 *   spare: { value: 3, unit: '%' },
 *   unit: 'usgal',
 * }).value.toFixed(2); // => '75.01'
 * ```
 */
export const volumeWithSpare = /* @__PURE__ */ monotone(
  { volume: '+', spare: '+' },
  <U extends VolumeUnit>(input: VolumeWithSpareInput<U>): Quantity<U> => {
    const { volume, spare, unit } = fields('volumeWithSpare', input);
    const volume_m3 = read('volumeWithSpare', 'volume', volume, VOLUME, POSITIVE);
    const spareShare = read('volumeWithSpare', 'spare', spare, SHARE, NOT_NEGATIVE);
    return write('volumeWithSpare', volume_m3 * (1 + spareShare), VOLUME, unit);
  },
);
