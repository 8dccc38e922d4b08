import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { arc } from './arc.ts';

/** Input of {@link segmentArea}. */
export interface SegmentAreaInput<U extends AreaUnit = AreaUnit> {
  /** Straight across the open side. */
  readonly chord: Length;
  /** From the middle of the chord to the arc, at right angles. Half the chord where the bay is half a circle. */
  readonly rise: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a round bay: what an arc cuts off beyond a straight line, from two lengths that a tape can reach.
 *
 * @formula
 * ```math
 * \theta = 4 \arctan \frac{2 h}{c} \qquad r = \frac{c^2 / 4 + h^2}{2 h} \qquad A = \frac{r^2}{2} \, (\theta - \sin\theta)
 * ```
 * @units lengths; answers area.
 * @validRange chord and rise above 0; the edge is an arc of one circle. A rise above half the chord is more than half a
 * circle.
 * @monotone chord +, rise +
 * @accuracy Relative error below 3e-15 also for a very flat arc.
 * @source definition
 * @param input - Chord, rise and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.segmentArea({ chord: { value: 22, unit: 'ft' }, rise: { value: 11, unit: 'ft' }, unit: 'ft2' }).value.toFixed(3);
 * // => '190.066'
 * ```
 */
export const segmentArea = /* @__PURE__ */ monotone(
  { chord: '+', rise: '+' },
  <U extends AreaUnit>(input: SegmentAreaInput<U>): Quantity<U> => {
    const { chord, rise, unit } = fields('segmentArea', input);
    const chord_m = read('segmentArea', 'chord', chord, LENGTH, POSITIVE);
    const rise_m = read('segmentArea', 'rise', rise, LENGTH, POSITIVE);
    const { radius, angle } = arc(chord_m, rise_m);
    return write('segmentArea', radius * radius * bulge(angle), AREA, unit);
  },
);

/** Half of an angle less its sine, by its series where the difference would lose its digits. */
function bulge(angle: number): number {
  if (angle > 1) return (angle - Math.sin(angle)) / 2;
  let sum = 0;
  let term = angle ** 3 / 12;
  for (let n = 4; sum + term !== sum; n += 2) {
    sum += term;
    term *= -(angle * angle) / (n * (n + 1));
  }
  return sum;
}
