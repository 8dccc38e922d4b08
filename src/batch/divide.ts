import type { Decimal } from 'decimal.js';
import { counted, countedSteps, divideEqually } from '../core/decimal.ts';
import { refuse } from '../core/read.ts';

/** All batches alike, or full ones and what is left. */
export type Division = 'equal' | 'full and rest';
/** The ways to divide, for reading. */
export const DIVISIONS: readonly Division[] = ['equal', 'full and rest'];

/** A whole in batches: all but the last are `each`. */
export interface Batches {
  readonly count: number;
  readonly each: Decimal;
  readonly last: Decimal;
}

/** More batches than any floor has: a unit was mistaken. */
const MOST_BATCHES = 1e6;

/** Divides a whole into batches no larger than `largest`. They add up to the whole exactly. */
export function divide(fn: string, key: string, whole: number, largest: number, division: Division): Batches {
  const [all, most] = [counted(whole), counted(largest)];
  const [times, roughly] = [countedSteps(whole, largest), all.div(most)];
  // The smaller of the two leaves something for the last batch, and round-off does not add one.
  const count = (times.lt(roughly) ? times : roughly).ceil().toNumber();
  if (count > MOST_BATCHES) {
    refuse(fn, 'too-large', [key], `large enough for at most ${String(MOST_BATCHES)} batches`, largest);
  }
  if (division === 'equal') return { count, ...divideEqually(all, count) };
  return { count, each: most, last: all.minus(most.times(count - 1)) };
}
