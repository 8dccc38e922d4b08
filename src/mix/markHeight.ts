import { LENGTH, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { checkFits, heightOf, readPail, type Pail } from './pail.ts';

/** Input of {@link markHeight}. */
export interface MarkHeightInput<U extends LengthUnit = LengthUnit> {
  /** What stands in the pail. */
  readonly volume: Volume;
  /** The pail. */
  readonly pail: Pail;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How high a volume stands in a straight or tapered pail.
 *
 * @formula
 * ```math
 * h = \frac{\sqrt[3]{r_0^3 + \tfrac{3}{\pi} k V} - r_0}{k}
 * ```
 * @units volume, lengths; answers length.
 * @validRange volume 0 or more and no more than the pail holds; diameters and height above 0.
 * @monotone volume +
 * @accuracy Relative error below 2e-15, for a straight pail as for any taper.
 * @source definition, wine-gallon-1706
 * @param input - Volume, pail and the unit wanted.
 * @returns The height above the bottom in `input.unit`, not rounded.
 * @throws An `InputError` that names the field; `conflict` when the pail does not hold the volume.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const pail = { diameter: { value: 7, unit: 'in' }, height: { value: 8, unit: 'in' } } as const;
 * mix.markHeight({ volume: { value: 1, unit: 'usgal' }, pail, unit: 'in' }).value.toFixed(2); // => '6.00'
 * ```
 */
export const markHeight = /* @__PURE__ */ monotone(
  { volume: '+' },
  <U extends LengthUnit>(input: MarkHeightInput<U>): Quantity<U> => {
    const { volume, pail, unit } = fields('markHeight', input);
    const volume_m3 = read('markHeight', 'volume', volume, VOLUME, NOT_NEGATIVE);
    const base = readPail('markHeight', pail);
    checkFits('markHeight', base, volume_m3);
    return write('markHeight', heightOf(base, volume_m3), LENGTH, unit);
  },
);
