import { PRESSURE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Pressure, Quantity, Temperature } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readFlag } from '../core/readPlain.ts';
import { AT_ZERO_CELSIUS, readTemperature } from '../core/temperature.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { AIR_PRESSURE, CLIMATE } from './limits.ts';
import { pressureOverWater } from './vapour.ts';

/** Input of {@link sealedPoreRise}. */
export interface SealedPoreRiseInput<U extends PressureUnit = PressureUnit> {
  /** Temperature of the concrete when the film closed the pore. */
  readonly from: Temperature;
  /** Temperature later. */
  readonly to: Temperature;
  /** Air pressure when the pore was closed. */
  readonly pressure: Pressure;
  /** Whether there is water in the pore that goes on evaporating. */
  readonly wet: boolean;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How hard the air in a pore pushes against the film that closed it, once the concrete has warmed.
 *
 * @formula
 * ```math
 * \Delta p = p \left(\frac{T_{to}}{T_{from}} - 1\right) \; \bigl[\, + \, p_s(t_{to}) - p_s(t_{from}) \,\bigr]_{wet}
 * ```
 * @units temperatures (in kelvin), pressure; answers pressure, signed.
 * @validRange temperatures from −100 to 100 °C; pressure from 20 to 120 kPa.
 * @monotone from -, to +, pressure none
 * @accuracy An ideal gas; the vapour within 0.009 %. The vapour in the pore is counted into its pressure at the start.
 * No published figure: a ratio of temperatures and a difference of vapour pressures.
 * @source ideal-gas-law, iapws-r7-97
 * @param input - Temperatures, pressure, whether the pore is wet, and the unit wanted.
 * @returns The rise of pressure in `input.unit`, not rounded; below 0 the pore sucks.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.sealedPoreRise({
 *   from: { value: 20, unit: 'degC' },
 *   to: { value: 30, unit: 'degC' },
 *   pressure: { value: 101.325, unit: 'kPa' },
 *   wet: true,
 *   unit: 'kPa',
 * }).value.toFixed(2); // => '5.36'
 * ```
 */
export const sealedPoreRise = /* @__PURE__ */ monotone(
  { from: '-', to: '+', pressure: 'none' },
  <U extends PressureUnit>(input: SealedPoreRiseInput<U>): Quantity<U> => {
    const { from, to, pressure, wet, unit } = fields('sealedPoreRise', input);
    const from_C = readTemperature('sealedPoreRise', 'from', from, CLIMATE);
    const to_C = readTemperature('sealedPoreRise', 'to', to, CLIMATE);
    const pressure_Pa = read('sealedPoreRise', 'pressure', pressure, PRESSURE, AIR_PRESSURE);
    const vapour_Pa = readFlag('sealedPoreRise', 'wet', wet)
      ? pressureOverWater(to_C) - pressureOverWater(from_C)
      : 0;
    const air_Pa = (pressure_Pa * (to_C - from_C)) / (from_C + AT_ZERO_CELSIUS.K);
    return write('sealedPoreRise', air_Pa + vapour_Pa, PRESSURE, unit);
  },
);
