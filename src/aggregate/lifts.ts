import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link lifts}. */
export interface LiftsInput<U extends LengthUnit = LengthUnit> {
  /** Thickness to be built. */
  readonly thickness: Length;
  /** Most that the instructions of the material allow in one lift. */
  readonly greatestLift: Length;
  /** Least that they allow. No such limit where not given. */
  readonly leastLift?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** How a thickness is built. */
export interface Lifts<U extends LengthUnit = LengthUnit> {
  /** How many lifts. */
  readonly count: number;
  /** Thickness of each, all alike. */
  readonly each: Quantity<U>;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/**
 * In how many lifts a thickness is laid when one would be too thick: a thick lift heats up, cracks or slumps.
 *
 * @formula
 * ```math
 * n = \left\lceil \frac{d}{d_\text{max}} \right\rceil \qquad d_1 = \frac{d}{n}
 * ```
 * @units lengths; answers a count and a length.
 * @validRange thickness and greatestLift above 0; leastLift 0 or more and no more than greatestLift.
 * @accuracy The count is exact for thicknesses given to 12 digits: 1 in in lifts of 1 in is one lift.
 * @source ufgs-03930
 * @param input - Thickness, limits and the unit wanted.
 * @returns Count and thickness of the lifts; a caution where a lift comes out too thin.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const inch = (value: number) => ({ value, unit: 'in' as const });
 * const { count, each } = aggregate.lifts({ thickness: inch(2.5), greatestLift: inch(1), unit: 'in' });
 * [count, each.value.toFixed(3)]; // => [3, '0.833']
 * ```
 */
export function lifts<U extends LengthUnit>(input: LiftsInput<U>): Lifts<U> {
  const { thickness, greatestLift, leastLift, unit } = fields('lifts', input);
  const thickness_m = read('lifts', 'thickness', thickness, LENGTH, POSITIVE);
  const most_m = read('lifts', 'greatestLift', greatestLift, LENGTH, POSITIVE);
  const least_m = readOr(0, 'lifts', 'leastLift', leastLift, LENGTH, NOT_NEGATIVE);
  if (least_m > most_m * (1 + 1e-12)) {
    refuse('lifts', 'conflict', ['leastLift'], 'no more than greatestLift', leastLift);
  }
  const ratio = thickness_m / most_m;
  if (!(ratio < Number.MAX_SAFE_INTEGER)) {
    refuse('lifts', 'too-large', ['thickness'], 'a number of lifts that can be counted', thickness);
  }
  // Twelve digits are what a quotient is worth: 0.3 m in lifts of 0.1 m are three.
  const count = Math.max(Math.ceil(Number(ratio.toPrecision(12))), 1);
  const each_m = thickness_m / count;
  const each = write('lifts', each_m, LENGTH, unit);
  return {
    count,
    each,
    cautions:
      each_m < least_m * (1 - 1e-12)
        ? [{ code: 'lift-too-thin', severity: 'caution', params: { each }, source: 'common-practice' }]
        : [],
    basis: [
      basis('count', 'aggregate.lifts', 'n = ⌈d / dmax⌉', 'ufgs-03930', {
        thickness,
        greatestLift,
        leastLift,
      }),
    ],
  };
}
