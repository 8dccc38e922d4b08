import { SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { CLIMATE } from './limits.ts';
import { pressureOverWater } from './vapour.ts';

/** Input of {@link surfaceHumidity}. */
export interface SurfaceHumidityInput<U extends ShareUnit = ShareUnit> {
  /** Air temperature. */
  readonly air: Temperature;
  /** Relative humidity of that air. */
  readonly relativeHumidity: Share;
  /** Temperature of the floor. */
  readonly surface: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The relative humidity of the same air where it touches the floor. Above 100 % water settles on it.
 *
 * Over water both pressures are those of `saturationPressureOverWater`: IAPWS-IF97 from −0.0088 °C up, Murphy and Koop
 * below.
 *
 * @formula
 * ```math
 * \varphi_{surface} = \varphi \, \frac{p_s(t)}{p_s(t_{surface})}
 * ```
 * @units temperatures, share; answers share.
 * @validRange temperatures from −100 to 100 °C, humidity above 0 and up to 100 %. The answer may be above 100 %.
 * @monotone air +, relativeHumidity +, surface -
 * @accuracy Within 0.02 % of humidity of IAPWS-95 and Murphy and Koop from −20 to 60 °C.
 * @source iapws-r7-97, murphy-koop-2005, iapws-r6-95, ufgs-09970
 * @param input - Air, its humidity, the floor and the unit wanted.
 * @returns The relative humidity at the floor in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.surfaceHumidity({
 *   air: { value: 75, unit: 'degF' },
 *   relativeHumidity: { value: 65, unit: '%' },
 *   surface: { value: 62, unit: 'degF' },
 *   unit: '%',
 * }).value.toFixed(0); // => '102'
 * ```
 */
export const surfaceHumidity = /* @__PURE__ */ monotone(
  { air: '+', relativeHumidity: '+', surface: '-' },
  <U extends ShareUnit>(input: SurfaceHumidityInput<U>): Quantity<U> => {
    const { air, relativeHumidity, surface, unit } = fields('surfaceHumidity', input);
    const air_C = readTemperature('surfaceHumidity', 'air', air, CLIMATE);
    const humidity = read('surfaceHumidity', 'relativeHumidity', relativeHumidity, SHARE, PART_OR_WHOLE);
    const surface_C = readTemperature('surfaceHumidity', 'surface', surface, CLIMATE);
    const atSurface = (humidity * pressureOverWater(air_C)) / pressureOverWater(surface_C);
    return write('surfaceHumidity', atSurface, SHARE, unit);
  },
);
