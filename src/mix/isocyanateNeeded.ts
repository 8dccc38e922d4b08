import { EQUIVALENT_WEIGHT, MASS, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
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

/** How much water uses up one isocyanate group, in g/eq: half its molar mass. */
const WATER = 18.0153 / 2;

/**
 * How much isocyanate a polyol or an amine blend needs at an index, the water in it counted.
 *
 * @formula
 * ```math
 * m = I \, E_\mathrm{NCO} \left( \sum_i \frac{m_i}{E_i} + \frac{m_w}{9.008} \right)
 * ```
 * @units masses, equivalent weights, share; answers mass.
 * @validRange masses, equivalent weights and index above 0; water 0 or more.
 * @monotone water +, isocyanate +, index +
 * @accuracy Exact up to round-off. No published figure was found worked out; published forms round the water to 9.
 * @source pma-terms
 * @param input - What reacts, water, isocyanate, index and the unit wanted.
 * @returns The mass of isocyanate in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.isocyanateNeeded({
 *   components: [{ mass: { value: 10, unit: 'kg' }, equivalentWeight: { value: 500, unit: 'g/eq' } }],
 *   isocyanate: { value: 135, unit: 'g/eq' },
 *   index: { value: 105, unit: '%' },
 *   unit: 'kg',
 * }).value.toFixed(3); // => '2.835'
 * ```
 */
export const isocyanateNeeded = /* @__PURE__ */ monotone(
  { water: '+', isocyanate: '+', index: '+' },
  <U extends MassUnit>(input: IsocyanateNeededInput<U>): Quantity<U> => {
    const { components, water, isocyanate, index, unit } = fields('isocyanateNeeded', input);
    const { groups } = readBlend('isocyanateNeeded', 'components', components);
    const water_kg = readOr(0, 'isocyanateNeeded', 'water', water, MASS, NOT_NEGATIVE);
    const weight = read('isocyanateNeeded', 'isocyanate', isocyanate, EQUIVALENT_WEIGHT, POSITIVE);
    const ratio = read('isocyanateNeeded', 'index', index, SHARE, POSITIVE);
    return write('isocyanateNeeded', ratio * weight * (groups + water_kg / WATER), MASS, unit);
  },
);
