import { MASS, SHARE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Mass, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link sandMoisture}. */
export interface SandMoistureInput<U extends ShareUnit = ShareUnit> {
  /** Sample as it comes. */
  readonly wetMass: Mass;
  /** The same after drying until it loses no more. */
  readonly dryMass: Mass;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How wet a sand is, as the water in it over the dry sand.
 *
 * @formula
 * ```math
 * u = \frac{m_w - m_d}{m_d}
 * ```
 * @units masses; answers share.
 * @validRange dryMass above 0, wetMass no less than dryMass. On dry mass: the same sand shows a smaller figure on wet
 * mass.
 * @monotone wetMass +, dryMass -
 * @accuracy Absolute error below 5e-16. A scale that shows 0.1 g on 500 g is worth 0.02 %.
 * @source definition
 * @param input - Masses and the unit wanted.
 * @returns The moisture on dry mass in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the dry sand is the heavier one.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.sandMoisture({
 *   wetMass: { value: 500, unit: 'g' },
 *   dryMass: { value: 498.2, unit: 'g' },
 *   unit: '%',
 * }).value.toFixed(3); // => '0.361'
 * ```
 */
export const sandMoisture = /* @__PURE__ */ monotone(
  { wetMass: '+', dryMass: '-' },
  <U extends ShareUnit>(input: SandMoistureInput<U>): Quantity<U> => {
    const { wetMass, dryMass, unit } = fields('sandMoisture', input);
    const wet_kg = read('sandMoisture', 'wetMass', wetMass, MASS, POSITIVE);
    const dry_kg = read('sandMoisture', 'dryMass', dryMass, MASS, POSITIVE);
    if (dry_kg > wet_kg * (1 + 1e-12)) {
      refuse('sandMoisture', 'conflict', ['dryMass'], 'no more than wetMass', dryMass);
    }
    return write('sandMoisture', Math.max((wet_kg - dry_kg) / dry_kg, 0), SHARE, unit);
  },
);
