import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link padSideArea}. */
export interface PadSideAreaInput<U extends AreaUnit = AreaUnit> {
  /** One side of the pad. */
  readonly length: Length;
  /** The other side. */
  readonly width: Length;
  /** Height above the floor. */
  readonly height: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of the four sides of a machine pad or plinth. Its top takes the place of the floor under it, so a floor
 * measured through needs only the sides on top of it.
 *
 * @formula
 * ```math
 * A = 2 \, (a + b) \, h
 * ```
 * @units lengths; answers area.
 * @validRange length, width and height above 0. Where the pad was deducted from the floor, its top is to be added.
 * @monotone length +, width +, height +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source common-practice
 * @param input - The pad and the unit wanted.
 * @returns The area of its sides in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.padSideArea({
 *   length: { value: 6, unit: 'ft' },
 *   width: { value: 4, unit: 'ft' },
 *   height: { value: 6, unit: 'in' },
 *   unit: 'ft2',
 * }).value.toFixed(1); // => '10.0'
 * ```
 */
export const padSideArea = /* @__PURE__ */ monotone(
  { length: '+', width: '+', height: '+' },
  <U extends AreaUnit>(input: PadSideAreaInput<U>): Quantity<U> => {
    const { length, width, height, unit } = fields('padSideArea', input);
    const length_m = read('padSideArea', 'length', length, LENGTH, POSITIVE);
    const width_m = read('padSideArea', 'width', width, LENGTH, POSITIVE);
    const height_m = read('padSideArea', 'height', height, LENGTH, POSITIVE);
    return write('padSideArea', 2 * (length_m + width_m) * height_m, AREA, unit);
  },
);
