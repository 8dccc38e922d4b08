import { LENGTH, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link coveVolume}. */
export interface CoveVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Along the wall. */
  readonly length: Length;
  /** From the floor to the top of the face. Goes with `thickness`; no face where not given. */
  readonly height?: Length | undefined;
  /** Thickness of the face. */
  readonly thickness?: Length | undefined;
  /** Radius of the hollow. */
  readonly radius: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Mortar for a cove base: its face and the hollow that rounds the corner.
 *
 * @formula
 * ```math
 * V = l \left( h \, t + \left( 1 - \frac{\pi}{4} \right) r^2 \right)
 * ```
 * @units lengths; answers volume.
 * @validRange length above 0; radius 0 or more and not above height; height and thickness above 0, both or neither: a
 * fillet has no face.
 * @monotone length +, height +, thickness +, radius +
 * @accuracy Exact up to round-off: relative error below 1e-15.
 * @source machinery-handbook-31, common-practice
 * @param input - The cove and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the radius is above the height.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.coveVolume({
 *   length: { value: 214, unit: 'ft' },
 *   height: { value: 4, unit: 'in' },
 *   thickness: { value: 0.1875, unit: 'in' },
 *   radius: { value: 1, unit: 'in' },
 *   unit: 'ft3',
 * }).value.toFixed(4); // => '1.4335'
 * ```
 */
export const coveVolume = /* @__PURE__ */ monotone(
  { length: '+', height: '+', thickness: '+', radius: '+' },
  <U extends VolumeUnit>(input: CoveVolumeInput<U>): Quantity<U> => {
    const { length, height, thickness, radius, unit } = fields('coveVolume', input);
    const length_m = read('coveVolume', 'length', length, LENGTH, POSITIVE);
    const hasFace = height !== undefined || thickness !== undefined;
    const height_m = hasFace ? read('coveVolume', 'height', height, LENGTH, POSITIVE) : 0;
    const thickness_m = hasFace ? read('coveVolume', 'thickness', thickness, LENGTH, POSITIVE) : 0;
    const radius_m = read('coveVolume', 'radius', radius, LENGTH, NOT_NEGATIVE);
    if (hasFace && radius_m > height_m * (1 + 1e-12)) {
      refuse('coveVolume', 'conflict', ['radius'], 'not above height', radius);
    }
    const section_m2 = height_m * thickness_m + (1 - Math.PI / 4) * radius_m * radius_m;
    return write('coveVolume', length_m * section_m2, VOLUME, unit);
  },
);
