import { AREA } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { monotone } from '../core/monotone.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { readOutline, type OutlineInput } from './outline.ts';
import { sumAround } from './sumAround.ts';

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
 * @accuracy Relative error below 1e-12 for up to 100,000 corners, also in the coordinates of a national grid, down to
 * strips of a ten-thousandth of their length; ten times as narrow costs a digit.
 * @source definition
 * @param input - Corners, holes and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the outline crosses or touches itself, with the two
 * sides that meet; side 1 starts from the first corner, and those of the holes are counted on.
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
    const { x, y, ends, unit_m } = readOutline('polygonArea', fields('polygonArea', input));
    const at = (values: Float64Array, i: number) => values[i] as number;
    const twice = ends.map((end, ring) =>
      sumAround(
        ends[ring - 1] ?? 0,
        end,
        (last, i) => at(x, last) * (at(y, i) - at(y, last)) - at(y, last) * (at(x, i) - at(x, last)),
      ),
    );
    const area = twice.map((sum) => Math.abs(sum) / 2).reduce((outer, hole) => outer - hole);
    return write('polygonArea', area * unit_m * unit_m, AREA, input.unit);
  },
);
