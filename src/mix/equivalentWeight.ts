import { EQUIVALENT_WEIGHT, MOLAR_MASS } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { MolarMass, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import type { EquivalentWeightUnit } from '../core/unitCodes.ts';

/** Input of {@link equivalentWeight}. */
export interface EquivalentWeightInput<U extends EquivalentWeightUnit = EquivalentWeightUnit> {
  /** Mass of one mole of the substance. */
  readonly molarMass: MolarMass;
  /** Reactive groups in one molecule; a mean where it is a blend. */
  readonly groups: number;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much of a substance carries one reactive group, from its formula.
 *
 * Which groups count depends on the partner: an amine reacts with epoxy once for each hydrogen on its nitrogens, with
 * isocyanate once for each nitrogen, so the same amine has two equivalent weights. Figures on the data sheet of the
 * product come first.
 *
 * @formula
 * ```math
 * E = \frac{M}{f}
 * ```
 * @units molar mass, number; answers equivalent weight.
 * @validRange molarMass above 0, groups above 0.
 * @monotone molarMass +
 * @accuracy Exact up to round-off. Commercial grades differ from the pure substance by 10 % and more.
 * @source atomic-weights, iasj-dsc
 * @param input - Molar mass, groups and the unit wanted.
 * @returns The equivalent weight in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * // Diethylenetriamine has five hydrogens on its nitrogens.
 * mix.equivalentWeight({ molarMass: { value: 103.166, unit: 'g/mol' }, groups: 5, unit: 'g/eq' }).value.toFixed(2);
 * // => '20.63'
 * ```
 */
export const equivalentWeight = /* @__PURE__ */ monotone(
  { molarMass: '+' },
  <U extends EquivalentWeightUnit>(input: EquivalentWeightInput<U>): Quantity<U> => {
    const { molarMass, groups, unit } = fields('equivalentWeight', input);
    const molarMass_gPerMol = read('equivalentWeight', 'molarMass', molarMass, MOLAR_MASS, POSITIVE);
    const groupsEach = readNumber('equivalentWeight', 'groups', groups, POSITIVE);
    return write('equivalentWeight', molarMass_gPerMol / groupsEach, EQUIVALENT_WEIGHT, unit);
  },
);
