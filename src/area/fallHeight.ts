import { LENGTH, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link fallHeight}. */
export interface FallHeightInput<U extends LengthUnit = LengthUnit> {
  /** Rise over run. */
  readonly slope: Share;
  /** From the edge to the drain, in plan. */
  readonly run: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much a floor has to drop on its way to a drain.
 *
 * @formula
 * ```math
 * h = s \, l
 * ```
 * @units share, length; answers length.
 * @validRange slope 0 or more, run above 0, measured in plan along the way that the water takes.
 * @monotone slope +, run +
 * @accuracy Exact up to round-off: relative error below 5e-16.
 * @source definition
 * @param input - Slope, run and the unit wanted.
 * @returns The fall in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.fallHeight({ slope: { value: 2, unit: '%' }, run: { value: 3, unit: 'm' }, unit: 'mm' }).value.toFixed(1); // => '60.0'
 * ```
 */
export const fallHeight = /* @__PURE__ */ monotone(
  { slope: '+', run: '+' },
  <U extends LengthUnit>(input: FallHeightInput<U>): Quantity<U> => {
    const { slope, run, unit } = fields('fallHeight', input);
    const slopeShare = read('fallHeight', 'slope', slope, SHARE, NOT_NEGATIVE);
    const run_m = read('fallHeight', 'run', run, LENGTH, POSITIVE);
    return write('fallHeight', slopeShare * run_m, LENGTH, unit);
  },
);
