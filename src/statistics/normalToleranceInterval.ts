import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { SameKind, Unit } from '../core/dimensionOf.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer } from '../units/valueIn.ts';
import { readConfidence } from './confidence.ts';
import { deviationOf, meanOf, readReadings } from './readings.ts';
import { ENDS, readShare, type ToleranceSides } from './sides.ts';
import { toleranceFactorOf } from './toleranceFactorOf.ts';
import { stepUnitOf, type StepUnit } from './uncertain.ts';

/** Input of {@link normalToleranceInterval}. */
export interface NormalToleranceIntervalInput<U extends Unit = Unit> {
  /** Two readings or more, each in its own unit. */
  readonly readings: readonly Quantity<SameKind<U>>[];
  /** The share of all places that the interval is to hold. */
  readonly share: Share;
  /** How sure it is to hold them. */
  readonly confidence: Share;
  /** Both ends, or only a low or a high one: a film that is nowhere too thin has a low one. */
  readonly sides: ToleranceSides;
  /** Unit of the answer, which says what kind the readings are. */
  readonly unit: U;
}

/** Between which values a share of all places lies. */
export interface NormalToleranceInterval<U extends Unit = Unit> {
  /** Low end, where there is one. */
  readonly low?: Quantity<U> | undefined;
  /** High end, where there is one. */
  readonly high?: Quantity<U> | undefined;
  /** Mean of the readings. */
  readonly mean: Quantity<U>;
  /** Sample standard deviation of the readings. */
  readonly standardDeviation: Quantity<StepUnit<U>>;
  /** Standard deviations from the mean to an end. */
  readonly factor: number;
  /** What belongs with the answer; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Between which values a share of all places of a floor lies, by a few readings of it: what single places are like,
 * not what their mean is.
 *
 * @formula
 * ```math
 * \bar{x} \pm k\, s
 * ```
 * @units any kind, shares; answers the same kind, of temperatures also a temperature difference.
 * @validRange two readings or more of a normal distribution; share above 50 % and below 100 %; confidence from
 * 0.0001 % to below 100 %, on one side high enough for a factor above 0, as 50 % always is.
 * @accuracy As `normalToleranceFactor` and `sampleStandardDeviation`. Readings of another distribution may lie further
 * out than any factor tells. No published figure with its readings; the factor has them.
 * @source environmental-engineers-2002
 * @param input - The readings, the share, the level of confidence, which ends and the unit wanted.
 * @returns The ends with the figures that make them, in `input.unit`.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const film = statistics.normalToleranceInterval({
 *   readings: [15.1, 16.4, 17.2, 15.8, 16.0, 16.9].map((value) => ({ value, unit: 'mil' }) as const),
 *   share: { value: 90, unit: '%' },
 *   confidence: { value: 95, unit: '%' },
 *   sides: 'low',
 *   unit: 'mil',
 * });
 * [film.mean.value.toFixed(1), film.low?.value.toFixed(1), film.high]; // => ['16.2', '13.9', undefined]
 * ```
 */
export function normalToleranceInterval<U extends Unit>(
  input: NormalToleranceIntervalInput<U>,
): NormalToleranceInterval<U> {
  const fn = 'normalToleranceInterval';
  const { readings, share, confidence, sides, unit } = fields(fn, input);
  const part = readShare(fn, share);
  const level = readConfidence(fn, confidence);
  const ends = ENDS[readKey(fn, 'sides', sides, ENDS)];
  const dimension = dimensionOfUnit(fn, unit);
  const values = readReadings(fn, readings, 2, dimension, unit);
  const mean = meanOf(values);
  const deviation = deviationOf(values, mean);
  const factor = toleranceFactorOf(fn, values.length, part, level, ends);
  return {
    ...(sides !== 'high' && { low: answer(fn, mean - factor * deviation, unit) }),
    ...(sides !== 'low' && { high: answer(fn, mean + factor * deviation, unit) }),
    mean: answer(fn, mean, unit),
    standardDeviation: answer(fn, deviation, stepUnitOf(unit, dimension)),
    factor,
    cautions: [{ code: 'normal-readings-assumed', severity: 'note', params: {}, source: 'common-practice' }],
    basis: [
      basis(
        'factor',
        `statistics.${fn}`,
        'exact factor of the normal distribution',
        'environmental-engineers-2002',
        { readings, share, confidence, sides },
        'independent readings, normally distributed',
      ),
    ],
  };
}
