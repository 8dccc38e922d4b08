import { PRESSURE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { ICE } from './limits.ts';
import { pressureOverIce } from './vapour.ts';

/** Input of {@link saturationPressureOverIce}. */
export interface SaturationPressureOverIceInput<U extends PressureUnit = PressureUnit> {
  /** Temperature of the ice and the air above it. */
  readonly temperature: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The pressure of water vapour in air that can take up no more, over ice: lower than over supercooled water.
 *
 * @formula
 * ```math
 * \ln p = 9.550426 - \frac{5723.265}{T} + 3.53068 \ln T - 0.00728332\,T
 * ```
 * @units temperature (T in kelvin, p in pascal); answers pressure.
 * @validRange temperature from −100 to 0.01 °C.
 * @monotone temperature +
 * @accuracy Within 0.014 % of IAPWS R14-08 from −20 to 0 °C.
 * @source murphy-koop-2005, iapws-r14-08
 * @param input - Temperature and the unit wanted.
 * @returns The pressure in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate
 *   .saturationPressureOverIce({ temperature: { value: -20, unit: 'degC' }, unit: 'Pa' })
 *   .value.toFixed(1); // => '103.3'
 * ```
 */
export const saturationPressureOverIce = /* @__PURE__ */ monotone(
  { temperature: '+' },
  <U extends PressureUnit>(input: SaturationPressureOverIceInput<U>): Quantity<U> => {
    const { temperature, unit } = fields('saturationPressureOverIce', input);
    const t_C = readTemperature('saturationPressureOverIce', 'temperature', temperature, ICE);
    return write('saturationPressureOverIce', pressureOverIce(t_C), PRESSURE, unit);
  },
);
