import { LENGTH, SHARE } from '../core/dimensions.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { AT_ZERO_CELSIUS, readTemperature } from '../core/temperature.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { CLIMATE } from './limits.ts';

/** Input of {@link poreAirLayer}. */
export interface PoreAirLayerInput<U extends LengthUnit = LengthUnit> {
  /** Depth to which the concrete changes its temperature. */
  readonly depth: Length;
  /** Share of that concrete that is air. */
  readonly airVoids: Share;
  /** Temperature of the concrete at the start. */
  readonly from: Temperature;
  /** Temperature later. */
  readonly to: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The air that warming concrete breathes out, as a layer over the floor, to be held against the film on top of it.
 *
 * @formula
 * ```math
 * h = d \, a \left(\frac{T_{to}}{T_{from}} - 1\right)
 * ```
 * @units length, share, temperatures (in kelvin); answers length, signed: below 0 the concrete breathes in.
 * @validRange depth above 0; airVoids from 0 % to below 100 %; temperatures from −100 to 100 °C; at one pressure.
 * @monotone depth none, airVoids none, from -, to +
 * @accuracy An ideal gas, exact up to round-off; depth and voids are estimates. No published figure: the result
 * of a worked job.
 * @source ideal-gas-law
 * @param input - Depth, air voids, temperatures before and after, and the unit wanted.
 * @returns The layer of air in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.poreAirLayer({
 *   depth: { value: 2, unit: 'in' },
 *   airVoids: { value: 8, unit: '%' },
 *   from: { value: 54, unit: 'degF' },
 *   to: { value: 63, unit: 'degF' },
 *   unit: 'mil',
 * }).value.toFixed(1); // => '2.8'
 * ```
 */
export const poreAirLayer = /* @__PURE__ */ monotone(
  { depth: 'none', airVoids: 'none', from: '-', to: '+' },
  <U extends LengthUnit>(input: PoreAirLayerInput<U>): Quantity<U> => {
    const { depth, airVoids, from, to, unit } = fields('poreAirLayer', input);
    const depth_m = read('poreAirLayer', 'depth', depth, LENGTH, POSITIVE);
    const voids = read('poreAirLayer', 'airVoids', airVoids, SHARE, PART);
    const from_C = readTemperature('poreAirLayer', 'from', from, CLIMATE);
    const to_C = readTemperature('poreAirLayer', 'to', to, CLIMATE);
    const layer_m = (depth_m * voids * (to_C - from_C)) / (from_C + AT_ZERO_CELSIUS.K);
    return write('poreAirLayer', layer_m, LENGTH, unit);
  },
);
