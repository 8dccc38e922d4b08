import type { Share } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { coverageFactorOf, readConfidence } from './confidence.ts';
import { readFreedom } from './uncertain.ts';

/** Input of {@link coverageFactor}. */
export interface CoverageFactorInput {
  /** How sure the interval is to hold the true value. */
  readonly confidence: Share;
  /** How well the standard uncertainty is known; left out where it is known exactly. */
  readonly degreesOfFreedom?: number | undefined;
}

/**
 * How many standard uncertainties to go either side of a value to hold the true one with a level of confidence: the
 * two-sided factor of Student's t.
 *
 * @formula
 * ```math
 * P(-k \le t_\nu \le k) = p
 * ```
 * @units share, number; answers a number.
 * @validRange confidence from 0.0001 % to below 100 %; degreesOfFreedom of 1 or more, whole or not.
 * @accuracy Within a relative 1e-12 for levels of 1 % and more.
 * @source jcgm-100-2008, dlmf, hill-1970
 * @param input - Level of confidence and degrees of freedom.
 * @returns The coverage factor.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const confidence = { value: 95, unit: '%' } as const;
 * statistics.coverageFactor({ confidence, degreesOfFreedom: 4 }).toFixed(4); // => '2.7764'
 * statistics.coverageFactor({ confidence }).toFixed(4); // => '1.9600'
 * ```
 */
export function coverageFactor(input: CoverageFactorInput): number {
  const { confidence, degreesOfFreedom } = fields('coverageFactor', input);
  const level = readConfidence('coverageFactor', confidence);
  return coverageFactorOf(level, readFreedom('coverageFactor', degreesOfFreedom));
}
