import { SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readTemperature, writeTemperature } from '../core/temperature.ts';
import type { TemperatureUnit } from '../core/unitCodes.ts';
import { LIQUID_WICK } from './limits.ts';
import { readDeficit, type WickConditions } from './psychrometer.ts';
import { pressureAboveFreezing } from './vapour.ts';

/** Input of {@link wetBulb}. */
export interface WetBulbInput<U extends TemperatureUnit = TemperatureUnit> extends WickConditions {
  /** Dry bulb: air temperature. */
  readonly air: Temperature;
  /** Relative humidity of that air, over liquid water. */
  readonly relativeHumidity: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What a thermometer with a wet wick will show in air of a known humidity: to hold a hygrometer and a psychrometer
 * against each other before either is trusted.
 *
 * @formula
 * ```math
 * p_s(t_w) - A\,p\,(t - t_w) = \varphi \, p_s(t)
 * ```
 * @units temperature, share, pressure or length; answers temperature. A as in `relativeHumidityFromWetBulb`,
 * p_s by IAPWS-IF97.
 * @validRange air from 0 to 100 °C, humidity above 0 and up to 100 %, pressure from 20 to 120 kPa or altitude from −500
 * to 11000 m. Air in which the wick would freeze is refused.
 * @monotone air +, relativeHumidity +, pressure +, altitude -
 * @accuracy Solved to 1e-12 K. As good as the coefficient: with a fan within 0.14 K of the thermodynamic wet bulb of
 * moist-air handbooks for air of 5 to 40 °C and 20 to 100 %.
 * @source fao-56, iapws-r7-97, ferrel-psychrometer, army-tm-5-3610-285-14, stull-2011
 * @param input - Air, its humidity, how the air moves, pressure or altitude, and the unit wanted.
 * @returns The wet bulb in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.wetBulb({
 *   air: { value: 68, unit: 'degF' },
 *   relativeHumidity: { value: 50, unit: '%' },
 *   psychrometer: 'sling',
 *   altitude: { value: 0, unit: 'ft' },
 *   unit: 'degF',
 * }).value.toFixed(1); // => '57.0'
 * ```
 */
export const wetBulb = /* @__PURE__ */ monotone(
  { air: '+', relativeHumidity: '+', pressure: '+', altitude: '-' },
  <U extends TemperatureUnit>(input: WetBulbInput<U>): Quantity<U> => {
    const { air, relativeHumidity, unit } = fields('wetBulb', input);
    const air_C = readTemperature('wetBulb', 'air', air, LIQUID_WICK);
    const humidity = read('wetBulb', 'relativeHumidity', relativeHumidity, SHARE, PART_OR_WHOLE);
    const deficit_Pa = readDeficit('wetBulb', input);
    const vapour_Pa = humidity * pressureAboveFreezing(air_C);
    /** What a wick of this temperature says too much; it grows with the temperature. */
    const surplus_Pa = (wetBulb_C: number) =>
      pressureAboveFreezing(wetBulb_C) - deficit_Pa(air_C, wetBulb_C) - vapour_Pa;
    if (surplus_Pa(0) > 1e-6) {
      const expected = 'high enough in this air to keep the wick from freezing';
      refuse('wetBulb', 'conflict', ['relativeHumidity'], expected, relativeHumidity);
    }
    // Halving 100 K fifty times leaves less than a thermometer, or a double, can tell.
    let [low_C, high_C] = [0, air_C];
    for (let i = 0; i < 50; i++) {
      const middle_C = (low_C + high_C) / 2;
      if (surplus_Pa(middle_C) < 0) low_C = middle_C;
      else high_C = middle_C;
    }
    return writeTemperature('wetBulb', high_C, unit);
  },
);
