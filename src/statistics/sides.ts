/** What a tolerance interval is bounded by. */
import { SHARE } from '../core/dimensions.ts';
import type { Limits } from '../core/limits.ts';
import type { Share } from '../core/quantity.ts';
import { read } from '../core/read.ts';

/** Both ends, or only one of them. */
export type ToleranceSides = 'both' | 'low' | 'high';

/** Whether an interval has one end or two. */
export const ENDS: Readonly<Record<ToleranceSides, 'both' | 'one'>> = {
  both: 'both',
  low: 'one',
  high: 'one',
};

/** More than half of all, less than all. */
const MOST_OF_ALL: Limits = {
  above: 0.5000000001,
  below: 0.9999999999,
  words: ' above 50 % and below 100 %',
};

/** Reads the share of all places that an interval is to hold. */
export function readShare(fn: string, share: Share | undefined): number {
  return read(fn, 'share', share, SHARE, MOST_OF_ALL);
}
