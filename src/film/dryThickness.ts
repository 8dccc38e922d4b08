import { LENGTH, SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link dryThickness}. */
export interface DryThicknessInput<U extends LengthUnit = LengthUnit> {
  /** Film as laid. */
  readonly wetThickness: Length;
  /** Share of the mixed volume that stays when it has cured; by volume, never by weight. */
  readonly solidsByVolume: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How thick the film is when it has cured and its solvent is gone.
 *
 * @formula
 * ```math
 * d = w \, s
 * ```
 * @units length, share; answers length.
 * @validRange wetThickness above 0; solidsByVolume above 0 % and up to 100 %.
 * @monotone wetThickness +, solidsByVolume +
 * @accuracy Exact up to round-off: relative error below 5e-16. Shrinkage on cure is not in it.
 * @source ufc-3-190-06
 * @param input - Wet film, solids by volume and the unit wanted.
 * @returns The dry film in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.dryThickness({
 *   wetThickness: { value: 10, unit: 'mil' },
 *   solidsByVolume: { value: 60, unit: '%' },
 *   unit: 'mil',
 * }).value.toFixed(3); // => '6.000'
 * ```
 */
export const dryThickness = /* @__PURE__ */ monotone(
  { wetThickness: '+', solidsByVolume: '+' },
  <U extends LengthUnit>(input: DryThicknessInput<U>): Quantity<U> => {
    const { wetThickness, solidsByVolume, unit } = fields('dryThickness', input);
    const wet_m = read('dryThickness', 'wetThickness', wetThickness, LENGTH, POSITIVE);
    const solids = read('dryThickness', 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
    return write('dryThickness', wet_m * solids, LENGTH, unit);
  },
);
