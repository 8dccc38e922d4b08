import { LENGTH, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link slope}. */
export interface SlopeInput<U extends ShareUnit = ShareUnit> {
  /** How much higher one end lies. */
  readonly rise: Length;
  /** How far apart the ends are in plan. */
  readonly run: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How steep a ramp or a fall is: what it rises over what it runs.
 *
 * @formula
 * ```math
 * s = \frac{h}{l}
 * ```
 * @units lengths; answers share.
 * @validRange rise 0 or more, run above 0, measured level. 1/4 in a foot is 2.0833 %, 1 in 8 is 12.5 %.
 * @monotone rise +, run -
 * @accuracy Exact up to round-off: relative error below 5e-16.
 * @source definition
 * @param input - Rise, run and the unit wanted.
 * @returns The slope in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.slope({ rise: { value: 0.25, unit: 'in' }, run: { value: 1, unit: 'ft' }, unit: '%' }).value.toFixed(4); // => '2.0833'
 * ```
 */
export const slope = /* @__PURE__ */ monotone(
  { rise: '+', run: '-' },
  <U extends ShareUnit>(input: SlopeInput<U>): Quantity<U> => {
    const { rise, run, unit } = fields('slope', input);
    const rise_m = read('slope', 'rise', rise, LENGTH, NOT_NEGATIVE);
    const run_m = read('slope', 'run', run, LENGTH, POSITIVE);
    return write('slope', rise_m / run_m, SHARE, unit);
  },
);
