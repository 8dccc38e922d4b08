import { AREA } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { monotone } from '../core/monotone.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { readOutline, type Outline, type OutlineInput } from './outline.ts';

/** Input of {@link polygonArea}. */
export interface PolygonAreaInput<U extends AreaUnit = AreaUnit> extends OutlineInput {
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a room of any straight-sided shape from its corners, less what is cut out of it.
 *
 * @formula
 * ```math
 * A = \frac{1}{2} \left| \sum_i (x_i \, y_{i+1} - x_{i+1} \, y_i) \right|
 * ```
 * @units lengths under one unit; answers area.
 * @validRange at least 3 different corners, in walking order either way round; no two walls cross or touch; every hole
 * lies inside and apart from the others.
 * @monotone corners none, holes none
 * @accuracy Relative error below 1e-12 for up to 100,000 corners, also in the coordinates of a national grid.
 * @source definition
 * @param input - Corners, holes and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the outline crosses or touches itself.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.polygonArea({
 *   corners: { unit: 'ft', points: [[0, 0], [20, 0], [20, 12], [12, 12], [12, 30], [0, 30]] },
 *   unit: 'ft2',
 * }).value.toFixed(3); // => '456.000'
 * ```
 */
export const polygonArea = /* @__PURE__ */ monotone(
  { corners: 'none', holes: 'none' },
  <U extends AreaUnit>(input: PolygonAreaInput<U>): Quantity<U> => {
    const outline = readOutline('polygonArea', fields('polygonArea', input));
    const areas = outline.ends.map((end, ring) => enclosed(outline, outline.ends[ring - 1] ?? 0, end));
    const area = areas.reduce((outer, hole) => outer - hole);
    return write('polygonArea', area * outline.unit_m * outline.unit_m, AREA, input.unit);
  },
);

/** Area inside one ring, in the unit of its corners. */
function enclosed({ x, y }: Outline, start: number, end: number): number {
  const at = (values: Float64Array, i: number) => values[i] as number;
  let sum = 0;
  // What rounding lost of the sum, kept apart (Neumaier, 1974).
  let lost = 0;
  for (let i = start, last = end - 1; i < end; last = i++) {
    const twice = at(x, last) * (at(y, i) - at(y, last)) - at(y, last) * (at(x, i) - at(x, last));
    const total = sum + twice;
    lost += Math.abs(sum) >= Math.abs(twice) ? sum - total + twice : twice - total + sum;
    sum = total;
  }
  return Math.abs(sum + lost) / 2;
}
