/**
 * Guards for a document that comes from outside: each looks at one value and adds what is wrong with it to a list, so
 * that a form can show every problem at once. They use the readers of the formulas, hence refuse the same things.
 */
import type { Dimension } from '../core/dimension.ts';
import { InputError, type InputErrorCode, type InputIssue, type InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { isRange, readRange, type Range } from '../core/range.ts';
import { read, show } from '../core/read.ts';
import { listed, readCount, readName, readTextOr } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';

/** Looks at a value and adds to `issues` what is wrong with it. */
export type Guard = (value: unknown, path: InputPath, issues: InputIssue[]) => void;

const FUNCTION = 'planFloor';

/** One issue of the document. */
export function issue(
  code: InputErrorCode,
  path: InputPath,
  expected: string,
  received: unknown,
): InputIssue {
  return { code, function: FUNCTION, path, expected, received: show(received) };
}

/** A guard made of a reader: what it refuses is added to the list. `key` and `outer` are the path of the value. */
export function reader(look: (fn: string, key: string, value: never, outer: InputPath) => unknown): Guard {
  return (value, path, issues) => {
    refusals([], issues, () => look(FUNCTION, path.at(-1) as string, value as never, path.slice(0, -1)));
  };
}

/** A guard of the fields of an object that must fit together, made of a function that takes them. */
export function together(look: (fields: never) => unknown): Guard {
  return (value, path, issues) => {
    if (isObject(value)) refusals(path, issues, () => look(value as never));
  };
}

/** Runs what may refuse a part of the document; what it refuses is added to the list, under the path of that part. */
function refusals(path: InputPath, issues: InputIssue[], run: () => unknown): void {
  try {
    run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    for (const one of error.issues) issues.push({ ...one, function: FUNCTION, path: [...path, ...one.path] });
  }
}

/** A quantity of one kind within limits. */
export function quantity<U extends string>(dimension: Dimension<U>, limits: Limits): Guard {
  return all(
    fieldsOfQuantity,
    reader((fn, key, value: Quantity<U>, outer) => read(fn, key, value, dimension, limits, outer)),
  );
}

/** A temperature within limits. */
export function temperature(limits: Limits): Guard {
  return all(
    fieldsOfQuantity,
    reader((fn, key, value: Temperature, outer) => readTemperature(fn, key, value, limits, outer)),
  );
}

/** Nothing else stands beside the number of a quantity and its unit. */
const fieldsOfQuantity: Guard = (value, path, issues) => {
  if (isObject(value)) unknownFields(value, ['value', 'unit'], path, issues);
};

/** A quantity or a range of them. */
export function ranged<U extends string>(dimension: Dimension<U>, limits: Limits): Guard {
  const end = quantity(dimension, limits);
  const range = all(
    object({ low: end, high: end }, { likely: end }),
    reader((fn, key, value: Range<U>, outer) => readRange(fn, key, value, dimension, limits, outer)),
  );
  return (value, path, issues) => {
    (isRange(value as Range) ? range : end)(value, path, issues);
  };
}

/** A name. */
export const name = reader((fn, key, value: string, outer) => readName(fn, key, value, outer));

/** A text, which may be empty. */
export const text = reader((fn, key, value: string, outer) => readTextOr('', fn, key, value, outer));

/** A number of things, at least one. */
export const count = reader((fn, key, value: number, outer) => readCount(fn, key, value, outer));

/** Yes or no. */
export const flag: Guard = (value, path, issues) => {
  if (typeof value !== 'boolean') issues.push(issue('wrong-type', path, 'true or false', value));
};

/** One of a few words or numbers. */
export function choice(...choices: readonly (string | number)[]): Guard {
  return (value, path, issues) => {
    if (choices.includes(value as string)) return;
    const code = value === undefined ? 'missing' : 'out-of-range';
    const expected = (choices.length > 1 ? 'one of ' : '') + listed(choices.map(String));
    issues.push(issue(code, path, expected, value));
  };
}

/** A unit code of one kind. */
export function unitOf(dimension: Dimension<string>): Guard {
  return choice(...Object.keys(dimension.exact));
}

/** A list of at least `least` entries. */
export function list(entry: Guard, least: number): Guard {
  return (value, path, issues) => {
    // Array.from visits the holes of a list as well.
    const entries: unknown[] = Array.isArray(value) ? Array.from(value as unknown[]) : [];
    entries.forEach((one, i) => {
      entry(one, [...path, i], issues);
    });
    if (Array.isArray(value) && entries.length >= least) return;
    const code = value === undefined ? 'missing' : Array.isArray(value) ? 'out-of-range' : 'wrong-type';
    issues.push(issue(code, path, `a list of ${least} or more`, value));
  };
}

/** A list of things of which no two have the same name. */
export function named(entries: Guard): Guard {
  return all(entries, (value, path, issues) => {
    const names = namesIn(value);
    names.forEach((one, i) => {
      if (one === undefined || names.indexOf(one) === i) return;
      issues.push(issue('conflict', [...path, i, 'name'], 'a name of its own', one));
    });
  });
}

/** The names of a list of things, wherever they have one. */
export function namesIn(things: unknown): unknown[] {
  return Array.isArray(things)
    ? things.map((thing: unknown) => (isObject(thing) ? thing.name : undefined))
    : [];
}

/** Fields by their names. */
type Fields = Readonly<Record<string, Guard>>;

/** An object with exactly these fields; those that are optional may be left out. */
export function object(required: Fields, optional: Fields = {}): Guard {
  const guards = { ...required, ...optional };
  return (value, path, issues) => {
    if (!isObject(value)) {
      issues.push(noObject(path, value));
      return;
    }
    for (const [key, look] of Object.entries(guards)) {
      if (value[key] !== undefined || !(key in optional)) look(value[key], [...path, key], issues);
    }
    unknownFields(value, Object.keys(guards), path, issues);
  };
}

/** Where something else than an object came. */
function noObject(path: InputPath, value: unknown): InputIssue {
  return issue(value === undefined ? 'missing' : 'wrong-type', path, 'an object', value);
}

/** The fields that one kind of object must have, and those that it may. */
export type FieldsOfKind = readonly [required: Fields, optional?: Fields];

/** An object of one of several kinds, told apart by the word in one field. */
export function kindOf(field: string, kinds: Readonly<Record<string, FieldsOfKind>>): Guard {
  const word = choice(...Object.keys(kinds));
  const guards = new Map<unknown, Guard>(
    Object.entries(kinds).map(([kind, [required, optional]]) => [
      kind,
      object({ [field]: word, ...required }, optional),
    ]),
  );
  return (value, path, issues) => {
    if (!isObject(value)) {
      issues.push(noObject(path, value));
      return;
    }
    const look = guards.get(value[field]);
    if (look) look(value, path, issues);
    // What it must have is not known before its kind is.
    else word(value[field], [...path, field], issues);
  };
}

/** Several guards, one after the other. */
export function all(...guards: readonly Guard[]): Guard {
  return (value, path, issues) => {
    for (const look of guards) look(value, path, issues);
  };
}

/** Whether a value is an object with fields. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Adds every field that nothing reads. */
export function unknownFields(
  value: Readonly<Record<string, unknown>>,
  known: readonly string[],
  path: InputPath,
  issues: InputIssue[],
): void {
  for (const key of Object.keys(value)) {
    if (known.includes(key)) continue;
    issues.push(issue('unknown-field', [...path, key], `one of the fields ${known.join(', ')}`, value[key]));
  }
}
