/** What several functions of this folder read in the same way. */
import type { Limits } from '../core/limits.ts';
import { readNumber } from '../core/readPlain.ts';

/** A lower explosive limit, or a part of it: neither nothing nor all. */
export const WITHIN: Limits = { above: 0, below: 0.999999999999, words: ' above 0 % and below 100 %' };

/** A day has 24 hours; room for the round-off of hours that are just that. */
export const DAY_S = 86_400.000_000_086_4;

/** Perfect mixing is 1. */
const MIXING: Limits = { above: 0.999999999999, below: 1e6, words: ' of 1 or more, 1 being perfect mixing' };

/** Reads how many times the air of perfect mixing a room takes. */
export function readMixingFactor(fn: string, factor: number | undefined): number {
  return readNumber(fn, 'mixingFactor', factor, MIXING);
}
