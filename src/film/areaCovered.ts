import { AREA, SPREAD_RATE, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, SpreadRate, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link areaCovered}. */
export interface AreaCoveredInput<U extends AreaUnit = AreaUnit> {
  /** Mixed material. */
  readonly volume: Volume;
  /** Area that a volume covers. */
  readonly spreadRate: SpreadRate;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much floor a cup, a pail or what is left of one covers at a spread rate.
 *
 * @formula
 * ```math
 * A = V \, S
 * ```
 * @units volume, spread rate; answers area.
 * @validRange volume and spreadRate above 0. Nothing is taken off for what stays in the cup.
 * @monotone volume +, spreadRate +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source definition
 * @param input - Volume, rate and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.areaCovered({
 *   volume: { value: 20, unit: 'usfloz' },
 *   spreadRate: { value: 672, unit: 'ft2/usgal' },
 *   unit: 'ft2',
 * }).value.toFixed(1); // => '105.0'
 * ```
 */
export const areaCovered = /* @__PURE__ */ monotone(
  { volume: '+', spreadRate: '+' },
  <U extends AreaUnit>(input: AreaCoveredInput<U>): Quantity<U> => {
    const { volume, spreadRate, unit } = fields('areaCovered', input);
    const volume_m3 = read('areaCovered', 'volume', volume, VOLUME, POSITIVE);
    const spreadRate_perM = read('areaCovered', 'spreadRate', spreadRate, SPREAD_RATE, POSITIVE);
    return write('areaCovered', volume_m3 * spreadRate_perM, AREA, unit);
  },
);
