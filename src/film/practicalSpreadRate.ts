import { SHARE, SPREAD_RATE } from '../core/dimensions.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, SpreadRate } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { SpreadRateUnit } from '../core/unitCodes.ts';

/** Input of {@link practicalSpreadRate}. */
export interface PracticalSpreadRateInput<U extends SpreadRateUnit = SpreadRateUnit> {
  /** Rate without loss. */
  readonly spreadRate: SpreadRate;
  /** Share of what is mixed that does not become film. */
  readonly loss: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What is left of a spread rate when a share of the material is lost.
 *
 * @formula
 * ```math
 * S_p = S \, (1 - l)
 * ```
 * @units spread rate, share; answers area per volume.
 * @validRange spreadRate above 0, loss from 0 % to below 100 %. For losses of one share only; texture and tools do
 * not scale this way, see `coatVolume`.
 * @monotone spreadRate +, loss -
 * @accuracy Exact up to round-off: relative error below 6e-16 for a loss of up to a half; what is left of the whole has fewer
 * digits the nearer the loss comes to it.
 * @source pcrc-coverage-2003
 * @param input - Rate, loss and the unit wanted.
 * @returns The spread rate in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.practicalSpreadRate({
 *   spreadRate: { value: 100, unit: 'ft2/usgal' },
 *   loss: { value: 30, unit: '%' },
 *   unit: 'ft2/usgal',
 * }).value.toFixed(1); // => '70.0'
 * ```
 */
export const practicalSpreadRate = /* @__PURE__ */ monotone(
  { spreadRate: '+', loss: '-' },
  <U extends SpreadRateUnit>(input: PracticalSpreadRateInput<U>): Quantity<U> => {
    const { spreadRate, loss, unit } = fields('practicalSpreadRate', input);
    const spreadRate_perM = read('practicalSpreadRate', 'spreadRate', spreadRate, SPREAD_RATE, POSITIVE);
    const lossShare = read('practicalSpreadRate', 'loss', loss, SHARE, PART);
    return write('practicalSpreadRate', spreadRate_perM * (1 - lossShare), SPREAD_RATE, unit);
  },
);
