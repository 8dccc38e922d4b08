import { EQUIVALENT_WEIGHT, SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { EquivalentWeightUnit } from '../core/unitCodes.ts';

/** Input of {@link epoxyEquivalentWeight}. */
export interface EpoxyEquivalentWeightInput<U extends EquivalentWeightUnit = EquivalentWeightUnit> {
  /** Share of the resin's mass that is oxygen in epoxide rings. */
  readonly oxiraneOxygen: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Molar mass of oxygen in g/mol: there is one in each epoxide ring. */
const OXYGEN = 15.9994;

/**
 * How much of an epoxy resin carries one epoxide group, from its oxirane oxygen.
 *
 * @formula
 * ```math
 * E = \frac{M_\mathrm{O}}{w_\mathrm{O}} = \frac{1599.94}{\%\,\mathrm{oxirane\ oxygen}}
 * ```
 * @units share of mass; answers equivalent weight.
 * @validRange oxiraneOxygen above 0 % and up to 100 %.
 * @monotone oxiraneOxygen -
 * @accuracy Exact up to round-off. No published figure was found worked out: it is the definition of oxirane oxygen.
 * @source atomic-weights
 * @param input - Oxirane oxygen and the unit wanted.
 * @returns The equivalent weight in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.epoxyEquivalentWeight({ oxiraneOxygen: { value: 8.5, unit: '%' }, unit: 'g/eq' }).value.toFixed(1); // => '188.2'
 * ```
 */
export const epoxyEquivalentWeight = /* @__PURE__ */ monotone(
  { oxiraneOxygen: '-' },
  <U extends EquivalentWeightUnit>(input: EpoxyEquivalentWeightInput<U>): Quantity<U> => {
    const { oxiraneOxygen, unit } = fields('epoxyEquivalentWeight', input);
    const oxygen = read('epoxyEquivalentWeight', 'oxiraneOxygen', oxiraneOxygen, SHARE, PART_OR_WHOLE);
    return write('epoxyEquivalentWeight', OXYGEN / oxygen, EQUIVALENT_WEIGHT, unit);
  },
);
