import { LENGTH, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { checkDepth } from './checkDepth.ts';

/** Input of {@link jointLength}. */
export interface JointLengthInput<U extends LengthUnit = LengthUnit> {
  /** Filler at hand. */
  readonly volume: Volume;
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
 * How far a cartridge or a gallon of filler reaches in a joint.
 *
 * @formula
 * ```math
 * l = \frac{V}{w \, d \, (1 + o)}
 * ```
 * @units volume, lengths, share; answers length.
 * @validRange volume, width and depth above 0, overfill 0 or more; a depth no more than that of the slab.
 * @monotone volume +, width -, depth -, overfill -
 * @accuracy Exact up to round-off: relative error below 1e-15. Nothing for what stays in the cartridge.
 * @source common-practice
 * @param input - Volume, joint and the unit wanted.
 * @returns The length in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` for a joint deeper than the slab.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.jointLength({
 *   volume: { value: 1, unit: 'usgal' },
 *   width: { value: 0.25, unit: 'in' },
 *   depth: { value: 0.25, unit: 'in' },
 *   unit: 'ft',
 * }).value.toFixed(1); // => '308.0'
 * ```
 */
export const jointLength = /* @__PURE__ */ monotone(
  { volume: '+', width: '-', depth: '-', overfill: '-' },
  <U extends LengthUnit>(input: JointLengthInput<U>): Quantity<U> => {
    const { volume, width, depth, overfill, slabThickness, unit } = fields('jointLength', input);
    const volume_m3 = read('jointLength', 'volume', volume, VOLUME, POSITIVE);
    const width_m = read('jointLength', 'width', width, LENGTH, POSITIVE);
    const depth_m = read('jointLength', 'depth', depth, LENGTH, POSITIVE);
    const slab_m = readOr(Infinity, 'jointLength', 'slabThickness', slabThickness, LENGTH, POSITIVE);
    checkDepth('jointLength', depth, depth_m, slab_m);
    const overfillShare = readOr(0, 'jointLength', 'overfill', overfill, SHARE, NOT_NEGATIVE);
    return write('jointLength', volume_m3 / (width_m * depth_m * (1 + overfillShare)), LENGTH, unit);
  },
);
