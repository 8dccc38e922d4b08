/**
 * Guards for a document that comes from outside: each looks at one value and adds what is wrong with it to a list, so
 * that a form can show every problem at once. They use the same readers as the formulas, hence refuse the same things.
 */
import type { Dimension } from '../core/dimension.ts';
import { InputError, type InputErrorCode, type InputIssue, type InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { readRange, type Ranged } from '../core/range.ts';
import { read, show } from '../core/read.ts';
import { readCount, readName } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';

/** Looks at a value and adds to `issues` what is wrong with it. */
export type Guard = (value: unknown, path: InputPath, issues: InputIssue[]) => void;

const FUNCTION = 'planFloor';

/** One issue of this document. */
export function issue(
  code: InputErrorCode,
  path: InputPath,
  expected: string,
  received: unknown,
): InputIssue {
  return { code, function: FUNCTION, path, expected, received: show(received) };
}

/** A guard made of a reader of the core: what it throws is added to the list. */
function guard(look: (key: string | number, value: unknown, outer: InputPath) => unknown): Guard {
  return (value, path, issues) => {
    try {
      look(path.at(-1) ?? '', value, path.slice(0, -1));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      issues.push(...error.issues);
    }
  };
}

/** A quantity of one kind within limits. */
export function quantity<U extends string>(dimension: Dimension<U>, limits: Limits): Guard {
  return guard((key, value, outer) => read(FUNCTION, key, value as Quantity<U>, dimension, limits, outer));
}

/** A temperature within limits. */
export function temperature(limits: Limits): Guard {
  return guard((key, value, outer) => readTemperature(FUNCTION, key, value as never, limits, outer));
}

/** A quantity or a range of them. */
export function ranged<U extends string>(dimension: Dimension<U>, limits: Limits): Guard {
  const ends: Guard = guard((key, value, outer) =>
    readRange(FUNCTION, key, value as Ranged<Quantity<U>>, dimension, limits, outer),
  );
  const known: Guard = (value, path, issues) => {
    if (typeof value === 'object' && value !== null && 'low' in value) {
      unknownFields(value, ['low', 'likely', 'high'], path, issues);
    }
  };
  return all(ends, known);
}

/** A name. */
export const name: Guard = guard((key, value, outer) => readName(FUNCTION, key, value as string, outer));

/** A number of things, at least one. */
export const count: Guard = guard((key, value, outer) => readCount(FUNCTION, key, value as number, outer));

/** One of a few words or numbers. */
export function choice(...choices: readonly (string | number)[]): Guard {
  return (value, path, issues) => {
    if (choices.includes(value as string)) return;
    const code = value === undefined ? 'missing' : 'out-of-range';
    issues.push(issue(code, path, `one of ${choices.join(', ')}`, value));
  };
}

/** A unit code of one kind. */
export function unitOf(dimension: Dimension<string>): Guard {
  return choice(...Object.keys(dimension.factor));
}

/** A list of at least `least` entries. */
export function list(entry: Guard, least: number): Guard {
  return (value, path, issues) => {
    if (!Array.isArray(value) || value.length < least) {
      const code = value === undefined ? 'missing' : Array.isArray(value) ? 'out-of-range' : 'wrong-type';
      issues.push(issue(code, path, `a list of ${least} or more`, value));
      return;
    }
    value.forEach((one, i) => {
      entry(one, [...path, i], issues);
    });
  };
}

/** An object with exactly these fields; those that are named optional may be missing. */
export function object(
  required: Readonly<Record<string, Guard>>,
  optional: Readonly<Record<string, Guard>> = {},
): Guard {
  const guards = { ...required, ...optional };
  return (value, path, issues) => {
    if (!isObject(value)) {
      issues.push(issue(value === undefined ? 'missing' : 'wrong-type', path, 'an object', value));
      return;
    }
    for (const [key, look] of Object.entries(guards)) {
      if (key in optional && value[key] === undefined) continue;
      look(value[key], [...path, key], issues);
    }
    unknownFields(value, Object.keys(guards), path, issues);
  };
}

/** An object of one of several kinds, told apart by the word in one of its fields. */
export function kindOf(field: string, kinds: Readonly<Record<string, Guard>>): Guard {
  return (value, path, issues) => {
    const kind = isObject(value) ? value[field] : undefined;
    const look = typeof kind === 'string' && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
    if (look) look(value, path, issues);
    else if (isObject(value)) choice(...Object.keys(kinds))(kind, [...path, field], issues);
    else issues.push(issue(value === undefined ? 'missing' : 'wrong-type', path, 'an object', value));
  };
}

/** Every one of several guards. */
export function all(...guards: readonly Guard[]): Guard {
  return (value, path, issues) => {
    for (const look of guards) look(value, path, issues);
  };
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function unknownFields(value: object, known: readonly string[], path: InputPath, issues: InputIssue[]): void {
  for (const key of Object.keys(value)) {
    if (!known.includes(key)) {
      issues.push(
        issue(
          'unknown-field',
          [...path, key],
          `one of the fields ${known.join(', ')}`,
          (value as never)[key],
        ),
      );
    }
  }
}
