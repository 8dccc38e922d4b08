import { EQUIVALENT_WEIGHT, SHARE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Limits } from '../core/limits.ts';
import type { EquivalentWeight, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { NCO } from './isocyanateEquivalentWeight.ts';

/** Input of {@link isocyanateContent}. */
export interface IsocyanateContentInput<U extends ShareUnit = ShareUnit> {
  /** How much of the isocyanate carries one group. */
  readonly equivalentWeight: EquivalentWeight;
  /** Unit of the answer. */
  readonly unit: U;
}

/** No molecule is lighter than the group itself. */
export const AS_HEAVY_AS_NCO: Limits = {
  above: 42.016799999958,
  below: Infinity,
  words: ' of 42.0168 g/eq, the group itself, or more',
};

/**
 * Which share of an isocyanate's mass is isocyanate groups, from its equivalent weight.
 *
 * @formula
 * ```math
 * w_\mathrm{NCO} = \frac{M_\mathrm{NCO}}{E}
 * ```
 * @units equivalent weight; answers share of mass.
 * @validRange equivalentWeight of 42.0168 g/eq or more.
 * @monotone equivalentWeight -
 * @accuracy Exact up to round-off. Published forms round the 4201.68 to 4202 or to 4200.
 * @source pma-terms, atomic-weights
 * @param input - Equivalent weight and the unit wanted.
 * @returns The NCO content in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.isocyanateContent({ equivalentWeight: { value: 125.126, unit: 'g/eq' }, unit: '%' }).value.toFixed(2);
 * // => '33.58'
 * ```
 */
export const isocyanateContent = /* @__PURE__ */ monotone(
  { equivalentWeight: '-' },
  <U extends ShareUnit>(input: IsocyanateContentInput<U>): Quantity<U> => {
    const { equivalentWeight, unit } = fields('isocyanateContent', input);
    const weight = read(
      'isocyanateContent',
      'equivalentWeight',
      equivalentWeight,
      EQUIVALENT_WEIGHT,
      AS_HEAVY_AS_NCO,
    );
    return write('isocyanateContent', NCO / weight, SHARE, unit);
  },
);
