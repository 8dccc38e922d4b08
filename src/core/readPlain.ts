/** Reads what is no quantity: counts, words out of a few, names, lists and unit codes. */
import { factorOf, type Dimension } from './dimension.ts';
import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** Refuses what came in a field: as missing where nothing came, as of the wrong kind otherwise. */
function refusePlain(fn: string, path: InputPath, expected: string, got: unknown): never {
  return refuse(fn, got === undefined ? 'missing' : 'wrong-type', path, expected, got);
}

/** Reads a bare count: a whole number of 1 or more, small enough to be exact. */
export function readCount(fn: string, key: string | number, count: unknown, path: InputPath = []): number {
  if (Number.isSafeInteger(count) && (count as number) > 0) return count as number;
  const expected = 'a whole number of 1 or more';
  return typeof count === 'number'
    ? refuse(fn, 'out-of-range', [...path, key], expected, count)
    : refusePlain(fn, [...path, key], expected, count);
}

/** Reads one of a few words. */
export function readChoice<T extends string>(
  fn: string,
  key: string | number,
  word: T | undefined,
  choices: readonly T[],
  path: InputPath = [],
): T {
  return word !== undefined && choices.includes(word)
    ? word
    : refusePlain(fn, [...path, key], `one of ${choices.join(', ')}`, word);
}

/** Reads a text that may be left out: it then reads as `otherwise`. */
export function readTextOr(
  otherwise: string,
  fn: string,
  key: string | number,
  text: string | undefined,
  path: InputPath = [],
): string {
  if (text === undefined) return otherwise;
  return typeof text === 'string' ? text : refusePlain(fn, [...path, key], 'a text', text);
}

/** Reads a list; what is in it is for the caller to read. */
export function readList<T>(
  fn: string,
  key: string | number,
  list: readonly T[] | undefined,
  path: InputPath = [],
): readonly T[] {
  return Array.isArray(list) ? (list as readonly T[]) : refusePlain(fn, [...path, key], 'a list', list);
}

/** Reads a unit code that stands in a field of its own; answers one of it in base units. */
export function readUnit<U extends string>(
  fn: string,
  key: string | number,
  unit: U | undefined,
  dimension: Dimension<U>,
  path: InputPath = [],
): number {
  return (
    factorOf(dimension, unit) ??
    refuse(fn, 'wrong-unit', [...path, key], `one of ${Object.keys(dimension.factor).join(', ')}`, unit)
  );
}
