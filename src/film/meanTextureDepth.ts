import { LENGTH, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link meanTextureDepth}. */
export interface MeanTextureDepthInput<U extends LengthUnit = LengthUnit> {
  /** Sand that was spread. */
  readonly volume: Volume;
  /** Mean diameter of the patch. */
  readonly diameter: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How deep a floor is on average below its peaks, from sand of a known volume struck off to a round patch.
 *
 * @formula
 * ```math
 * t = \frac{4 \, V}{\pi \, d^2}
 * ```
 * @units volume, length; answers length.
 * @validRange volume and diameter above 0; the diameter as the mean of four. Below about 0.3 mm sand no longer tells:
 * use a finer way. It is the depth that a coat fills up to the peaks: 1 mm of it drinks 1 litre on 1 m².
 * @monotone volume +, diameter -
 * @accuracy Exact up to round-off: relative error below 1e-15. A diameter read 1 % wrong makes 2 %.
 * @source astm-e965, sa-tp346
 * @param input - Sand, patch and the unit wanted.
 * @returns The mean texture depth in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.meanTextureDepth({
 *   volume: { value: 25, unit: 'ml' },
 *   diameter: { value: 200, unit: 'mm' },
 *   unit: 'mm',
 * }).value.toFixed(4); // => '0.7958'
 * ```
 */
export const meanTextureDepth = /* @__PURE__ */ monotone(
  { volume: '+', diameter: '-' },
  <U extends LengthUnit>(input: MeanTextureDepthInput<U>): Quantity<U> => {
    const { volume, diameter, unit } = fields('meanTextureDepth', input);
    const volume_m3 = read('meanTextureDepth', 'volume', volume, VOLUME, POSITIVE);
    const diameter_m = read('meanTextureDepth', 'diameter', diameter, LENGTH, POSITIVE);
    return write('meanTextureDepth', volume_m3 / ((Math.PI / 4) * diameter_m * diameter_m), LENGTH, unit);
  },
);
