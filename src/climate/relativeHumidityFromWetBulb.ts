import { LENGTH, PRESSURE, SHARE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Pressure, Quantity, Temperature } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { standardPressure, TROPOSPHERE } from './atmosphere.ts';
import { LIQUID_WICK, CLIMATE } from './limits.ts';
import { pressureOverWater } from './vapour.ts';

/**
 * How the air moves past the wet wick: drawn by a fan at about 5 m/s, swung by hand, by natural draught of about
 * 1 m/s, or hardly at all.
 */
export type Psychrometer = 'aspirated' | 'sling' | 'natural draught' | 'still air';

/** Input of {@link relativeHumidityFromWetBulb}. */
export interface RelativeHumidityFromWetBulbInput<U extends ShareUnit = ShareUnit> {
  /** Dry bulb: air temperature. */
  readonly air: Temperature;
  /** Wet bulb, with a liquid wick. */
  readonly wetBulb: Temperature;
  /** How the air moves past the wick; between the first and the last lie 8 % of humidity. */
  readonly psychrometer: Psychrometer;
  /** Air pressure by a barometer, not reduced to sea level. Either this or the altitude. */
  readonly pressure?: Pressure | undefined;
  /** Height above sea level, for the usual pressure there. Either this or the pressure. */
  readonly altitude?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** The psychrometer coefficient per kelvin, at a wet bulb in °C. */
const COEFFICIENT: Readonly<Record<Psychrometer, (wetBulb_C: number) => number>> = {
  aspirated: () => 0.000662,
  sling: (wetBulb_C) => 0.00066 * (1 + 0.00115 * wetBulb_C),
  'natural draught': () => 0.0008,
  'still air': () => 0.0012,
};

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
 * 100 °C; altitude from −500 to 11000 m. Readings that leave no vapour in the air are refused.
 * @monotone air -, wetBulb +, pressure -, altitude +
 * @accuracy As good as the coefficient: at 68/62 °F a fan and a sling lie 0.15 % of humidity apart, still air 8 %. The
 * largest difference between fan and sling among five usual pairs of readings is 0.33 %.
 * @source fao-56, ferrel-psychrometer, army-tm-5-3610-285-14
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
    const { air, wetBulb, psychrometer, pressure, altitude, unit } = fields(fn, input);
    const air_C = readTemperature(fn, 'air', air, CLIMATE);
    const wetBulb_C = readTemperature(fn, 'wetBulb', wetBulb, LIQUID_WICK);
    if (wetBulb_C > air_C + 1e-9) {
      refuse(fn, 'conflict', ['wetBulb'], 'at or below the air temperature', wetBulb);
    }
    const coefficient = COEFFICIENT[readKey(fn, 'psychrometer', psychrometer, COEFFICIENT)];
    if (pressure !== undefined && altitude !== undefined) {
      refuse(fn, 'conflict', ['altitude'], 'left out where the pressure is given', altitude);
    }
    const pressure_Pa =
      altitude === undefined
        ? read(fn, 'pressure', pressure, PRESSURE, POSITIVE)
        : standardPressure(read(fn, 'altitude', altitude, LENGTH, TROPOSPHERE));
    const cooling_Pa = coefficient(wetBulb_C) * pressure_Pa * Math.max(0, air_C - wetBulb_C);
    const vapour_Pa = pressureOverWater(wetBulb_C) - cooling_Pa;
    if (!(vapour_Pa > 0)) {
      refuse(
        fn,
        'conflict',
        ['wetBulb'],
        'close enough to the air temperature to leave vapour in the air',
        wetBulb,
      );
    }
    return write(fn, Math.min(1, vapour_Pa / pressureOverWater(air_C)), SHARE, unit);
  },
);
