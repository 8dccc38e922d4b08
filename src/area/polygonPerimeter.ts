import { LENGTH } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { readOutline, type OutlineInput } from './outline.ts';
import { sumAround } from './sumAround.ts';

/** Input of {@link polygonPerimeter}. */
export interface PolygonPerimeterInput<U extends LengthUnit = LengthUnit> extends OutlineInput {
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Length of all edges of a room from its corners, those of its holes included: what is cut in, coved or masked.
 *
 * @formula
 * ```math
 * P = \sum_i \sqrt{(x_{i+1} - x_i)^2 + (y_{i+1} - y_i)^2}
 * ```
 * @units lengths under one unit; answers length.
 * @validRange as `polygonArea`.
 * @monotone corners none, holes none
 * @accuracy Relative error below 1e-12 for up to 100,000 corners.
 * @source definition
 * @param input - Corners, holes and the unit wanted.
 * @returns The perimeter in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the outline crosses or touches itself, with the two
 * sides that meet; side 1 starts from the first corner, and those of the holes are counted on.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.polygonPerimeter({
 *   corners: { unit: 'ft', points: [[0, 0], [20, 0], [20, 12], [12, 12], [12, 30], [0, 30]] },
 *   unit: 'ft',
 * }).value.toFixed(3); // => '100.000'
 * ```
 */
export const polygonPerimeter = /* @__PURE__ */ monotone(
  { corners: 'none', holes: 'none' },
  <U extends LengthUnit>(input: PolygonPerimeterInput<U>): Quantity<U> => {
    const { x, y, ends, unit_m } = readOutline('polygonPerimeter', fields('polygonPerimeter', input));
    const at = (values: Float64Array, i: number) => values[i] as number;
    const length = (last: number, i: number) =>
      Math.sqrt((at(x, i) - at(x, last)) ** 2 + (at(y, i) - at(y, last)) ** 2);
    const around = ends.map((end, ring) => sumAround(ends[ring - 1] ?? 0, end, length));
    return write('polygonPerimeter', around.reduce((a, b) => a + b) * unit_m, LENGTH, input.unit);
  },
);
