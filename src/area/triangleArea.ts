import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link triangleArea}. */
export interface TriangleAreaInput<U extends AreaUnit = AreaUnit> {
  /** One side. */
  readonly base: Length;
  /** From the opposite corner to that side, at right angles to it. */
  readonly height: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a triangular piece of floor from one side and the height over it.
 *
 * @formula
 * ```math
 * A = \frac{b \, h}{2}
 * ```
 * @units lengths; answers area.
 * @validRange base and height above 0, measured at right angles to each other.
 * @monotone base +, height +
 * @accuracy Exact up to round-off: relative error below 5e-16.
 * @source definition
 * @param input - Side, height and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.triangleArea({ base: { value: 18, unit: 'ft' }, height: { value: 13, unit: 'ft' }, unit: 'ft2' }).value.toFixed(1);
 * // => '117.0'
 * ```
 */
export const triangleArea = /* @__PURE__ */ monotone(
  { base: '+', height: '+' },
  <U extends AreaUnit>(input: TriangleAreaInput<U>): Quantity<U> => {
    const { base, height, unit } = fields('triangleArea', input);
    const base_m = read('triangleArea', 'base', base, LENGTH, POSITIVE);
    const height_m = read('triangleArea', 'height', height, LENGTH, POSITIVE);
    return write('triangleArea', (base_m * height_m) / 2, AREA, unit);
  },
);
