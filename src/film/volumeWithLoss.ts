import { SHARE, VOLUME } from '../core/dimensions.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link volumeWithLoss}. */
export interface VolumeWithLossInput<U extends VolumeUnit = VolumeUnit> {
  /** What must reach the floor. */
  readonly netVolume: Volume;
  /** Share of what is mixed that does not reach it. */
  readonly loss: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What must be mixed so that enough is left when a share of it is lost. The loss divides: a fifth lost takes a
 * quarter more.
 *
 * @formula
 * ```math
 * V = \frac{V_n}{1 - l}
 * ```
 * @units volume, share; answers volume.
 * @validRange netVolume above 0, loss from 0 % to below 100 %. What is bought beyond the need is another thing: see
 * `volumeWithSpare`.
 * @monotone netVolume +, loss +
 * @accuracy Exact up to round-off: relative error below 6e-16 for a loss of up to a half; what is left of the whole has fewer
 * digits the nearer the loss comes to it.
 * @source pcrc-coverage-2003
 * @param input - Volume, loss and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.volumeWithLoss({
 *   netVolume: { value: 8, unit: 'l' },
 *   loss: { value: 20, unit: '%' },
 *   unit: 'l',
 * }).value.toFixed(1); // => '10.0'
 * ```
 */
export const volumeWithLoss = /* @__PURE__ */ monotone(
  { netVolume: '+', loss: '+' },
  <U extends VolumeUnit>(input: VolumeWithLossInput<U>): Quantity<U> => {
    const { netVolume, loss, unit } = fields('volumeWithLoss', input);
    const net_m3 = read('volumeWithLoss', 'netVolume', netVolume, VOLUME, POSITIVE);
    const lossShare = read('volumeWithLoss', 'loss', loss, SHARE, PART);
    return write('volumeWithLoss', net_m3 / (1 - lossShare), VOLUME, unit);
  },
);
