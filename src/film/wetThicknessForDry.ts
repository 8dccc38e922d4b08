import { LENGTH, SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link wetThicknessForDry}. */
export interface WetThicknessForDryInput<U extends LengthUnit = LengthUnit> {
  /** Film that must be there when it has cured. */
  readonly dryThickness: Length;
  /** Share of the mixed volume that stays when it has cured; by volume, never by weight. */
  readonly solidsByVolume: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How thick the film must be laid so that enough is left when its solvent is gone.
 *
 * @formula
 * ```math
 * w = \frac{d}{s}
 * ```
 * @units length, share; answers length.
 * @validRange dryThickness above 0; solidsByVolume above 0 % and up to 100 %.
 * @monotone dryThickness +, solidsByVolume -
 * @accuracy Exact up to round-off: relative error below 5e-16. Shrinkage on cure is not in it.
 * @source ufc-3-190-06
 * @param input - Dry film, solids by volume and the unit wanted.
 * @returns The wet film in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.wetThicknessForDry({
 *   dryThickness: { value: 6, unit: 'mil' },
 *   solidsByVolume: { value: 60, unit: '%' },
 *   unit: 'mil',
 * }).value.toFixed(3); // => '10.000'
 * ```
 */
export const wetThicknessForDry = /* @__PURE__ */ monotone(
  { dryThickness: '+', solidsByVolume: '-' },
  <U extends LengthUnit>(input: WetThicknessForDryInput<U>): Quantity<U> => {
    const { dryThickness, solidsByVolume, unit } = fields('wetThicknessForDry', input);
    const dry_m = read('wetThicknessForDry', 'dryThickness', dryThickness, LENGTH, POSITIVE);
    const solids = read('wetThicknessForDry', 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
    return write('wetThicknessForDry', dry_m / solids, LENGTH, unit);
  },
);
