import { LENGTH, SHARE, SPREAD_RATE } from '../core/dimensions.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { SpreadRateUnit } from '../core/unitCodes.ts';

/** Input of {@link theoreticalSpreadRate}. */
export interface TheoreticalSpreadRateInput<U extends SpreadRateUnit = SpreadRateUnit> {
  /** Film that must be there when it has cured. */
  readonly dryThickness: Length;
  /** Share of the mixed volume that stays when it has cured; by volume, never by weight. */
  readonly solidsByVolume: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much floor a gallon or a litre covers at a dry film, with nothing lost and nothing drunk.
 *
 * @formula
 * ```math
 * S = \frac{s}{d}
 * ```
 * @units length, share; answers area per volume.
 * @validRange dryThickness above 0; solidsByVolume above 0 % and up to 100 %. A figure without losses: see
 * `practicalSpreadRate`.
 * @monotone dryThickness -, solidsByVolume +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source pcrc-coverage-2003
 * @param input - Dry film, solids and the unit wanted.
 * @returns The spread rate in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.theoreticalSpreadRate({
 *   dryThickness: { value: 1, unit: 'mil' },
 *   solidsByVolume: { value: 45, unit: '%' },
 *   unit: 'ft2/usgal',
 * }).value.toFixed(3); // => '721.875'
 * ```
 */
export const theoreticalSpreadRate = /* @__PURE__ */ monotone(
  { dryThickness: '-', solidsByVolume: '+' },
  <U extends SpreadRateUnit>(input: TheoreticalSpreadRateInput<U>): Quantity<U> => {
    const { dryThickness, solidsByVolume, unit } = fields('theoreticalSpreadRate', input);
    const dry_m = read('theoreticalSpreadRate', 'dryThickness', dryThickness, LENGTH, POSITIVE);
    const solids = read('theoreticalSpreadRate', 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
    return write('theoreticalSpreadRate', solids / dry_m, SPREAD_RATE, unit);
  },
);
