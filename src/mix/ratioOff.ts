import { judge, worstBy, type Verdict } from '../core/assessment.ts';
import type { BaseError, Coverage } from '../statistics/readingError.ts';

/** What was used of a part, in base units of volume or of mass. */
export interface BaseUse {
  readonly amount: number;
  /** What the reading may be off by. */
  readonly error: BaseError;
  /** Parts of the whole. */
  readonly weight: number;
}

/** A part against the first, as a share. */
export interface RatioOff {
  readonly off: number;
  /** How far that may be wrong by the readings. */
  readonly uncertainty: number;
  /** What each reading moves it by, and what that reading may be off by. */
  readonly errors: readonly (readonly [sensitivity: number, error: BaseError])[];
}

/**
 * How far a part is off against the first, and what the readings are worth: propagated, or both wrong against each other.
 * A bound of the first must be below its amount.
 */
export function ratioOff(part: BaseUse, first: BaseUse, coverage: Coverage | undefined): RatioOff {
  const relative = part.amount / part.weight / (first.amount / first.weight);
  const high = (relative * (1 + part.error.bound / part.amount)) / (1 - first.error.bound / first.amount);
  const errors = [
    [relative / part.amount, part.error],
    [relative / first.amount, first.error],
  ] as const;
  return { off: relative - 1, uncertainty: coverage?.expanded(...errors) ?? high - relative, errors };
}

/** A ratio off, judged. */
interface JudgedRatio extends Pick<RatioOff, 'off'> {
  readonly verdict: Verdict;
}

/** Judges a part by how far it may be off. */
export function judgeOff({ off, uncertainty }: RatioOff, tolerance: number): Verdict {
  return judge(tolerance - Math.abs(off), uncertainty, 1);
}

/**
 * The part, or the batch, that decides: the one with the worst verdict, and of those the one furthest off. A part nearer
 * to its ratio may be read so badly that it is the one in doubt.
 */
export function decisive<F extends JudgedRatio>(findings: readonly F[]): F {
  return worstBy(findings, ({ off }) => -Math.abs(off)) as F;
}
