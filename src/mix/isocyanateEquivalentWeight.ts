import { EQUIVALENT_WEIGHT, SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { EquivalentWeightUnit } from '../core/unitCodes.ts';

/** Input of {@link isocyanateEquivalentWeight}. */
export interface IsocyanateEquivalentWeightInput<U extends EquivalentWeightUnit = EquivalentWeightUnit> {
  /** Share of the mass that is isocyanate groups: the NCO content. */
  readonly isocyanateContent: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Molar mass of the group NCO in g/mol. */
export const NCO = 42.0168;

/**
 * How much of an isocyanate or prepolymer carries one isocyanate group, from its NCO content.
 *
 * @formula
 * ```math
 * E = \frac{M_\mathrm{NCO}}{w_\mathrm{NCO}} = \frac{4201.68}{\%\,\mathrm{NCO}}
 * ```
 * @units share of mass; answers equivalent weight.
 * @validRange isocyanateContent above 0 % and up to 100 %.
 * @monotone isocyanateContent -
 * @accuracy Exact up to round-off. Published forms round the 4201.68 to 4202 or to 4200.
 * @source pma-terms, atomic-weights
 * @param input - NCO content and the unit wanted.
 * @returns The equivalent weight in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.isocyanateEquivalentWeight({ isocyanateContent: { value: 31, unit: '%' }, unit: 'g/eq' }).value.toFixed(1);
 * // => '135.5'
 * ```
 */
export const isocyanateEquivalentWeight = /* @__PURE__ */ monotone(
  { isocyanateContent: '-' },
  <U extends EquivalentWeightUnit>(input: IsocyanateEquivalentWeightInput<U>): Quantity<U> => {
    const { isocyanateContent, unit } = fields('isocyanateEquivalentWeight', input);
    const content = read(
      'isocyanateEquivalentWeight',
      'isocyanateContent',
      isocyanateContent,
      SHARE,
      PART_OR_WHOLE,
    );
    return write('isocyanateEquivalentWeight', NCO / content, EQUIVALENT_WEIGHT, unit);
  },
);
