import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link ringArea}. */
export interface RingAreaInput<U extends AreaUnit = AreaUnit> {
  /** Across the outer edge. */
  readonly outerDiameter: Length;
  /** Across the inner edge. */
  readonly innerDiameter: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of the floor around a round tank or column.
 *
 * @formula
 * ```math
 * A = \frac{\pi}{4} \, (D - d)(D + d)
 * ```
 * @units lengths; answers area.
 * @validRange both above 0, innerDiameter below outerDiameter.
 * @monotone outerDiameter +, innerDiameter -
 * @accuracy Exact up to round-off: relative error below 8e-16 of what the two diameters, as read, enclose.
 * @source navedtra-14119
 * @param input - Diameters and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the inner is not the smaller one.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.ringArea({
 *   outerDiameter: { value: 10, unit: 'm' },
 *   innerDiameter: { value: 3, unit: 'm' },
 *   unit: 'm2',
 * }).value.toFixed(4); // => '71.4712'
 * ```
 */
export const ringArea = /* @__PURE__ */ monotone(
  { outerDiameter: '+', innerDiameter: '-' },
  <U extends AreaUnit>(input: RingAreaInput<U>): Quantity<U> => {
    const { outerDiameter, innerDiameter, unit } = fields('ringArea', input);
    const outer_m = read('ringArea', 'outerDiameter', outerDiameter, LENGTH, POSITIVE);
    const inner_m = read('ringArea', 'innerDiameter', innerDiameter, LENGTH, POSITIVE);
    if (inner_m >= outer_m * (1 - 1e-12)) {
      refuse('ringArea', 'conflict', ['innerDiameter'], 'less than outerDiameter', innerDiameter);
    }
    return write('ringArea', (Math.PI / 4) * (outer_m - inner_m) * (outer_m + inner_m), AREA, unit);
  },
);
