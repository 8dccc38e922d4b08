import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { heron } from './heron.ts';

/** Input of {@link triangleAreaBySides}. */
export interface TriangleAreaBySidesInput<U extends AreaUnit = AreaUnit> {
  /** First side. */
  readonly a: Length;
  /** Second side. */
  readonly b: Length;
  /** Third side. */
  readonly c: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a triangular piece of floor from its three sides, where no right angle can be set out.
 *
 * @formula
 * ```math
 * s = \frac{a + b + c}{2} \qquad A = \sqrt{s \, (s - a) (s - b) (s - c)}
 * ```
 * @units lengths; answers area.
 * @validRange every side above 0 and shorter than the other two together.
 * @monotone a none, b none, c none
 * @accuracy Relative error below 1e-14 also for a needle, as good as its sides: one wrong by a hundredth of the height
 * spoils a needle.
 * @source definition
 * @param input - The sides and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the sides do not close.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.triangleAreaBySides({
 *   a: { value: 3, unit: 'm' },
 *   b: { value: 4, unit: 'm' },
 *   c: { value: 5, unit: 'm' },
 *   unit: 'm2',
 * }); // => { value: 6, unit: 'm2' }
 * ```
 */
export const triangleAreaBySides = /* @__PURE__ */ monotone(
  { a: 'none', b: 'none', c: 'none' },
  <U extends AreaUnit>(input: TriangleAreaBySidesInput<U>): Quantity<U> => {
    const { a, b, c, unit } = fields('triangleAreaBySides', input);
    const a_m = read('triangleAreaBySides', 'a', a, LENGTH, POSITIVE);
    const b_m = read('triangleAreaBySides', 'b', b, LENGTH, POSITIVE);
    const c_m = read('triangleAreaBySides', 'c', c, LENGTH, POSITIVE);
    const area_m2 =
      heron(a_m, b_m, c_m) ??
      refuse('triangleAreaBySides', 'conflict', [], 'three sides that close', asGiven([a, b, c]));
    return write('triangleAreaBySides', area_m2, AREA, unit);
  },
);

function asGiven(sides: readonly Length[]): string {
  return sides.map((side) => `${side.value} ${side.unit}`).join(', ');
}
