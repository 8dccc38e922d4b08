import { AREA, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link slopedArea}. */
export interface SlopedAreaInput<U extends AreaUnit = AreaUnit> {
  /** Area as the plan shows it, seen from above. */
  readonly planArea: Area;
  /** Rise over run: 12.5 % for 1 in 8, 2.0833 % for 1/4 in a foot. */
  readonly slope: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area on the slope of a ramp or a floor with falls, which is more than the plan shows.
 *
 * @formula
 * ```math
 * A = A_\text{plan} \sqrt{1 + s^2}
 * ```
 * @units area, share; answers area.
 * @validRange planArea above 0, slope 0 or more, the same all over.
 * @monotone planArea +, slope +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source definition
 * @param input - Area in plan, slope and the unit wanted.
 * @returns The area on the slope in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.slopedArea({
 *   planArea: { value: 240, unit: 'ft2' },
 *   slope: { value: 12.5, unit: '%' },
 *   unit: 'ft2',
 * }).value.toFixed(3); // => '241.868'
 * ```
 */
export const slopedArea = /* @__PURE__ */ monotone(
  { planArea: '+', slope: '+' },
  <U extends AreaUnit>(input: SlopedAreaInput<U>): Quantity<U> => {
    const { planArea, slope, unit } = fields('slopedArea', input);
    const plan_m2 = read('slopedArea', 'planArea', planArea, AREA, POSITIVE);
    const slopeShare = read('slopedArea', 'slope', slope, SHARE, NOT_NEGATIVE);
    return write('slopedArea', plan_m2 * Math.sqrt(1 + slopeShare * slopeShare), AREA, unit);
  },
);
