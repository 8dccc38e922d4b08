import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { heron } from './heron.ts';

/** Input of {@link quadrilateralArea}. */
export interface QuadrilateralAreaInput<U extends AreaUnit = AreaUnit> {
  /** First side, walking around. */
  readonly a: Length;
  /** Second side. */
  readonly b: Length;
  /** Third side. */
  readonly c: Length;
  /** Fourth side, back to the start. */
  readonly d: Length;
  /** From the start to the corner between `b` and `c`. */
  readonly diagonal: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a skew room from its four sides and one diagonal, all with the tape.
 *
 * The diagonal is what makes it right: the four sides alone leave the angles open, and the mean of opposite sides
 * multiplied is always too much.
 *
 * @formula
 * ```math
 * A = A_\triangle(a, b, e) + A_\triangle(c, d, e)
 * ```
 * @units lengths; answers area.
 * @validRange every length above 0; `a`, `b` and the diagonal close to a triangle, and so do `c`, `d` and the diagonal.
 * The diagonal lies inside the room.
 * @monotone a none, b none, c none, d none, diagonal none
 * @accuracy Relative error below 1e-14, as good as the tape.
 * @source definition
 * @param input - Sides in walking order, diagonal and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where a triangle does not close.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * const m = (value: number) => ({ value, unit: 'm' as const });
 * area.quadrilateralArea({ a: m(3), b: m(4), c: m(3), d: m(4), diagonal: m(5), unit: 'm2' });
 * // => { value: 12, unit: 'm2' }
 * ```
 */
export const quadrilateralArea = /* @__PURE__ */ monotone(
  { a: 'none', b: 'none', c: 'none', d: 'none', diagonal: 'none' },
  <U extends AreaUnit>(input: QuadrilateralAreaInput<U>): Quantity<U> => {
    const { a, b, c, d, diagonal, unit } = fields('quadrilateralArea', input);
    const side = (key: string, length: Length) => read('quadrilateralArea', key, length, LENGTH, POSITIVE);
    const [a_m, b_m, c_m, d_m] = [side('a', a), side('b', b), side('c', c), side('d', d)];
    const diagonal_m = side('diagonal', diagonal);
    const no = (sides: string) =>
      refuse('quadrilateralArea', 'conflict', ['diagonal'], `a diagonal that closes with ${sides}`, diagonal);
    const first_m2 = heron(a_m, b_m, diagonal_m) ?? no('a and b');
    const second_m2 = heron(c_m, d_m, diagonal_m) ?? no('c and d');
    return write('quadrilateralArea', first_m2 + second_m2, AREA, unit);
  },
);
