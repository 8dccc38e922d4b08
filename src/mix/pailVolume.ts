import { LENGTH, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readPail, volumeBelow, type Pail } from './pail.ts';

/** Input of {@link pailVolume}. */
export interface PailVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Height to which the pail is filled, as dipped. */
  readonly fillHeight: Length;
  /** The pail. */
  readonly pail: Pail;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What stands in a straight or tapered pail that is filled to a height.
 *
 * @formula
 * ```math
 * V = \frac{\pi h}{3} \left( r_0^2 + r_0 r_h + r_h^2 \right) \qquad r_h = r_0 + k h
 * ```
 * @units lengths; answers volume.
 * @validRange fillHeight from 0 to the height of the pail; diameters and height above 0.
 * @monotone fillHeight +
 * @accuracy Relative error below 2e-15.
 * @source definition, wine-gallon-1706
 * @param input - Height, pail and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field; `conflict` above the rim.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const pail = { diameter: { value: 7, unit: 'in' }, height: { value: 8, unit: 'in' } } as const;
 * mix.pailVolume({ fillHeight: { value: 6, unit: 'in' }, pail, unit: 'usgal' }).value.toFixed(3); // => '1.000'
 * ```
 */
export const pailVolume = /* @__PURE__ */ monotone(
  { fillHeight: '+' },
  <U extends VolumeUnit>(input: PailVolumeInput<U>): Quantity<U> => {
    const { fillHeight, pail, unit } = fields('pailVolume', input);
    const height_m = read('pailVolume', 'fillHeight', fillHeight, LENGTH, NOT_NEGATIVE);
    const base = readPail('pailVolume', pail);
    if (height_m > base.height_m * (1 + 1e-12)) {
      refuse('pailVolume', 'conflict', ['fillHeight'], 'no higher than the pail', fillHeight);
    }
    return write('pailVolume', volumeBelow(base, height_m), VOLUME, unit);
  },
);
