import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { SameKind, Unit } from '../core/dimensionOf.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import type { LikelyRange } from '../core/range.ts';
import { fields } from '../core/read.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer } from '../units/valueIn.ts';
import { coverageFactorOf, readConfidence } from './confidence.ts';
import { deviationOf, meanOf, readReadings } from './readings.ts';
import { stepUnitOf, type StepUnit } from './uncertain.ts';

/** Input of {@link studentInterval}. */
export interface StudentIntervalInput<U extends Unit = Unit> {
  /** Two readings or more, each in its own unit. */
  readonly readings: readonly Quantity<SameKind<U>>[];
  /** How sure the interval is to hold the true mean. */
  readonly confidence: Share;
  /** Unit of the answer, which says what kind the readings are. */
  readonly unit: U;
}

/** A range that holds the true mean; the likely value is the mean of the readings. */
export interface StudentInterval<U extends Unit = Unit> extends LikelyRange<U> {
  /** From the mean to either end. */
  readonly halfWidth: Quantity<StepUnit<U>>;
  /** Sample standard deviation of the readings. */
  readonly standardDeviation: Quantity<StepUnit<U>>;
  /** The same of their mean: its standard uncertainty. */
  readonly standardUncertainty: Quantity<StepUnit<U>>;
  /** Readings less one. */
  readonly degreesOfFreedom: number;
  /** Student's factor, two-sided. */
  readonly coverageFactor: number;
  /** What belongs with the answer; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Between which values the true mean of a floor lies, by a few readings of it, with Student's t.
 *
 * It says nothing of single places: which share of the floor lies where is told by `normalToleranceInterval`.
 *
 * @formula
 * ```math
 * \bar{x} \pm t_{n-1} \frac{s}{\sqrt{n}}
 * ```
 * @units any kind, share; answers the same kind, of temperatures also temperature differences.
 * @validRange two readings or more, independent of each other; confidence from 0.0001 % to below 100 %.
 * @accuracy As `sampleStandardDeviation` and `coverageFactor`.
 * @source jcgm-100-2008, environmental-engineers-2002
 * @param input - The readings, the level of confidence and the unit wanted.
 * @returns The range with the figures that make it, in `input.unit`.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const mean = statistics.studentInterval({
 *   readings: [9.6, 10.9, 10.1, 10.6].map((value) => ({ value, unit: 'mil' }) as const),
 *   confidence: { value: 95, unit: '%' },
 *   unit: 'mil',
 * });
 * [mean.low, mean.likely, mean.high].map((end) => end.value.toFixed(2)); // => ['9.39', '10.30', '11.21']
 * ```
 */
export function studentInterval<U extends Unit>(input: StudentIntervalInput<U>): StudentInterval<U> {
  const fn = 'studentInterval';
  const { readings, confidence, unit } = fields(fn, input);
  const level = readConfidence(fn, confidence);
  const dimension = dimensionOfUnit(fn, unit);
  const values = readReadings(fn, readings, 2, dimension, unit);
  const degreesOfFreedom = values.length - 1;
  const mean = meanOf(values);
  const deviation = deviationOf(values, mean);
  const ofMean = deviation / Math.sqrt(values.length);
  const coverageFactor = coverageFactorOf(level, degreesOfFreedom);
  const halfWidth = coverageFactor * ofMean;
  const step = stepUnitOf(unit, dimension);
  return {
    low: answer(fn, mean - halfWidth, unit),
    likely: answer(fn, mean, unit),
    high: answer(fn, mean + halfWidth, unit),
    halfWidth: answer(fn, halfWidth, step),
    standardDeviation: answer(fn, deviation, step),
    standardUncertainty: answer(fn, ofMean, step),
    degreesOfFreedom,
    coverageFactor,
    cautions: [{ code: 'mean-not-places', severity: 'note', params: {}, source: 'jcgm-100-2008' }],
    basis: [
      basis(
        'halfWidth',
        `statistics.${fn}`,
        'coverageFactor · s / √n',
        'jcgm-100-2008',
        { readings, confidence },
        'independent readings, normally distributed',
      ),
    ],
  };
}
