import { LENGTH, SHARE, VOLUME } from '../core/dimensions.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readCount } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { checkDepth } from './checkDepth.ts';

/** Input of {@link spallVolume}. */
export interface SpallVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** How many of them. */
  readonly count: number;
  /** Longest way across. */
  readonly length: Length;
  /** At right angles to it. */
  readonly width: Length;
  /** Deepest point. */
  readonly depth: Length;
  /** What they fill of the box around them. */
  readonly fullness: Share;
  /** Thickness of the slab. */
  readonly slabThickness: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What fills spalls of one size: holes that are bowls rather than boxes.
 *
 * @formula
 * ```math
 * V = n \, k \, l \, b \, d
 * ```
 * @units count, lengths, share; answers volume.
 * @validRange count a whole number of 1 or more; length, width and depth above 0; fullness above 0 % and up to 100 %,
 * in use 50 to 80 %; a depth no more than that of the slab.
 * @monotone length +, width +, depth +, fullness +
 * @accuracy Exact up to round-off: relative error below 1e-15. Counted spalls are good for about 30 %.
 * @source common-practice
 * @param input - The spalls and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` for a spall deeper than the slab.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.spallVolume({
 *   count: 14,
 *   length: { value: 5, unit: 'in' },
 *   width: { value: 4, unit: 'in' },
 *   depth: { value: 0.5, unit: 'in' },
 *   fullness: { value: 60, unit: '%' },
 *   slabThickness: { value: 6, unit: 'in' },
 *   unit: 'in3',
 * }).value.toFixed(1); // => '84.0'
 * ```
 */
export const spallVolume = /* @__PURE__ */ monotone(
  { length: '+', width: '+', depth: '+', fullness: '+' },
  <U extends VolumeUnit>(input: SpallVolumeInput<U>): Quantity<U> => {
    const { count, length, width, depth, fullness, slabThickness, unit } = fields('spallVolume', input);
    const number = readCount('spallVolume', 'count', count);
    const length_m = read('spallVolume', 'length', length, LENGTH, POSITIVE);
    const width_m = read('spallVolume', 'width', width, LENGTH, POSITIVE);
    const depth_m = read('spallVolume', 'depth', depth, LENGTH, POSITIVE);
    const fullShare = read('spallVolume', 'fullness', fullness, SHARE, PART_OR_WHOLE);
    const slab_m = read('spallVolume', 'slabThickness', slabThickness, LENGTH, POSITIVE);
    checkDepth('spallVolume', depth, depth_m, slab_m);
    return write('spallVolume', number * fullShare * length_m * width_m * depth_m, VOLUME, unit);
  },
);
