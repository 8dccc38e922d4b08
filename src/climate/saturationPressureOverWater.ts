import { PRESSURE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { LIQUID } from './limits.ts';
import { pressureOverWater } from './vapour.ts';

/** Input of {@link saturationPressureOverWater}. */
export interface SaturationPressureOverWaterInput<U extends PressureUnit = PressureUnit> {
  /** Temperature of the water and the air above it. */
  readonly temperature: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The pressure of water vapour in air that can take up no more, over liquid water.
 *
 * @formula
 * ```math
 * p = \left(\frac{2C}{-B + \sqrt{B^2 - 4AC}}\right)^4 \text{ MPa} \quad \text{(IAPWS-IF97, equation 30)}
 * ```
 * ```math
 * \ln p = 54.842763 - \frac{6763.22}{T} - 4.21 \ln T + 0.000367\,T
 *   + \tanh(0.0415\,(T - 218.8)) \left(53.878 - \frac{1331.22}{T} - 9.44523 \ln T + 0.014025\,T\right)
 *   \quad \text{below } -0.0088\,^\circ\text{C}
 * ```
 * @units temperature (T in kelvin, p in pascal); answers pressure.
 * @validRange temperature from −100 °C, supercooled, to 373.946 °C, the critical point. The two curves change over
 * where they meet.
 * @monotone temperature +
 * @accuracy Within 0.009 % of IAPWS-95 from 0.01 to 100 °C; below, the curve of Murphy and Koop itself.
 * @source iapws-r7-97, murphy-koop-2005, iapws-r6-95
 * @param input - Temperature and the unit wanted.
 * @returns The pressure in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate
 *   .saturationPressureOverWater({ temperature: { value: 25, unit: 'degC' }, unit: 'kPa' })
 *   .value.toFixed(3); // => '3.170'
 * ```
 */
export const saturationPressureOverWater = /* @__PURE__ */ monotone(
  { temperature: '+' },
  <U extends PressureUnit>(input: SaturationPressureOverWaterInput<U>): Quantity<U> => {
    const { temperature, unit } = fields('saturationPressureOverWater', input);
    const t_C = readTemperature('saturationPressureOverWater', 'temperature', temperature, LIQUID);
    return write('saturationPressureOverWater', pressureOverWater(t_C), PRESSURE, unit);
  },
);
