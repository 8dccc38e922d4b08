import { LENGTH, PRESSURE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { standardPressure, TROPOSPHERE } from './atmosphere.ts';

/** Input of {@link pressureAtAltitude}. */
export interface PressureAtAltitudeInput<U extends PressureUnit = PressureUnit> {
  /** Height above sea level. */
  readonly altitude: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The usual air pressure at a height above sea level, where no barometer is at hand.
 *
 * @formula
 * ```math
 * p = 101325 \left(\frac{288.15}{288.15 - 0.0065\,h}\right)^{-5.25588}
 * ```
 * @units length (h in metres, geopotential; p in pascal); answers pressure.
 * @validRange altitude from −500 to 11000 m.
 * @monotone altitude -
 * @accuracy The standard atmosphere: within 1 Pa of its table. The weather moves the true pressure by up to 3 %.
 * @source us-standard-atmosphere-1976, ashrae-fundamentals-2017
 * @param input - Altitude and the unit wanted.
 * @returns The standard pressure in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.pressureAtAltitude({ altitude: { value: 5280, unit: 'ft' }, unit: 'inHg' }).value.toFixed(1); // => '24.6'
 * ```
 */
export const pressureAtAltitude = /* @__PURE__ */ monotone(
  { altitude: '-' },
  <U extends PressureUnit>(input: PressureAtAltitudeInput<U>): Quantity<U> => {
    const { altitude, unit } = fields('pressureAtAltitude', input);
    const altitude_m = read('pressureAtAltitude', 'altitude', altitude, LENGTH, TROPOSPHERE);
    return write('pressureAtAltitude', standardPressure(altitude_m), PRESSURE, unit);
  },
);
