import { factorOf, type Dimension } from './dimension.ts';
import type { InputPath } from './InputError.ts';
import type { Limits } from './limits.ts';
import { refuse, unitsOf } from './read.ts';

/** A number of things: from 1 to where doubles stop holding every whole number, 2^53. */
const COUNT: Limits = { above: 0.999999999999, below: 9_007_199_254_740_992, words: ' of 1 or more' };

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
  return value > limits.above && value < limits.below ? value + 0 : no('out-of-range', value);
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

/** Reads the names in a list; two of one name could not be told apart. */
export function readNames(
  fn: string,
  list: readonly { readonly name: string }[],
  path: InputPath,
): readonly string[] {
  const seen = new Set<string>();
  return list.map((entry, i) => {
    const name = readName(fn, 'name', entry.name, [...path, i]);
    if (seen.has(name)) refuse(fn, 'conflict', [...path, i, 'name'], 'a name of its own', name);
    seen.add(name);
    return name;
  });
}

/** Reads a text that may be left out: it then reads as `otherwise`. */
export function readTextOr(
  otherwise: string,
  fn: string,
  key: string | number,
  text: string | undefined,
  path: InputPath = [],
): string {
  if (text === undefined || typeof text === 'string') return text ?? otherwise;
  return refuse(fn, 'wrong-type', [...path, key], 'a text', text);
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
  return refuse(fn, code, [...path, key], `one of ${listed(choices)}`, value);
}

/** Words to choose from, for a message; in quotes where one of them has a comma of its own. */
export function listed(choices: readonly string[]): string {
  const quote = choices.join('').includes(',') ? "'" : '';
  return quote + choices.join(quote + ', ' + quote) + quote;
}

/** Reads a word that a table has an entry for. */
export function readKey<K extends string>(
  fn: string,
  key: string | number,
  value: K | undefined,
  table: Readonly<Record<K, unknown>>,
  path?: InputPath,
): K {
  return readChoice(fn, key, value, Object.keys(table) as K[], path);
}

/** Reads a yes or no. */
export function readFlag(
  fn: string,
  key: string | number,
  value: boolean | undefined,
  path: InputPath = [],
): boolean {
  if (typeof value === 'boolean') return value;
  const code = (value as unknown) === undefined ? 'missing' : 'wrong-type';
  return refuse(fn, code, [...path, key], 'true or false', value);
}

/** Reads a list with at least so many entries; what is in it is for the caller to read. */
export function readList<T>(
  fn: string,
  key: string | number,
  list: readonly T[] | undefined,
  least: number,
  path: InputPath = [],
): readonly T[] {
  const expected = `a list of ${least} or more`;
  if (!Array.isArray(list)) {
    return refuse(fn, list === undefined ? 'missing' : 'wrong-type', [...path, key], expected, list);
  }
  // A copy without holes: what is missing in a list stands there as nothing, to be refused like it.
  const entries: readonly T[] = Array.from(list as readonly T[]);
  return entries.length < least ? refuse(fn, 'out-of-range', [...path, key], expected, list) : entries;
}

/** Reads a list of objects with at least so many entries. */
export function readObjects<T extends object>(
  fn: string,
  key: string | number,
  list: readonly T[] | undefined,
  least: number,
  path: InputPath = [],
): readonly T[] {
  const entries = readList(fn, key, list, least, path);
  entries.forEach((entry, i) => readObject(fn, i, entry, [...path, key]));
  return entries;
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
    refuse(fn, 'wrong-unit', [...path, key], `one of ${unitsOf(dimension)}`, unit)
  );
}
