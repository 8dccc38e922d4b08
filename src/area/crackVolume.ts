import { LENGTH, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readChoice } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { checkDepth } from './checkDepth.ts';

/** Input of {@link crackVolume}. */
export interface CrackVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Along the crack. */
  readonly length: Length;
  /** Across it, at the top. */
  readonly width: Length;
  /** Depth that is filled. */
  readonly depth: Length;
  /** Whether its sides are upright or meet at the bottom. */
  readonly section: 'box' | 'vee';
  /** Thickness of the slab. */
  readonly slabThickness: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What fills a crack: as wide below as above, or chased out to a V.
 *
 * @formula
 * ```math
 * V = k \, l \, w \, d \qquad k = 1 \;\text{(box)}, \; \tfrac{1}{2} \;\text{(vee)}
 * ```
 * @units lengths; answers volume.
 * @validRange length, width and depth above 0; a depth no more than that of the slab.
 * @monotone length +, width +, depth +
 * @accuracy Exact up to round-off: relative error below 8e-16. A crack that wanders takes more than its width at the
 * top tells.
 * @source common-practice
 * @param input - The crack and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` for a crack deeper than the slab.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.crackVolume({
 *   length: { value: 100, unit: 'ft' },
 *   width: { value: 0.5, unit: 'in' },
 *   depth: { value: 0.25, unit: 'in' },
 *   section: 'vee',
 *   slabThickness: { value: 6, unit: 'in' },
 *   unit: 'usgal',
 * }).value.toFixed(4); // => '0.3247'
 * ```
 */
export const crackVolume = /* @__PURE__ */ monotone(
  { length: '+', width: '+', depth: '+' },
  <U extends VolumeUnit>(input: CrackVolumeInput<U>): Quantity<U> => {
    const { length, width, depth, section, slabThickness, unit } = fields('crackVolume', input);
    const length_m = read('crackVolume', 'length', length, LENGTH, POSITIVE);
    const width_m = read('crackVolume', 'width', width, LENGTH, POSITIVE);
    const depth_m = read('crackVolume', 'depth', depth, LENGTH, POSITIVE);
    const slab_m = read('crackVolume', 'slabThickness', slabThickness, LENGTH, POSITIVE);
    checkDepth('crackVolume', depth, depth_m, slab_m);
    const shape = readChoice('crackVolume', 'section', section, ['box', 'vee']) === 'box' ? 1 : 0.5;
    return write('crackVolume', shape * length_m * width_m * depth_m, VOLUME, unit);
  },
);
