import { PRESSURE, SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { CLIMATE } from './limits.ts';
import { pressureOverWater } from './vapour.ts';

/** Input of {@link vapourDrive}. */
export interface VapourDriveInput<U extends PressureUnit = PressureUnit> {
  /** Temperature below the slab or membrane. */
  readonly belowTemperature: Temperature;
  /** Relative humidity there: 100 % over wet ground. */
  readonly belowHumidity: Share;
  /** Temperature of the room above. */
  readonly aboveTemperature: Temperature;
  /** Relative humidity of the room. */
  readonly aboveHumidity: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The pressure that drives water vapour up through a slab; below 0 it drives vapour down into it.
 *
 * Over water both pressures are those of `saturationPressureOverWater`: IAPWS-IF97 from −0.0088 °C up, Murphy and Koop
 * below.
 *
 * @formula
 * ```math
 * \Delta p = \varphi_{below}\,p_s(t_{below}) - \varphi_{above}\,p_s(t_{above})
 * ```
 * @units temperatures, shares; answers pressure, signed.
 * @validRange temperatures from −100 to 100 °C, humidities above 0 and up to 100 %.
 * @monotone belowTemperature +, belowHumidity +, aboveTemperature -, aboveHumidity -
 * @accuracy Each vapour pressure within 0.009 %; what the ground is really at is the larger doubt.
 * @source iapws-r7-97, murphy-koop-2005, ashrae-fundamentals-2017
 * @param input - Temperature and humidity on both sides, and the unit wanted.
 * @returns The difference of vapour pressures in `input.unit`, upward positive, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * // A warm humid room over a cool slab: vapour goes down.
 * climate.vapourDrive({
 *   belowTemperature: { value: 10, unit: 'degC' },
 *   belowHumidity: { value: 100, unit: '%' },
 *   aboveTemperature: { value: 25, unit: 'degC' },
 *   aboveHumidity: { value: 60, unit: '%' },
 *   unit: 'Pa',
 * }).value.toFixed(0); // => '-674'
 * ```
 */
export const vapourDrive = /* @__PURE__ */ monotone(
  { belowTemperature: '+', belowHumidity: '+', aboveTemperature: '-', aboveHumidity: '-' },
  <U extends PressureUnit>(input: VapourDriveInput<U>): Quantity<U> => {
    const fn = 'vapourDrive';
    const { belowTemperature, belowHumidity, aboveTemperature, aboveHumidity, unit } = fields(fn, input);
    const below_C = readTemperature(fn, 'belowTemperature', belowTemperature, CLIMATE);
    const below = read(fn, 'belowHumidity', belowHumidity, SHARE, PART_OR_WHOLE);
    const above_C = readTemperature(fn, 'aboveTemperature', aboveTemperature, CLIMATE);
    const above = read(fn, 'aboveHumidity', aboveHumidity, SHARE, PART_OR_WHOLE);
    const drive_Pa = below * pressureOverWater(below_C) - above * pressureOverWater(above_C);
    return write(fn, drive_Pa, PRESSURE, unit);
  },
);
