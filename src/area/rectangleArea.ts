import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link rectangleArea}. */
export interface RectangleAreaInput<U extends AreaUnit = AreaUnit> {
  /** One side. */
  readonly length: Length;
  /** The side at right angles to it. */
  readonly width: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a room with four right angles.
 *
 * @formula
 * ```math
 * A = a \, b
 * ```
 * @units lengths; answers area.
 * @validRange length and width above 0. A room that is not square in its corners is a `quadrilateralArea`.
 * @monotone length +, width +
 * @accuracy Exact up to round-off: relative error below 5e-16.
 * @source definition
 * @param input - The sides and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.rectangleArea({ length: { value: 84, unit: 'ft' }, width: { value: 52, unit: 'ft' }, unit: 'ft2' }).value.toFixed(1);
 * // => '4368.0'
 * ```
 */
export const rectangleArea = /* @__PURE__ */ monotone(
  { length: '+', width: '+' },
  <U extends AreaUnit>(input: RectangleAreaInput<U>): Quantity<U> => {
    const { length, width, unit } = fields('rectangleArea', input);
    const length_m = read('rectangleArea', 'length', length, LENGTH, POSITIVE);
    const width_m = read('rectangleArea', 'width', width, LENGTH, POSITIVE);
    return write('rectangleArea', length_m * width_m, AREA, unit);
  },
);
