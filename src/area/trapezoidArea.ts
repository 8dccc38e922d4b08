import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link trapezoidArea}. */
export interface TrapezoidAreaInput<U extends AreaUnit = AreaUnit> {
  /** One of the two parallel sides. */
  readonly base: Length;
  /** The other parallel side. */
  readonly top: Length;
  /** From one to the other, at right angles to them. */
  readonly height: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a piece of floor with two parallel sides.
 *
 * @formula
 * ```math
 * A = \frac{a + b}{2} \, h
 * ```
 * @units lengths; answers area.
 * @validRange base, top and height above 0; base and top parallel. Where they are not, use `quadrilateralArea`.
 * @monotone base +, top +, height +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source navedtra-14119
 * @param input - Sides, height and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.trapezoidArea({
 *   base: { value: 8, unit: 'm' },
 *   top: { value: 6, unit: 'm' },
 *   height: { value: 10, unit: 'm' },
 *   unit: 'm2',
 * }); // => { value: 70, unit: 'm2' }
 * ```
 */
export const trapezoidArea = /* @__PURE__ */ monotone(
  { base: '+', top: '+', height: '+' },
  <U extends AreaUnit>(input: TrapezoidAreaInput<U>): Quantity<U> => {
    const { base, top, height, unit } = fields('trapezoidArea', input);
    const base_m = read('trapezoidArea', 'base', base, LENGTH, POSITIVE);
    const top_m = read('trapezoidArea', 'top', top, LENGTH, POSITIVE);
    const height_m = read('trapezoidArea', 'height', height, LENGTH, POSITIVE);
    return write('trapezoidArea', ((base_m + top_m) / 2) * height_m, AREA, unit);
  },
);
