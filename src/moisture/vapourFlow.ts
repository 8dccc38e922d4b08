import { PERMEANCE, PRESSURE, VAPOUR_EMISSION } from '../core/dimensions.ts';
import { ANY, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Permeance, Pressure, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VapourEmissionUnit } from '../core/unitCodes.ts';

/** Input of {@link vapourFlow}. */
export interface VapourFlowInput<U extends VapourEmissionUnit = VapourEmissionUnit> {
  /** Vapour pressure below less that above, as `climate.vapourDrive` answers it. */
  readonly vapourDrive: Pressure;
  /** Permeance of the layer, or of all layers together, see `combinedPermeance`. */
  readonly permeance: Permeance;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much vapour a pressure difference drives through a slab or a membrane; below 0 it goes down.
 *
 * @formula
 * ```math
 * E = W \, \Delta p
 * ```
 * @units pressure, permeance; answers mass per area and time, signed.
 * @validRange permeance above 0; a steady state, which a slab needs months to reach.
 * @monotone vapourDrive +, permeance none
 * @accuracy Exact up to round-off: relative error below 1e-15. One perm is 1 grain/(h·ft²·inHg) with mercury at 0 °C.
 * @source definition, ashrae-fundamentals-2017
 * @param input - Vapour drive, permeance and the unit wanted.
 * @returns The flow in `input.unit`, upward positive, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 * import * as moisture from 'coating-math/moisture';
 *
 * const vapourDrive = climate.vapourDrive({
 *   belowTemperature: { value: 60, unit: 'degF' },
 *   belowHumidity: { value: 100, unit: '%' },
 *   aboveTemperature: { value: 72, unit: 'degF' },
 *   aboveHumidity: { value: 40, unit: '%' },
 *   unit: 'inHg',
 * });
 * moisture
 *   .vapourFlow({ vapourDrive, permeance: { value: 0.1, unit: 'perm' }, unit: 'lb/1000ft2/24h' })
 *   .value.toFixed(3); // => '0.070'
 * ```
 */
export const vapourFlow = /* @__PURE__ */ monotone(
  { vapourDrive: '+', permeance: 'none' },
  <U extends VapourEmissionUnit>(input: VapourFlowInput<U>): Quantity<U> => {
    const { vapourDrive, permeance, unit } = fields('vapourFlow', input);
    const drive_Pa = read('vapourFlow', 'vapourDrive', vapourDrive, PRESSURE, ANY);
    const permeance_ng = read('vapourFlow', 'permeance', permeance, PERMEANCE, POSITIVE);
    const flow_gm2d = permeance_ng * 1e-9 * drive_Pa * 86_400;
    return write('vapourFlow', flow_gm2d, VAPOUR_EMISSION, unit);
  },
);
