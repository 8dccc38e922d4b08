import { LENGTH, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { checkDepth } from './checkDepth.ts';

/** Input of {@link jointVolume}. */
export interface JointVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** All of its running length. */
  readonly length: Length;
  /** Across the joint. */
  readonly width: Length;
  /** Depth that is filled. */
  readonly depth: Length;
  /** Proud of the floor, to be shaved flush, as a share of the joint. None where not given. */
  readonly overfill?: Share | undefined;
  /** Thickness of the slab, so that a depth beyond it is found. */
  readonly slabThickness?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What fills a saw cut or a joint of one width and depth.
 *
 * @formula
 * ```math
 * V = l \, w \, d \, (1 + o)
 * ```
 * @units lengths, share; answers volume.
 * @validRange length, width and depth above 0, overfill 0 or more; a depth no more than that of the slab. A
 * backer rod takes its part of the depth: give the depth above it.
 * @monotone length +, width +, depth +, overfill +
 * @accuracy Exact up to round-off: relative error below 1e-15. Nothing for what stays in the cartridge.
 * @source common-practice
 * @param input - The joint and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` for a joint deeper than the slab.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.jointVolume({
 *   length: { value: 100, unit: 'ft' },
 *   width: { value: 0.25, unit: 'in' },
 *   depth: { value: 1, unit: 'in' },
 *   unit: 'usgal',
 * }).value.toFixed(3); // => '1.299'
 * ```
 */
export const jointVolume = /* @__PURE__ */ monotone(
  { length: '+', width: '+', depth: '+', overfill: '+' },
  <U extends VolumeUnit>(input: JointVolumeInput<U>): Quantity<U> => {
    const { length, width, depth, overfill, slabThickness, unit } = fields('jointVolume', input);
    const length_m = read('jointVolume', 'length', length, LENGTH, POSITIVE);
    const width_m = read('jointVolume', 'width', width, LENGTH, POSITIVE);
    const depth_m = read('jointVolume', 'depth', depth, LENGTH, POSITIVE);
    const slab_m = readOr(Infinity, 'jointVolume', 'slabThickness', slabThickness, LENGTH, POSITIVE);
    checkDepth('jointVolume', depth, depth_m, slab_m);
    const overfillShare = readOr(0, 'jointVolume', 'overfill', overfill, SHARE, NOT_NEGATIVE);
    return write('jointVolume', length_m * width_m * depth_m * (1 + overfillShare), VOLUME, unit);
  },
);
