import { SHARE, SPEED, VAPOUR_EMISSION } from '../core/dimensions.ts';
import { PART_OR_WHOLE, type Limits } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Speed, Temperature } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { VapourEmissionUnit } from '../core/unitCodes.ts';

/** Input of {@link evaporationRate}. */
export interface EvaporationRateInput<U extends VapourEmissionUnit = VapourEmissionUnit> {
  /** Temperature of the fresh concrete at its surface. */
  readonly concrete: Temperature;
  /** Air temperature 1.2 to 1.8 m above it, upwind. */
  readonly air: Temperature;
  /** Relative humidity of that air. */
  readonly relativeHumidity: Share;
  /** Wind 0.5 m above the surface. */
  readonly wind: Speed;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Temperatures of the chart. */
const CHART: Limits = { above: -0.0000000001, below: 60.0000000001, words: ' from 0 °C to 60 °C' };
/** Winds of the chart. */
const WIND: Limits = { above: -5e-324, below: 11.1760000001, words: ' from 0 to 25 mph' };
/** The wind of the chart in base units. */
const MPH = 0.44704;

/**
 * How fast water leaves the surface of fresh, wet concrete, by the chart of ACI 305.
 *
 * For the concrete of a new slab or overlay, not a criterion for coating. Plastic shrinkage cracks are usually feared
 * above 0.2 lb/ft²/h, printed as 1 kg/m²/h.
 *
 * @formula
 * ```math
 * E = (T_c^{2.5} - \varphi \, T_a^{2.5}) \, (1 + 0.4\,V) \cdot 10^{-6}
 * ```
 * @units temperatures (in °F), share, speed (V in mph); answers mass per area and time (E in lb/ft²/h).
 * @validRange temperatures from 0 to 60 °C, humidity above 0 and up to 100 %, wind up to 25 mph. Below 0 the air wets
 * the concrete, for which the form was not made.
 * @monotone concrete +, air -, relativeHumidity -, wind none
 * @accuracy The estimate itself is uncertain by up to 40 %. The rounded SI form in print is 4 to 5 % lower.
 * @source aci-305-uno-1998, hover-2020, pca-evaporation-1957
 * @param input - Concrete, air, humidity, wind and the unit wanted.
 * @returns The rate in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.evaporationRate({
 *   concrete: { value: 70, unit: 'degF' },
 *   air: { value: 70, unit: 'degF' },
 *   relativeHumidity: { value: 70, unit: '%' },
 *   wind: { value: 10, unit: 'mph' },
 *   unit: 'lb/ft2/h',
 * }).value.toFixed(3); // => '0.061'
 * ```
 */
export const evaporationRate = /* @__PURE__ */ monotone(
  { concrete: '+', air: '-', relativeHumidity: '-', wind: 'none' },
  <U extends VapourEmissionUnit>(input: EvaporationRateInput<U>): Quantity<U> => {
    const { concrete, air, relativeHumidity, wind, unit } = fields('evaporationRate', input);
    const concrete_F = readTemperature('evaporationRate', 'concrete', concrete, CHART) * 1.8 + 32;
    const air_F = readTemperature('evaporationRate', 'air', air, CHART) * 1.8 + 32;
    const humidity = read('evaporationRate', 'relativeHumidity', relativeHumidity, SHARE, PART_OR_WHOLE);
    const wind_mph = read('evaporationRate', 'wind', wind, SPEED, WIND) / MPH;
    const rate_lbft2h =
      (Math.pow(concrete_F, 2.5) - humidity * Math.pow(air_F, 2.5)) * (1 + 0.4 * wind_mph) * 1e-6;
    const rate_gm2d = (rate_lbft2h * 453.59237 * 24) / 0.09290304;
    return write('evaporationRate', rate_gm2d, VAPOUR_EMISSION, unit);
  },
);
