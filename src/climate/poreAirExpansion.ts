import { SHARE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { AT_ZERO_CELSIUS, readTemperature } from '../core/temperature.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { CLIMATE } from './limits.ts';

/** Input of {@link poreAirExpansion}. */
export interface PoreAirExpansionInput<U extends ShareUnit = ShareUnit> {
  /** Temperature of the concrete at the start. */
  readonly from: Temperature;
  /** Temperature later. */
  readonly to: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * By how much the air in the pores of concrete grows while it warms, and shrinks while it cools.
 *
 * Growing air leaves through the fresh film and blows bubbles; shrinking air draws the film in.
 *
 * @formula
 * ```math
 * \frac{\Delta V}{V} = \frac{T_{to}}{T_{from}} - 1
 * ```
 * @units temperatures (in kelvin); answers share, signed.
 * @validRange temperatures from −100 to 100 °C; at one pressure. 10 hPa of falling barometer do as much as 3 K.
 * @monotone from -, to +
 * @accuracy An ideal gas, exact up to round-off. No published figure: a ratio of temperatures.
 * @source ideal-gas-law
 * @param input - Temperatures before and after, and the unit wanted.
 * @returns The change as a share of the volume at the start in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.poreAirExpansion({
 *   from: { value: 60, unit: 'degF' },
 *   to: { value: 80, unit: 'degF' },
 *   unit: '%',
 * }).value.toFixed(2); // => '3.85'
 * ```
 */
export const poreAirExpansion = /* @__PURE__ */ monotone(
  { from: '-', to: '+' },
  <U extends ShareUnit>(input: PoreAirExpansionInput<U>): Quantity<U> => {
    const { from, to, unit } = fields('poreAirExpansion', input);
    const from_C = readTemperature('poreAirExpansion', 'from', from, CLIMATE);
    const to_C = readTemperature('poreAirExpansion', 'to', to, CLIMATE);
    return write('poreAirExpansion', (to_C - from_C) / (from_C + AT_ZERO_CELSIUS.K), SHARE, unit);
  },
);
