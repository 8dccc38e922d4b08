import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { EQUIVALENT_WEIGHT, MASS, SHARE } from '../core/dimensions.ts';
import { ISOCYANATE_AND_WATER, ISOCYANATE_IN_THE_AIR } from '../core/hazards.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { EquivalentWeight, Mass, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { MassUnit } from '../core/unitCodes.ts';
import { readBlend, type BlendComponent } from './component.ts';

/** Input of {@link isocyanateNeeded}. */
export interface IsocyanateNeededInput<U extends MassUnit = MassUnit> {
  /** Everything that reacts with isocyanate: polyols, amines; filler may stand among them. */
  readonly components: readonly BlendComponent[];
  /** Water among them: each 9 g of it uses up a group and foams. None where not given. */
  readonly water?: Mass | undefined;
  /** How much of the isocyanate carries one group. */
  readonly isocyanate: EquivalentWeight;
  /** Isocyanate groups for each group that reacts with them: 1.05 as a fraction or 105 %. */
  readonly index: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link isocyanateNeeded}. */
export interface IsocyanateNeeded<U extends MassUnit = MassUnit> {
  /** How much isocyanate goes in. */
  readonly mass: Quantity<U>;
  /** Gas that the water sets free when all of it has reacted; 0 where there is none. */
  readonly carbonDioxide: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** Molar masses in g/mol. Each water takes up two isocyanate groups and sets one carbon dioxide free. */
const WATER = 18.0153;
const CARBON_DIOXIDE = 44.0095;

/**
 * How much isocyanate a polyol or an amine blend needs at an index, the water in it counted, and how much gas that
 * water makes.
 *
 * @formula
 * ```math
 * m = I \, E_\mathrm{NCO} \left( \sum_i \frac{m_i}{E_i} + \frac{m_w}{9.008} \right) \qquad
 * m_{\mathrm{CO}_2} = \frac{44.01}{18.02} \, m_w
 * ```
 * @units masses, equivalent weights, share; answers masses.
 * @validRange masses, equivalent weights and index above 0; water 0 or more.
 * @accuracy Exact up to round-off. No published figure was found worked out; published forms round the water to 9.
 * @source pma-terms, atomic-weights, niosh-npg-hdi
 * @param input - What reacts, water, isocyanate, index and the unit wanted.
 * @returns The mass of isocyanate and of the gas in `input.unit`, not rounded, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.isocyanateNeeded({
 *   components: [{ mass: { value: 10, unit: 'kg' }, equivalentWeight: { value: 500, unit: 'g/eq' } }],
 *   water: { value: 20, unit: 'g' },
 *   isocyanate: { value: 135, unit: 'g/eq' },
 *   index: { value: 105, unit: '%' },
 *   unit: 'kg',
 * });
 * [answer.mass.value.toFixed(3), answer.carbonDioxide.value.toFixed(3)]; // => ['3.150', '0.049']
 * ```
 */
export function isocyanateNeeded<U extends MassUnit>(input: IsocyanateNeededInput<U>): IsocyanateNeeded<U> {
  const fn = 'isocyanateNeeded';
  const { components, water, isocyanate, index, unit } = fields(fn, input);
  const { groups } = readBlend(fn, 'components', components);
  const water_kg = readOr(0, fn, 'water', water, MASS, NOT_NEGATIVE);
  const weight = read(fn, 'isocyanate', isocyanate, EQUIVALENT_WEIGHT, POSITIVE);
  const ratio = read(fn, 'index', index, SHARE, POSITIVE);
  const massOf = (kg: number) => write(fn, kg, MASS, unit);
  const mass = massOf(ratio * weight * (groups + (2 * water_kg) / WATER));
  const carbonDioxide = massOf((water_kg * CARBON_DIOXIDE) / WATER);
  const foams: Caution = { ...ISOCYANATE_AND_WATER, params: { water: massOf(water_kg), carbonDioxide } };
  const gas = basis('carbonDioxide', 'mix.isocyanateNeeded', 'water · 44.0095 / 18.0153', 'atomic-weights', {
    water,
  });
  return {
    mass,
    carbonDioxide,
    cautions: [
      ...(water_kg > 0 ? [foams] : []),
      { ...ISOCYANATE_IN_THE_AIR, params: { mass, ...ISOCYANATE_IN_THE_AIR.params } },
    ],
    basis: [
      basis(
        'mass',
        'mix.isocyanateNeeded',
        'index · weight · (sum of mass / weight + water / 9.008)',
        'pma-terms',
        { components, water, isocyanate, index },
      ),
      ...(water_kg > 0 ? [gas] : []),
    ],
  };
}
