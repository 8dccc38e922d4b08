import { SHARE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { LIQUID_WICK, CLIMATE } from './limits.ts';
import { readDeficit, type WickConditions } from './psychrometer.ts';
import { pressureAboveFreezing } from './vapour.ts';

/** Input of {@link relativeHumidityFromWetBulb}. */
export interface RelativeHumidityFromWetBulbInput<U extends ShareUnit = ShareUnit> extends WickConditions {
  /** Dry bulb: air temperature. */
  readonly air: Temperature;
  /** Wet bulb, with a liquid wick. */
  readonly wetBulb: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Relative humidity from two thermometers, one of them kept wet.
 *
 * @formula
 * ```math
 * \varphi = \frac{p_s(t_w) - A\,p\,(t - t_w)}{p_s(t)}
 * ```
 * @units temperatures, pressure or length; answers share. A per kelvin: aspirated 0.000662, natural draught 0.0008,
 * still air 0.0012, sling 0.00066 (1 + 0.00115 t_w).
 * @validRange wet bulb from 0 to 100 °C (a wick of ice reads otherwise and is refused), at or below the air; air up to
 * 100 °C; pressure from 20 to 120 kPa or altitude from −500 to 11000 m. Readings that leave no vapour in the air are refused.
 * @monotone air -, wetBulb +, pressure -, altitude +
 * @accuracy As good as the coefficient: at 68/62 °F a fan and a sling lie 0.15 % of humidity apart, still air 8 %. The
 * largest difference between fan and sling among five usual pairs of readings is 0.33 %.
 * @source fao-56, iapws-r7-97, ferrel-psychrometer, army-tm-5-3610-285-14
 * @param input - Both thermometers, how the air moves, pressure or altitude, and the unit wanted.
 * @returns The relative humidity over liquid water in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.relativeHumidityFromWetBulb({
 *   air: { value: 68, unit: 'degF' },
 *   wetBulb: { value: 62, unit: 'degF' },
 *   psychrometer: 'sling',
 *   altitude: { value: 0, unit: 'ft' },
 *   unit: '%',
 * }).value.toFixed(0); // => '71'
 * ```
 */
export const relativeHumidityFromWetBulb = /* @__PURE__ */ monotone(
  { air: '-', wetBulb: '+', pressure: '-', altitude: '+' },
  <U extends ShareUnit>(input: RelativeHumidityFromWetBulbInput<U>): Quantity<U> => {
    const fn = 'relativeHumidityFromWetBulb';
    const { air, wetBulb, unit } = fields(fn, input);
    const air_C = readTemperature(fn, 'air', air, CLIMATE);
    const wetBulb_C = readTemperature(fn, 'wetBulb', wetBulb, LIQUID_WICK);
    if (wetBulb_C > air_C + 1e-9) {
      refuse(fn, 'conflict', ['wetBulb'], 'at or below the air temperature', wetBulb);
    }
    const deficit_Pa = readDeficit(fn, input);
    const vapour_Pa = pressureAboveFreezing(wetBulb_C) - Math.max(0, deficit_Pa(air_C, wetBulb_C));
    if (!(vapour_Pa > 0)) {
      refuse(
        fn,
        'conflict',
        ['wetBulb'],
        'close enough to the air temperature to leave vapour in the air',
        wetBulb,
      );
    }
    return write(fn, Math.min(1, vapour_Pa / pressureAboveFreezing(air_C)), SHARE, unit);
  },
);
