import { LENGTH, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link wedgeVolume}. */
export interface WedgeVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Along the drain. */
  readonly length: Length;
  /** From the drain to the far edge. */
  readonly width: Length;
  /** Depth at one edge. */
  readonly depth: Length;
  /** Depth at the other edge; nothing where not given. */
  readonly thinDepth?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What it takes to build an even fall towards a line, such as a trench drain, or a tapered end at a door.
 *
 * @formula
 * ```math
 * V = l \, b \, \frac{d + d_0}{2}
 * ```
 * @units lengths; answers volume.
 * @validRange length and width above 0, depth above 0, thinDepth 0 or more.
 * @monotone length +, width +, depth +, thinDepth +
 * @accuracy Exact up to round-off: relative error below 8e-16. Mortar must not be drawn out to nothing: what is
 * thinner than its coarsest grain allows is another material.
 * @source definition
 * @param input - The wedge and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.wedgeVolume({
 *   length: { value: 6, unit: 'm' },
 *   width: { value: 2, unit: 'm' },
 *   depth: { value: 30, unit: 'mm' },
 *   unit: 'l',
 * }).value.toFixed(1); // => '180.0'
 * ```
 */
export const wedgeVolume = /* @__PURE__ */ monotone(
  { length: '+', width: '+', depth: '+', thinDepth: '+' },
  <U extends VolumeUnit>(input: WedgeVolumeInput<U>): Quantity<U> => {
    const { length, width, depth, thinDepth, unit } = fields('wedgeVolume', input);
    const length_m = read('wedgeVolume', 'length', length, LENGTH, POSITIVE);
    const width_m = read('wedgeVolume', 'width', width, LENGTH, POSITIVE);
    const depth_m = read('wedgeVolume', 'depth', depth, LENGTH, POSITIVE);
    const thin_m = readOr(0, 'wedgeVolume', 'thinDepth', thinDepth, LENGTH, NOT_NEGATIVE);
    return write('wedgeVolume', (length_m * width_m * (depth_m + thin_m)) / 2, VOLUME, unit);
  },
);
