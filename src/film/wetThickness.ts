import { LENGTH, SPREAD_RATE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, SpreadRate } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link wetThickness}. */
export interface WetThicknessInput<U extends LengthUnit = LengthUnit> {
  /** Area covered by a volume. */
  readonly spreadRate: SpreadRate;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How thick the wet film is at a spread rate, on a flat floor that drinks nothing.
 *
 * @formula
 * ```math
 * w = \frac{1}{S}
 * ```
 * @units spread rate; answers length.
 * @validRange spreadRate above 0. For a coat pulled into pores it is an average over the floor, not a film.
 * @monotone spreadRate -
 * @accuracy Exact up to round-off: relative error below 5e-16.
 * @source definition
 * @param input - Spread rate and the unit wanted.
 * @returns The wet film in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.wetThickness({ spreadRate: { value: 100, unit: 'ft2/usgal' }, unit: 'mil' }).value.toFixed(2); // => '16.04'
 * ```
 */
export const wetThickness = /* @__PURE__ */ monotone(
  { spreadRate: '-' },
  <U extends LengthUnit>(input: WetThicknessInput<U>): Quantity<U> => {
    const { spreadRate, unit } = fields('wetThickness', input);
    const spreadRate_perM = read('wetThickness', 'spreadRate', spreadRate, SPREAD_RATE, POSITIVE);
    return write('wetThickness', 1 / spreadRate_perM, LENGTH, unit);
  },
);
