import type { Share } from '../core/quantity.ts';
import { fields, refuse } from '../core/read.ts';
import { readCount, readKey } from '../core/readPlain.ts';
import { readConfidence } from './confidence.ts';
import { ENDS, readShare, type ToleranceSides } from './sides.ts';
import { toleranceFactorOf } from './toleranceFactorOf.ts';

/** Input of {@link normalToleranceFactor}. */
export interface NormalToleranceFactorInput {
  /** How many readings. */
  readonly count: number;
  /** The share of all places that the interval is to hold. */
  readonly share: Share;
  /** How sure it is to hold them. */
  readonly confidence: Share;
  /** Both ends, or only a low or a high one. */
  readonly sides: ToleranceSides;
}

/** More readings than any floor has. */
const MOST = 1_000_000;

/**
 * How many sample standard deviations from the mean of a few readings hold a share of all places, with a level of
 * confidence: the exact factor for readings of a normal distribution.
 *
 * @formula
 * ```math
 * \int_{-\infty}^{\infty} \varphi(z)\, Q\!\left(\tfrac{n-1}{2},\, \tfrac{(n-1)\, r(z)^2}{2 k^2}\right) dz = \gamma,
 * \quad \Phi(\tfrac{z}{\sqrt n} + r) - \Phi(\tfrac{z}{\sqrt n} - r) = p
 * ```
 * @units shares, count; answers a number.
 * @validRange count from 2 to 1,000,000; share above 50 % and below 100 %; confidence from 0.0001 % to below 100 %,
 * on one side high enough for a factor above 0, as 50 % always is.
 * @accuracy Within a relative 1e-10; the one-sided factor is that of the noncentral t.
 * @source environmental-engineers-2002, scipy-1.17
 * @param input - Number of readings, share, level of confidence and which ends.
 * @returns The factor.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const share = { value: 90, unit: '%' } as const;
 * const confidence = { value: 95, unit: '%' } as const;
 * statistics.normalToleranceFactor({ count: 10, share, confidence, sides: 'both' }).toFixed(3); // => '2.856'
 * statistics.normalToleranceFactor({ count: 10, share, confidence, sides: 'low' }).toFixed(3); // => '2.355'
 * ```
 */
export function normalToleranceFactor(input: NormalToleranceFactorInput): number {
  const fn = 'normalToleranceFactor';
  const { count, share, confidence, sides } = fields(fn, input);
  const readings = readCount(fn, 'count', count);
  if (readings < 2 || readings > MOST) refuse(fn, 'out-of-range', ['count'], 'from 2 to 1,000,000', count);
  const part = readShare(fn, share);
  return toleranceFactorOf(
    fn,
    readings,
    part,
    readConfidence(fn, confidence),
    ENDS[readKey(fn, 'sides', sides, ENDS)],
  );
}
