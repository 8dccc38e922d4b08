import { LENGTH, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link profileDepth}. */
export interface ProfileDepthInput<U extends LengthUnit = LengthUnit> {
  /** From the valleys to the peaks, as a replica tape or a comparator shows it. */
  readonly peakToValley: Length;
  /** Share of that height that is empty. */
  readonly emptyShare: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How deep the valleys of a blasted or ground floor are on average, from their height and what of it is empty.
 *
 * @formula
 * ```math
 * t = e \, R
 * ```
 * @units length, share; answers length.
 * @validRange peakToValley 0 or more; emptyShare above 0 % and up to 100 %. An even sawtooth is half empty; a real
 * floor is what a sand patch or a test square says.
 * @monotone peakToValley +, emptyShare +
 * @accuracy Exact up to round-off: relative error below 5e-16. The share is a guess unless it was measured.
 * @source common-practice
 * @param input - Height, share and the unit wanted.
 * @returns The mean depth to be filled in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.profileDepth({
 *   peakToValley: { value: 75, unit: 'um' },
 *   emptyShare: { value: 50, unit: '%' },
 *   unit: 'um',
 * }).value.toFixed(2); // => '37.50'
 * ```
 */
export const profileDepth = /* @__PURE__ */ monotone(
  { peakToValley: '+', emptyShare: '+' },
  <U extends LengthUnit>(input: ProfileDepthInput<U>): Quantity<U> => {
    const { peakToValley, emptyShare, unit } = fields('profileDepth', input);
    const height_m = read('profileDepth', 'peakToValley', peakToValley, LENGTH, NOT_NEGATIVE);
    const empty = read('profileDepth', 'emptyShare', emptyShare, SHARE, PART_OR_WHOLE);
    return write('profileDepth', empty * height_m, LENGTH, unit);
  },
);
