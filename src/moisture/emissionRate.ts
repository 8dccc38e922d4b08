import { AREA, MASS, TIME, VAPOUR_EMISSION } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Mass, Quantity, Time } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VapourEmissionUnit } from '../core/unitCodes.ts';
import { emissionOf } from './emission.ts';

/** Input of {@link emissionRate}. */
export interface EmissionRateInput<U extends VapourEmissionUnit = VapourEmissionUnit> {
  /** What the dish of calcium chloride gained. */
  readonly gain: Mass;
  /** Concrete under the dome without the dish, see `exposedArea`. */
  readonly exposedArea: Area;
  /** Time under the dome. */
  readonly exposure: Time;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much water vapour left the slab under the dome of a calcium chloride test.
 *
 * @formula
 * ```math
 * E = \frac{\Delta m}{A \, t}
 * ```
 * @units mass, area, time; answers mass per area and time.
 * @validRange gain 0 or more, exposedArea and exposure above 0. Whether the exposure was long enough is judged by
 * `calciumChlorideTest`.
 * @monotone gain +, exposedArea -, exposure -
 * @accuracy Exact up to round-off: relative error below 1e-15. A step of 0.1 g on the balance is worth 0.165
 * lb/1000ft2/24h in the usual kit over 72 h, more over less.
 * @source astm-f1869, definition
 * @param input - Gain, exposed area, exposure and the unit wanted.
 * @returns The emission in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * moisture.emissionRate({
 *   gain: { value: 2, unit: 'g' },
 *   exposedArea: { value: 64.06, unit: 'in2' },
 *   exposure: { value: 60, unit: 'h' },
 *   unit: 'lb/1000ft2/24h',
 * }).value.toFixed(2); // => '3.96'
 * ```
 */
export const emissionRate = /* @__PURE__ */ monotone(
  { gain: '+', exposedArea: '-', exposure: '-' },
  <U extends VapourEmissionUnit>(input: EmissionRateInput<U>): Quantity<U> => {
    const { gain, exposedArea, exposure, unit } = fields('emissionRate', input);
    const gain_kg = read('emissionRate', 'gain', gain, MASS, NOT_NEGATIVE);
    const area_m2 = read('emissionRate', 'exposedArea', exposedArea, AREA, POSITIVE);
    const exposure_s = read('emissionRate', 'exposure', exposure, TIME, POSITIVE);
    return write('emissionRate', emissionOf(gain_kg, area_m2, exposure_s), VAPOUR_EMISSION, unit);
  },
);
