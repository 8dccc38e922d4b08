import { LENGTH } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link coveHeight}. */
export interface CoveHeightInput<U extends LengthUnit = LengthUnit> {
  /** From the floor to the top of the cove base. */
  readonly height: Length;
  /** Radius of the hollow between floor and wall. */
  readonly radius: Length;
  /** What it reaches out over the floor beyond the hollow. None where not given. */
  readonly toe?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How high a cove base is when it is rolled out flat: what a roller has to cover for each length of wall.
 *
 * @formula
 * ```math
 * d = (h - r) + \frac{\pi}{2} \, r + t
 * ```
 * @units lengths; answers length.
 * @validRange height above 0, radius 0 or more and not above height, toe 0 or more. A floor measured from wall to wall
 * holds the strip under the hollow already: about one radius along the wall is then counted twice.
 * @monotone height +, radius +, toe +
 * @accuracy Exact up to round-off: relative error below 8e-16.
 * @source common-practice
 * @param input - The cove and the unit wanted.
 * @returns The developed height in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the radius is above the height.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.coveHeight({ height: { value: 4, unit: 'in' }, radius: { value: 1, unit: 'in' }, unit: 'in' }).value.toFixed(4);
 * // => '4.5708'
 * ```
 */
export const coveHeight = /* @__PURE__ */ monotone(
  { height: '+', radius: '+', toe: '+' },
  <U extends LengthUnit>(input: CoveHeightInput<U>): Quantity<U> => {
    const { height, radius, toe, unit } = fields('coveHeight', input);
    const height_m = read('coveHeight', 'height', height, LENGTH, POSITIVE);
    const radius_m = read('coveHeight', 'radius', radius, LENGTH, NOT_NEGATIVE);
    const toe_m = readOr(0, 'coveHeight', 'toe', toe, LENGTH, NOT_NEGATIVE);
    if (radius_m > height_m * (1 + 1e-12)) {
      refuse('coveHeight', 'conflict', ['radius'], 'not above height', radius);
    }
    return write('coveHeight', height_m - radius_m + (Math.PI / 2) * radius_m + toe_m, LENGTH, unit);
  },
);
