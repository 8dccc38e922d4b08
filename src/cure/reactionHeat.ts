import { EQUIVALENT_WEIGHT, HEAT_PER_MASS, MOLAR_ENERGY } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { EquivalentWeight, MolarEnergy, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { HeatPerMassUnit } from '../core/unitCodes.ts';

/** Input of {@link reactionHeat}. */
export interface ReactionHeatInput<U extends HeatPerMassUnit = HeatPerMassUnit> {
  /** Heat that one mole of groups sets free when it reacts. */
  readonly perGroup: MolarEnergy;
  /** How much of the resin carries one group. */
  readonly resin: EquivalentWeight;
  /** How much of the hardener carries one group. */
  readonly hardener: EquivalentWeight;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much heat a mix sets free for its mass when all of it reacts in ratio.
 *
 * @formula
 * ```math
 * h = \frac{H}{E_\mathrm{resin} + E_\mathrm{hardener}}
 * ```
 * @units molar energy, equivalent weights; answers heat per mass.
 * @validRange all above 0.
 * @monotone perGroup +, resin -, hardener -
 * @accuracy Exact up to round-off; published pairs of figures agree with each other to 3 %.
 * @source polimeros-dgeba
 * @param input - Heat for a mole of groups, equivalent weights and the unit wanted.
 * @returns The heat for the mass of the mix in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * cure.reactionHeat({
 *   perGroup: { value: 100, unit: 'kJ/mol' },
 *   resin: { value: 190, unit: 'g/eq' },
 *   hardener: { value: 60, unit: 'g/eq' },
 *   unit: 'J/g',
 * }); // => { value: 400, unit: 'J/g' }
 * ```
 */
export const reactionHeat = /* @__PURE__ */ monotone(
  { perGroup: '+', resin: '-', hardener: '-' },
  <U extends HeatPerMassUnit>(input: ReactionHeatInput<U>): Quantity<U> => {
    const { perGroup, resin, hardener, unit } = fields('reactionHeat', input);
    const heat_kJ = read('reactionHeat', 'perGroup', perGroup, MOLAR_ENERGY, POSITIVE);
    const resinWeight = read('reactionHeat', 'resin', resin, EQUIVALENT_WEIGHT, POSITIVE);
    const hardenerWeight = read('reactionHeat', 'hardener', hardener, EQUIVALENT_WEIGHT, POSITIVE);
    return write('reactionHeat', (1000 * heat_kJ) / (resinWeight + hardenerWeight), HEAT_PER_MASS, unit);
  },
);
