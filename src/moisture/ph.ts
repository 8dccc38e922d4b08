import type { InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import { readNumber } from '../core/readPlain.ts';

/** The scale of pH, a number without unit. */
export const PH: Limits = { above: -5e-324, below: 14.0000000001, words: ' from 0 to 14' };

/** Reads what a pH may be off by. */
export function readPhError(fn: string): (key: string, error: number, path: InputPath) => number {
  return (key, error, path) => readNumber(fn, key, error, PH, path);
}
