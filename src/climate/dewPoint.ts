import { SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read } from '../core/read.ts';
import { readTemperature, writeTemperature } from '../core/temperature.ts';
import type { TemperatureUnit } from '../core/unitCodes.ts';
import { CLIMATE } from './limits.ts';
import { dewPointOf } from './vapour.ts';

/** Input of {@link dewPoint}. */
export interface DewPointInput<U extends TemperatureUnit = TemperatureUnit> {
  /** Air temperature. */
  readonly air: Temperature;
  /** Relative humidity of the air, over liquid water at every temperature. */
  readonly relativeHumidity: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The temperature at which air begins to wet what it touches, when it is cooled and nothing else changes.
 *
 * Over liquid water at every temperature, as weather services and hygrometers mean it; below freezing the frost
 * point, which is over ice, is the higher of the two. The pressures are those of `saturationPressureOverWater`:
 * IAPWS-IF97 from −0.0088 °C up, also beyond 60 °C, and Murphy and Koop over supercooled water below. Their own range
 * ends at 58.9 °C, so from there to 60 °C it is checked extrapolation: used alone it is off by up to 0.0081 K.
 *
 * @formula
 * ```math
 * p_s(t_d) = \varphi \, p_s(t)
 * ```
 * @units temperature, share; answers temperature.
 * @validRange air from −100 to 100 °C, humidity above 0 and up to 100 %, dew point above −150 °C.
 * @monotone air +, relativeHumidity +
 * @accuracy Within 0.0015 K of IAPWS-95, below 0.01 °C of Murphy and Koop, for air from −20 to 60 °C and 5 to 100 %:
 * measured 0.0010 K over 1620 points.
 * The way back is closed above freezing and within 5e-6 K below. 2 % of humidity move it by 0.3 to 0.8 K from about
 * 40 % up and by far more in dry air: by 3.9 K from 5 to 7 %.
 * @source iapws-r7-97, murphy-koop-2005, iapws-r6-95
 * @param input - Air, its humidity and the unit wanted.
 * @returns The dew point in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.dewPoint({
 *   air: { value: 68, unit: 'degF' },
 *   relativeHumidity: { value: 50, unit: '%' },
 *   unit: 'degF',
 * }).value.toFixed(1); // => '48.7'
 * ```
 */
export const dewPoint = /* @__PURE__ */ monotone(
  { air: '+', relativeHumidity: '+' },
  <U extends TemperatureUnit>(input: DewPointInput<U>): Quantity<U> => {
    const { air, relativeHumidity, unit } = fields('dewPoint', input);
    const air_C = readTemperature('dewPoint', 'air', air, CLIMATE);
    const humidity = read('dewPoint', 'relativeHumidity', relativeHumidity, SHARE, PART_OR_WHOLE);
    return writeTemperature('dewPoint', dewPointOf('dewPoint', air_C, humidity), unit);
  },
);
