/** Levels of confidence, and the factors that belong to them. */
import { SHARE } from '../core/dimensions.ts';
import type { Limits } from '../core/limits.ts';
import type { Share } from '../core/quantity.ts';
import { read } from '../core/read.ts';
import { studentPoint } from './student.ts';

/** A level of confidence that says something, and can be reached. */
const LEVEL: Limits = {
  above: 9.99999999999e-7,
  below: 0.999999999999,
  words: ' from 0.0001 % to below 100 %',
};

/** The same on one side of a limit, where a half says nothing. */
const ONE_SIDED: Limits = {
  above: 0.5000000001,
  below: 0.999999999999,
  words: ' above 50 % and below 100 %',
};

/** Reads a level of confidence. */
export function readConfidence(fn: string, confidence: Share | undefined, oneSided = false): number {
  return read(fn, 'confidence', confidence, SHARE, oneSided ? ONE_SIDED : LEVEL);
}

/** How many standard uncertainties either side hold the level of confidence. */
export function coverageFactorOf(confidence: number, freedom: number | undefined): number {
  return studentPoint((1 - confidence) / 2, freedom);
}

/** Degrees of freedom as tables have them: whole, the next below (GUM G.4.1). */
export function tableFreedom(freedom: number | undefined): number | undefined {
  // What is whole but for round-off counts as whole.
  return freedom === undefined ? undefined : Math.floor(freedom * (1 + 1e-12));
}
