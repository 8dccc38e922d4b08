import { LENGTH, SPREAD_RATE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { SpreadRateUnit } from '../core/unitCodes.ts';

/** Input of {@link spreadRateForThickness}. */
export interface SpreadRateForThicknessInput<U extends SpreadRateUnit = SpreadRateUnit> {
  /** Wet film to be laid. */
  readonly wetThickness: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much floor a gallon or a litre covers at a wet film, with nothing lost and nothing drunk.
 *
 * @formula
 * ```math
 * S = \frac{1}{w}
 * ```
 * @units length; answers area per volume.
 * @validRange wetThickness above 0. A figure without losses: what must be mixed is the answer of `volumeNeeded`.
 * @monotone wetThickness -
 * @accuracy Exact up to round-off: relative error below 5e-16. 1 US gal at 1 mil is 9625/6 ft².
 * @source definition, pcrc-coverage-2003
 * @param input - Wet film and the unit wanted.
 * @returns The spread rate in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.spreadRateForThickness({ wetThickness: { value: 1, unit: 'mil' }, unit: 'ft2/usgal' }).value.toFixed(2);
 * // => '1604.17'
 * ```
 */
export const spreadRateForThickness = /* @__PURE__ */ monotone(
  { wetThickness: '-' },
  <U extends SpreadRateUnit>(input: SpreadRateForThicknessInput<U>): Quantity<U> => {
    const { wetThickness, unit } = fields('spreadRateForThickness', input);
    const film_m = read('spreadRateForThickness', 'wetThickness', wetThickness, LENGTH, POSITIVE);
    return write('spreadRateForThickness', 1 / film_m, SPREAD_RATE, unit);
  },
);
