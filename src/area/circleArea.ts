import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link circleArea}. */
export interface CircleAreaInput<U extends AreaUnit = AreaUnit> {
  /** Straight across the middle. */
  readonly diameter: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a round room, a column or a tank foot.
 *
 * @formula
 * ```math
 * A = \frac{\pi}{4} \, d^2
 * ```
 * @units length; answers area.
 * @validRange diameter above 0.
 * @monotone diameter +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source machinery-handbook-31
 * @param input - Diameter and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.circleArea({ diameter: { value: 2, unit: 'm' }, unit: 'm2' }).value.toFixed(4); // => '3.1416'
 * ```
 */
export const circleArea = /* @__PURE__ */ monotone(
  { diameter: '+' },
  <U extends AreaUnit>(input: CircleAreaInput<U>): Quantity<U> => {
    const { diameter, unit } = fields('circleArea', input);
    const diameter_m = read('circleArea', 'diameter', diameter, LENGTH, POSITIVE);
    return write('circleArea', (Math.PI / 4) * diameter_m * diameter_m, AREA, unit);
  },
);
