import { AREA, SPREAD_RATE, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { SpreadRateUnit } from '../core/unitCodes.ts';

/** Input of {@link spreadRate}. */
export interface SpreadRateInput<U extends SpreadRateUnit = SpreadRateUnit> {
  /** Area covered. */
  readonly area: Area;
  /** Mixed volume that covered it. */
  readonly volume: Volume;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much floor a gallon or a litre of mixed material covered: the figure a test square gives.
 *
 * @formula
 * ```math
 * S = \frac{A}{V}
 * ```
 * @units area, volume; answers area per volume.
 * @validRange area above 0, volume above 0.
 * @monotone area +, volume -
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source definition
 * @param input - Area, volume and the unit wanted.
 * @returns The spread rate in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * // A cup of 16 US fl oz pulled over 80 ft².
 * film.spreadRate({ area: { value: 80, unit: 'ft2' }, volume: { value: 16, unit: 'usfloz' }, unit: 'ft2/usgal' });
 * // => { value: 640, unit: 'ft2/usgal' }
 * ```
 */
export const spreadRate = /* @__PURE__ */ monotone(
  { area: '+', volume: '-' },
  <U extends SpreadRateUnit>(input: SpreadRateInput<U>): Quantity<U> => {
    const { area, volume, unit } = fields('spreadRate', input);
    const area_m2 = read('spreadRate', 'area', area, AREA, POSITIVE);
    const volume_m3 = read('spreadRate', 'volume', volume, VOLUME, POSITIVE);
    return write('spreadRate', area_m2 / volume_m3, SPREAD_RATE, unit);
  },
);
