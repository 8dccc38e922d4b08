import { FORCE, LENGTH, PRESSURE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Pressure, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { ForceUnit } from '../core/unitCodes.ts';
import { dollyArea } from './dollyArea.ts';

/** Input of {@link pullOffForce}. */
export interface PullOffForceInput<U extends ForceUnit = ForceUnit> {
  /** Stress that the bond must bear. */
  readonly stress: Pressure;
  /** Diameter of the face of the dolly. */
  readonly dollyDiameter: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The force that a glued-on disc (the dolly) must bear for a stress that is asked for.
 *
 * @formula
 * ```math
 * F = \sigma \frac{\pi d^2}{4}
 * ```
 * @units pressure, length; answers force.
 * @validRange stress and dollyDiameter above 0.
 * @monotone stress +, dollyDiameter +
 * @accuracy Exact up to round-off: relative error below 1e-15. No published figure: it is stress times area.
 * @source astm-d7234, astm-d4541, iso-4624
 * @param input - Stress, diameter and the unit wanted.
 * @returns The force in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect
 *   .pullOffForce({ stress: { value: 1.5, unit: 'MPa' }, dollyDiameter: { value: 50, unit: 'mm' }, unit: 'N' })
 *   .value.toFixed(0); // => '2945'
 * ```
 */
export const pullOffForce = /* @__PURE__ */ monotone(
  { stress: '+', dollyDiameter: '+' },
  <U extends ForceUnit>(input: PullOffForceInput<U>): Quantity<U> => {
    const { stress, dollyDiameter, unit } = fields('pullOffForce', input);
    const stress_Pa = read('pullOffForce', 'stress', stress, PRESSURE, POSITIVE);
    const diameter_m = read('pullOffForce', 'dollyDiameter', dollyDiameter, LENGTH, POSITIVE);
    return write('pullOffForce', stress_Pa * dollyArea(diameter_m), FORCE, unit);
  },
);
