import type { InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import { readNumber } from '../core/readPlain.ts';

/** The scale of pH, a number without unit. */
export const PH: Limits = { least: 0, most: 14, words: ' from 0 to 14' };

/** Reads what a pH may be off by. */
export function readPhError(fn: string): (key: string, error: number, path: InputPath) => number {
  return (key, error, path) => readNumber(fn, key, error, PH, path);
}
