import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** Reads a whole number of things, at least `least`. */
export function readCount(
  fn: string,
  key: string,
  count: unknown,
  least: number,
  path: InputPath = [],
): number {
  if (typeof count === 'number' && Number.isSafeInteger(count) && count >= least) return count;
  const code = count === undefined ? 'missing' : typeof count === 'number' ? 'out-of-range' : 'wrong-type';
  return refuse(fn, code, [...path, key], `a whole number of ${least} or more`, count);
}
