import type { Unit } from '../core/dimensionOf.ts';
import { SHARE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { chanceWithin, readSpecification, type Specification } from './specification.ts';

/** Input of {@link conformanceProbability}. */
export interface ConformanceProbabilityInput<
  K extends Unit = Unit,
  U extends ShareUnit = ShareUnit,
> extends Specification<K> {
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How likely it is that the true value is within its limits, by what a measurement says of it.
 *
 * The true value is taken as normally distributed about the measured one; with degrees of freedom, by Student's
 * distribution.
 *
 * @formula
 * ```math
 * p = \Phi\!\left(\frac{T_U - y}{u}\right) - \Phi\!\left(\frac{T_L - y}{u}\right)
 * ```
 * @units any kind; answers share.
 * @validRange one limit or both, in order; standard uncertainty of 0 or more. Without uncertainty it is 0 or 1.
 * @monotone measured none, least none, most none
 * @accuracy Within 1e-14.
 * @source jcgm-106-2012
 * @param input - Measured value, limits and the unit wanted.
 * @returns The probability in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * statistics.conformanceProbability({
 *   measured: { value: 20.5, unit: 'mil', standardUncertainty: { value: 0.5, unit: 'mil' } },
 *   least: { value: 20, unit: 'mil' },
 *   unit: '%',
 * }).value.toFixed(1); // => '84.1'
 * ```
 */
export const conformanceProbability = /* @__PURE__ */ monotone(
  { measured: 'none', least: 'none', most: 'none' },
  <K extends Unit, U extends ShareUnit>(input: ConformanceProbabilityInput<K, U>): Quantity<U> => {
    const given = fields('conformanceProbability', input) as unknown as Specification;
    const chance = chanceWithin(readSpecification('conformanceProbability', given));
    return write('conformanceProbability', chance, SHARE, input.unit);
  },
);
