import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readAny } from '../core/readAny.ts';
import { coverageFactorOf, readConfidence } from './confidence.ts';

/** Input of {@link readingsNeeded}. */
export interface ReadingsNeededInput<U extends string = string> {
  /** How widely such readings scatter, from an earlier floor or a first series. */
  readonly standardDeviation: Quantity<U>;
  /** How far the mean may be off. */
  readonly halfWidth: Quantity<U>;
  /** How sure it is to be no further off. */
  readonly confidence: Share;
}

/** How many readings to take. */
export interface ReadingsNeeded {
  /** By Student's t: the deviation of the readings to come is not known yet. */
  readonly count: number;
  /** By the normal distribution, as if the deviation were known: too few, for comparison. */
  readonly countByNormal: number;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** More readings than anyone takes. */
const MOST = 1e9;

/**
 * How many readings a mean needs so that it is off by no more than asked for.
 *
 * @formula
 * ```math
 * n = \min \left\{ n : t_{n-1} \frac{s}{\sqrt{n}} \le E \right\}
 * ```
 * @units two quantities of one kind, share; answers counts.
 * @validRange both quantities above 0 and no temperature; confidence from 0.0001 % to below 100 %; up to 1e9 readings.
 * @accuracy Exact for the deviation given. No published figure: it is `studentInterval` the other way round.
 * @source jcgm-100-2008
 * @param input - Deviation, half-width and level of confidence.
 * @returns The counts.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * statistics.readingsNeeded({
 *   standardDeviation: { value: 1.2, unit: 'mil' },
 *   halfWidth: { value: 0.8, unit: 'mil' },
 *   confidence: { value: 95, unit: '%' },
 * }).count; // => 12
 * ```
 */
export function readingsNeeded<U extends string>(input: ReadingsNeededInput<U>): ReadingsNeeded {
  const fn = 'readingsNeeded';
  const { standardDeviation, halfWidth, confidence } = fields(fn, input);
  const { dimension } = readAny(fn, 'standardDeviation', standardDeviation);
  if (dimension.kind === TEMPERATURE.kind) {
    refuse(fn, 'wrong-unit', ['standardDeviation'], 'of any kind but a temperature', standardDeviation);
  }
  const deviation = read<string>(fn, 'standardDeviation', standardDeviation, dimension, POSITIVE);
  const ratio = deviation / read<string>(fn, 'halfWidth', halfWidth, dimension, POSITIVE);
  const level = readConfidence(fn, confidence);
  /** A whole number of readings that is reached but for round-off counts as reached. */
  const enough = (factor: number) => Math.ceil((factor * ratio) ** 2 * (1 - 1e-12));
  const countByNormal = Math.max(1, enough(coverageFactorOf(level, undefined)));
  if (!(countByNormal <= MOST)) {
    refuse(fn, 'out-of-range', ['halfWidth'], 'wide enough for 1e9 readings', halfWidth);
  }
  let count = Math.max(2, countByNormal);
  while (enough(coverageFactorOf(level, count - 1)) > count) count++;
  return {
    count,
    countByNormal,
    cautions: [],
    basis: [
      basis('count', `statistics.${fn}`, 'smallest n with t · s / √n ≤ halfWidth', 'jcgm-100-2008', {
        standardDeviation,
        halfWidth,
        confidence,
      }),
    ],
  };
}
