import { SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readTemperature, writeTemperature } from '../core/temperature.ts';
import type { TemperatureUnit } from '../core/unitCodes.ts';
import { ICE, CLIMATE } from './limits.ts';
import { frostPointOf, pressureOverIce, pressureOverWater } from './vapour.ts';

/** Input of {@link frostPoint}. */
export interface FrostPointInput<U extends TemperatureUnit = TemperatureUnit> {
  /** Air temperature. */
  readonly air: Temperature;
  /** Relative humidity of the air, over liquid water at every temperature, as hygrometers show it. */
  readonly relativeHumidity: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The temperature at which frost begins to form on what the air touches; higher than the dew point of the same air.
 *
 * The vapour in the air is that over water, as `dewPoint` has it; the frost is over ice by Murphy and Koop, as
 * `saturationPressureOverIce` has it.
 *
 * @formula
 * ```math
 * p_{ice}(t_f) = \varphi \, p_{water}(t)
 * ```
 * @units temperature, share; answers temperature.
 * @validRange air from −100 to 100 °C, humidity above 0 and up to 100 %, dew point above −150 °C and frost point up
 * to 0.01 °C: above that there is dew and no frost, and the input is refused.
 * @monotone air +, relativeHumidity +
 * @accuracy Within 0.01 K of Murphy and Koop over water with IAPWS R14-08 over ice, results from −20 °C.
 * No published figure names its curves; the rows are computed from them.
 * @source iapws-r7-97, murphy-koop-2005, iapws-r14-08
 * @param input - Air, its humidity and the unit wanted.
 * @returns The frost point in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * const air = { air: { value: 2, unit: 'degC' }, relativeHumidity: { value: 50, unit: '%' }, unit: 'degC' } as const;
 * climate.frostPoint(air).value.toFixed(1); // => '-6.5'
 * climate.dewPoint(air).value.toFixed(1); // => '-7.3'
 * ```
 */
export const frostPoint = /* @__PURE__ */ monotone(
  { air: '+', relativeHumidity: '+' },
  <U extends TemperatureUnit>(input: FrostPointInput<U>): Quantity<U> => {
    const { air, relativeHumidity, unit } = fields('frostPoint', input);
    const air_C = readTemperature('frostPoint', 'air', air, CLIMATE);
    const humidity = read('frostPoint', 'relativeHumidity', relativeHumidity, SHARE, PART_OR_WHOLE);
    const pressure_Pa = humidity * pressureOverWater(air_C);
    if (pressure_Pa > pressureOverIce(ICE.below)) {
      refuse(
        'frostPoint',
        'conflict',
        ['relativeHumidity'],
        'air dry enough to give frost rather than dew',
        relativeHumidity,
      );
    }
    return writeTemperature('frostPoint', frostPointOf('frostPoint', pressure_Pa, humidity), unit);
  },
);
