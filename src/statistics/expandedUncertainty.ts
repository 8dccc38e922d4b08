import type { Unit } from '../core/dimensionOf.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { coverageFactorOf, readConfidence, tableFreedom } from './confidence.ts';
import { readUncertain, type StepUnit, type Uncertain } from './uncertain.ts';

/** Input of {@link expandedUncertainty}. */
export interface ExpandedUncertaintyInput<
  From extends Unit = Unit,
  U extends StepUnit<From> = StepUnit<From>,
> {
  /** A quantity with its standard uncertainty. */
  readonly measured: Uncertain<From>;
  /** How sure the interval is to hold the true value. */
  readonly confidence: Share;
  /** Unit of the answer; of a temperature that of a difference. */
  readonly unit: U;
}

/**
 * The half-width about a measured value that holds the true one with a level of confidence.
 *
 * Degrees of freedom that are not whole are truncated before the factor is looked up, as the GUM does for its table.
 *
 * @formula
 * ```math
 * U = t_p(\lfloor \nu \rfloor)\, u
 * ```
 * @units any kind, share; answers the same kind, of a temperature a temperature difference.
 * @validRange standard uncertainty of 0 or more; degreesOfFreedom of 1 or more; confidence from 0.0001 % to below
 * 100 %.
 * @monotone measured none, confidence +
 * @accuracy As `coverageFactor`.
 * @source jcgm-100-2008
 * @param input - Measured value, level of confidence and the unit wanted.
 * @returns The expanded uncertainty in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const measured = {
 *   value: 16,
 *   unit: 'mil',
 *   standardUncertainty: { value: 0.4, unit: 'mil' },
 *   degreesOfFreedom: 8,
 * } as const;
 * const confidence = { value: 95, unit: '%' } as const;
 * statistics.expandedUncertainty({ measured, confidence, unit: 'mil' }).value.toFixed(3); // => '0.922'
 * ```
 */
export const expandedUncertainty = /* @__PURE__ */ monotone(
  { measured: 'none', confidence: '+' },
  <From extends Unit, U extends StepUnit<From>>(input: ExpandedUncertaintyInput<From, U>): Quantity<U> => {
    const fn = 'expandedUncertainty';
    const { measured, confidence, unit } = fields(fn, input);
    const { step, uncertainty } = readUncertain(fn, 'measured', measured);
    const level = readConfidence(fn, confidence);
    const factor = coverageFactorOf(level, tableFreedom(uncertainty.freedom));
    return write(fn, factor * uncertainty.base, step, unit);
  },
);
