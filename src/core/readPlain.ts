import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** Refuses what is not there, or is of another type than is due. */
export function refuseType(fn: string, path: InputPath, expected: string, got: unknown): never {
  return refuse(fn, got === undefined ? 'missing' : 'wrong-type', path, expected, got);
}

/** The list in the field `key`, with at least as many entries as asked for. */
export function readList<T>(
  fn: string,
  key: string,
  given: readonly T[] | undefined,
  least: number,
  path: InputPath = [],
): readonly T[] {
  const expected = `a list of at least ${least}`;
  if (!Array.isArray(given)) return refuseType(fn, [...path, key], expected, given);
  const list = given as readonly T[];
  return list.length >= least ? list : refuse(fn, 'out-of-range', [...path, key], expected, list.length);
}

/** The object in the field `key`. */
export function readObject<T extends object>(
  fn: string,
  key: string | number,
  given: T | undefined,
  path: InputPath = [],
): T {
  if (typeof given === 'object' && (given as T | null)) return given;
  return refuseType(fn, [...path, key], 'an object', given);
}

/** The word in the field `key`, one of those that a table has an entry for. */
export function readChoice<K extends string>(
  fn: string,
  key: string,
  given: K | undefined,
  choices: Readonly<Record<K, unknown>>,
  path: InputPath = [],
): K {
  const expected = `one of ${Object.keys(choices).join(', ')}`;
  if (typeof given !== 'string') return refuseType(fn, [...path, key], expected, given);
  return Object.hasOwn(choices, given) ? given : refuse(fn, 'out-of-range', [...path, key], expected, given);
}

/** The yes or no in the field `key`. */
export function readFlag(fn: string, key: string, given: boolean | undefined, path: InputPath = []): boolean {
  return typeof given === 'boolean' ? given : refuseType(fn, [...path, key], 'true or false', given);
}

/** The bare number in the field `key`, on a scale without unit. */
export function readNumber(
  fn: string,
  key: string | number,
  given: number | undefined,
  least: number,
  most: number,
  path: InputPath = [],
): number {
  const expected = `a number from ${least} to ${most}`;
  if (typeof given !== 'number') return refuseType(fn, [...path, key], expected, given);
  if (given >= least && given <= most) return given + 0;
  return refuse(fn, Number.isFinite(given) ? 'out-of-range' : 'not-finite', [...path, key], expected, given);
}
