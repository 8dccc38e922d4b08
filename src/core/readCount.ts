import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** Reads a bare count: a whole number of 1 or more, small enough to be exact. */
export function readCount(fn: string, key: string | number, count: unknown, path: InputPath = []): number {
  if (Number.isSafeInteger(count) && (count as number) > 0) return count as number;
  const code = count === undefined ? 'missing' : typeof count === 'number' ? 'out-of-range' : 'wrong-type';
  return refuse(fn, code, [...path, key], 'a whole number of 1 or more', count);
}
