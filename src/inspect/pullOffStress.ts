import { FORCE, LENGTH, PRESSURE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Force, Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { dollyArea } from './dollyArea.ts';

/** Input of {@link pullOffStress}. */
export interface PullOffStressInput<U extends PressureUnit = PressureUnit> {
  /** Force at which the dolly came off. */
  readonly force: Force;
  /** Diameter of the face of the dolly that was glued on: 50 mm is not 2 in. */
  readonly dollyDiameter: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The stress at which a glued-on disc (the dolly) was torn off a floor.
 *
 * @formula
 * ```math
 * \sigma = \frac{4 F}{\pi d^2}
 * ```
 * @units force, length; answers pressure.
 * @validRange force and dollyDiameter above 0.
 * @monotone force +, dollyDiameter -
 * @accuracy Exact up to round-off: relative error below 1e-15. A 50 mm dolly taken for one of 2 in reads 3.1 % low.
 * No published figure: it is force over area.
 * @source astm-d7234, astm-d4541, iso-4624
 * @param input - Force, diameter and the unit wanted.
 * @returns The stress in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const force = { value: 3000, unit: 'N' } as const;
 * const stress = (dollyDiameter: { value: number; unit: 'mm' }) =>
 *   inspect.pullOffStress({ force, dollyDiameter, unit: 'MPa' }).value.toFixed(3);
 * stress({ value: 50, unit: 'mm' }); // => '1.528'
 * stress({ value: 20, unit: 'mm' }); // => '9.549'
 * ```
 */
export const pullOffStress = /* @__PURE__ */ monotone(
  { force: '+', dollyDiameter: '-' },
  <U extends PressureUnit>(input: PullOffStressInput<U>): Quantity<U> => {
    const { force, dollyDiameter, unit } = fields('pullOffStress', input);
    const force_N = read('pullOffStress', 'force', force, FORCE, POSITIVE);
    const diameter_m = read('pullOffStress', 'dollyDiameter', dollyDiameter, LENGTH, POSITIVE);
    return write('pullOffStress', force_N / dollyArea(diameter_m), PRESSURE, unit);
  },
);
