<<<<<<< HEAD
import type { InputPath } from './InputError.ts';
import type { Limits } from './limits.ts';
import { refuse } from './read.ts';

/** A number of things, at least one. */
const COUNT: Limits = { least: 1, most: Number.MAX_SAFE_INTEGER, words: ' of 1 or more' };

/** Reads a number that has no unit: the parts of a ratio, an exponent. */
export function readNumber(
  fn: string,
  key: string | number,
  value: number | undefined,
  limits: Limits,
  path: InputPath = [],
): number {
  const no = (code: 'missing' | 'wrong-type' | 'not-finite' | 'out-of-range', received: unknown) =>
    refuse(fn, code, [...path, key], `a number${limits.words}`, received);
  if (value === undefined) return no('missing', value);
  if (typeof value !== 'number') return no('wrong-type', value);
  if (!Number.isFinite(value)) return no('not-finite', value);
  // Adding 0 turns −0 into 0.
  return value >= limits.least && value <= limits.most ? value + 0 : no('out-of-range', value);
}

/** Reads how many of something there are. */
export function readCount(
  fn: string,
  key: string | number,
  value: number | undefined,
  path: InputPath = [],
): number {
  const count = readNumber(fn, key, value, COUNT, path);
  return Number.isInteger(count)
    ? count
    : refuse(fn, 'wrong-type', [...path, key], 'a whole number of 1 or more', value);
}

/** Reads a name: text that is not empty. */
export function readName(
  fn: string,
  key: string | number,
  value: string | undefined,
  path: InputPath = [],
): string {
  if (typeof value === 'string' && value !== '') return value;
  const code = value === undefined ? 'missing' : typeof value === 'string' ? 'out-of-range' : 'wrong-type';
  return refuse(fn, code, [...path, key], 'a name', value);
}

/** Reads one of a few words. */
export function readChoice<C extends string>(
  fn: string,
  key: string | number,
  value: C | undefined,
  choices: readonly C[],
  path: InputPath = [],
): C {
  if (choices.includes(value as C)) return value as C;
  const code = value === undefined ? 'missing' : typeof value === 'string' ? 'out-of-range' : 'wrong-type';
  return refuse(fn, code, [...path, key], `one of ${choices.join(', ')}`, value);
}

/** Reads a list of objects with at least so many entries. */
export function readList<T extends object>(
  fn: string,
  key: string | number,
  list: readonly T[] | undefined,
  least: number,
  path: InputPath = [],
): readonly T[] {
  const inside = [...path, key];
  const no = (code: 'missing' | 'wrong-type' | 'out-of-range') =>
    refuse(fn, code, inside, `a list of ${String(least)} or more`, list);
  if (list === undefined) return no('missing');
  const entries: unknown = list;
  if (!Array.isArray(entries)) return no('wrong-type');
  if (list.length < least) return no('out-of-range');
  list.forEach((entry, i) => readObject(fn, i, entry, inside));
  return list;
}

/** Reads an object inside the input. */
export function readObject<T extends object>(
  fn: string,
  key: string | number,
  value: T | undefined,
  path: InputPath = [],
): T {
  if (typeof value === 'object' && (value as T | null)) return value;
  return refuse(fn, value === undefined ? 'missing' : 'wrong-type', [...path, key], 'an object', value);
=======
/** Reads what is no quantity: counts, words out of a few, names and lists. */
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
>>>>>>> e64f849ec8e26dbbf7306fa97444d99150f979ed
}
