import { SHARE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { CLIMATE } from './limits.ts';
import { pressureOverWater } from './vapour.ts';

/** Input of {@link relativeHumidityFromDewPoint}. */
export interface RelativeHumidityFromDewPointInput<U extends ShareUnit = ShareUnit> {
  /** Air temperature. */
  readonly air: Temperature;
  /** Dew point of that air, over liquid water. */
  readonly dewPoint: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much of the water vapour that air could hold is in it, from its dew point.
 *
 * Over water both pressures are those of `saturationPressureOverWater`: IAPWS-IF97 from −0.0088 °C up, Murphy and Koop
 * below.
 *
 * @formula
 * ```math
 * \varphi = \frac{p_s(t_d)}{p_s(t)}
 * ```
 * @units temperatures; answers share.
 * @validRange temperatures from −100 to 100 °C; dew point at or below the air temperature.
 * @monotone air -, dewPoint +
 * @accuracy Within 0.02 % of humidity of IAPWS-95 and Murphy and Koop over air of −20 to 60 °C.
 * @source iapws-r7-97, murphy-koop-2005, metpy-tests
 * @param input - Air, its dew point and the unit wanted.
 * @returns The relative humidity in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.relativeHumidityFromDewPoint({
 *   air: { value: 25, unit: 'degC' },
 *   dewPoint: { value: 15, unit: 'degC' },
 *   unit: '%',
 * }).value.toFixed(1); // => '53.8'
 * ```
 */
export const relativeHumidityFromDewPoint = /* @__PURE__ */ monotone(
  { air: '-', dewPoint: '+' },
  <U extends ShareUnit>(input: RelativeHumidityFromDewPointInput<U>): Quantity<U> => {
    const fn = 'relativeHumidityFromDewPoint';
    const { air, dewPoint, unit } = fields(fn, input);
    const air_C = readTemperature(fn, 'air', air, CLIMATE);
    const dewPoint_C = readTemperature(fn, 'dewPoint', dewPoint, CLIMATE);
    if (dewPoint_C > air_C + 1e-9) {
      refuse(fn, 'conflict', ['dewPoint'], 'at or below the air temperature', dewPoint);
    }
    const humidity = Math.min(1, pressureOverWater(dewPoint_C) / pressureOverWater(air_C));
    return write(fn, humidity, SHARE, unit);
  },
);
