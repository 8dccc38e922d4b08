/** Which way the floor is going, and what the two rules that contradict each other say of it. */
import type { Verdict } from '../core/assessment.ts';
import { TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import type { TemperatureDifference } from '../core/quantity.ts';
import { halfWidthOf, readError, type Coverage, type ReadingError } from '../statistics/readingError.ts';
import { TEMPERATURE_ERROR } from './limits.ts';

/** Which way the floor is going. */
export type Trend = 'rising' | 'steady' | 'falling' | 'undecided';

/** The trend of a change that an instrument cannot tell from none up to `blind_K`. Round-off counts as no change. */
export function trendOf(change_K: number, blind_K: number): Trend {
  if (Math.abs(change_K) <= Math.max(blind_K, 3e-10)) return blind_K > 0 ? 'undecided' : 'steady';
  return change_K > 0 ? 'rising' : 'falling';
}

/** Reads a change that the instrument cannot tell from none, in K. */
export function readBlind(
  fn: string,
  changeError: ReadingError<TemperatureDifference> | undefined,
  coverage: Coverage | undefined,
): number {
  const error = readError(
    fn,
    'changeError',
    changeError,
    coverage,
    TEMPERATURE_DIFFERENCE,
    TEMPERATURE_ERROR,
  );
  return halfWidthOf(error, coverage);
}

/** By the rule for concrete: lay on a falling or steady slab, because rising air in the pores blows bubbles. */
export const OUTGASSING: Readonly<Record<Trend, Verdict>> = {
  rising: 'fails',
  steady: 'meets',
  falling: 'meets',
  undecided: 'undecided',
};

/** By the rule for condensation: lay on a rising surface, because a falling one comes closer to the dew point. */
export const CONDENSATION: Readonly<Record<Trend, Verdict>> = {
  rising: 'meets',
  steady: 'fails',
  falling: 'fails',
  undecided: 'undecided',
};
