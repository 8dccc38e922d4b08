import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer, valueIn } from '../units/valueIn.ts';
import { coverageFactorOf, readConfidence } from './confidence.ts';
import {
  exactlyOne,
  freedomField,
  readFreedom,
  stepOf,
  stepUnitOf,
  type StepUnit,
  type Uncertain,
} from './uncertain.ts';

/** Input of {@link uncertaintyFromExpanded}. */
export interface UncertaintyFromExpandedInput<U extends Unit = Unit> {
  /** What the certificate gives for the quantity. */
  readonly estimate: Quantity<SameKind<U>>;
  /** The expanded uncertainty that stands beside it, after ±. */
  readonly expandedUncertainty: Quantity<StepUnit<NoInfer<U>>>;
  /** The factor that it was expanded by; either this or `confidence`. */
  readonly coverageFactor?: number | undefined;
  /** The level of confidence that it was expanded to; either this or `coverageFactor`. */
  readonly confidence?: Share | undefined;
  /** Degrees of freedom, where the certificate names them. */
  readonly degreesOfFreedom?: number | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How well a quantity is known, from the expanded uncertainty of a calibration certificate.
 *
 * @formula
 * ```math
 * u = \frac{U}{k}
 * ```
 * @units any kind, number or share; answers the same kind with an uncertainty, of temperatures a temperature
 * difference.
 * @validRange expandedUncertainty of 0 or more; coverageFactor above 0; confidence from 0.0001 % to below 100 %;
 * degreesOfFreedom of 1 or more.
 * @monotone estimate +, expandedUncertainty none, confidence none
 * @accuracy As `coverageFactor`.
 * @source jcgm-100-2008
 * @param input - Estimate, expanded uncertainty, what it was expanded by and the unit wanted.
 * @returns The estimate in `input.unit` with its standard uncertainty.
 * @throws An `InputError` that names the field; `conflict` where factor and confidence are both given.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * statistics.uncertaintyFromExpanded({
 *   estimate: { value: 75, unit: '%' },
 *   expandedUncertainty: { value: 3, unit: '%' },
 *   coverageFactor: 2,
 *   unit: '%',
 * }).standardUncertainty; // => { value: 1.5, unit: '%' }
 * ```
 */
export const uncertaintyFromExpanded = /* @__PURE__ */ monotone(
  { estimate: '+', expandedUncertainty: 'none', confidence: 'none' },
  <U extends Unit>(input: UncertaintyFromExpandedInput<U>): Uncertain<U> => {
    const fn = 'uncertaintyFromExpanded';
    const given = fields(fn, input);
    const { unit } = given;
    const dimension = dimensionOfUnit(fn, unit);
    const step = stepOf(dimension);
    const value = valueIn(fn, 'estimate', given.estimate, dimension, unit);
    const expanded = read<string>(fn, 'expandedUncertainty', given.expandedUncertainty, step, NOT_NEGATIVE);
    const freedom = readFreedom(fn, given.degreesOfFreedom);
    exactlyOne(fn, given, 'coverageFactor', 'confidence');
    const factor =
      given.coverageFactor === undefined
        ? coverageFactorOf(readConfidence(fn, given.confidence), freedom)
        : readNumber(fn, 'coverageFactor', given.coverageFactor, POSITIVE);
    return {
      ...answer(fn, value, unit),
      standardUncertainty: write(fn, expanded / factor, step, stepUnitOf(unit, dimension)),
      ...freedomField(freedom),
    };
  },
);
