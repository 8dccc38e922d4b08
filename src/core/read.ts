import { factorOf, type Dimension } from './dimension.ts';
import { InputError, type InputErrorCode, type InputIssue, type InputPath } from './InputError.ts';
import type { Limits } from './limits.ts';
import type { Quantity } from './quantity.ts';

/** Throws the one error of this library. */
export function refuse(
  fn: string,
  code: InputErrorCode,
  path: InputPath,
  expected: string,
  got: unknown,
): never {
  throw new InputError([{ code, function: fn, path, expected, received: show(got) }]);
}

/** Throws all that was found to be wrong, where anything was. */
export function refuseAll(issues: readonly InputIssue[]): void {
  const [first, ...rest] = issues;
  if (first) throw new InputError([first, ...rest]);
}

/** Any value in a few words, for a message; what stands `inside` a quantity is not opened any further. */
export function show(value: unknown, inside?: boolean): string {
  if (typeof value === 'string') return `'${value.slice(0, 40)}'`;
  if (Object(value) !== value) return value === undefined ? 'nothing' : String(value);
  const { value: number, unit } = value as Partial<Quantity>;
  if (!inside && (number ?? unit) !== undefined) return show(number, true) + ' ' + show(unit, true);
  return Array.isArray(value) ? 'a list' : typeof value === 'object' ? 'an object' : 'a function';
}

/** The input object itself, or a refusal where there is none. */
export function fields<I extends object>(fn: string, input: I): I {
  return typeof input === 'object' && (input as unknown)
    ? input
    : refuse(fn, 'missing', [], 'an object', input);
}

/**
 * Reads the quantity that came in the field `key` into base units.
 *
 * Refuses when nothing came, no quantity, a unit of another kind, a number that is not finite, or one outside the
 * limits. `path` leads to the field where it does not stand in the input itself.
 */
export function read<U extends string>(
  fn: string,
  key: string | number,
  quantity: Quantity<U> | undefined,
  dimension: Dimension<U>,
  limits: Limits,
  path?: InputPath,
): number {
  // A caller without types may hand over anything, hence the question marks.
  const factor = factorOf(dimension, quantity?.unit);
  if (typeof quantity?.value === 'number') {
    // Without a factor it is not a number, which lies within no limits.
    const base = quantity.value * (factor as number);
    if (base > limits.above && base < limits.below) return base;
  }
  return refuseQuantity(fn, key, quantity, dimension, limits, path);
}

/** As {@link read} for a field that may be left out: it then reads as `otherwise`, in base units. */
export function readOr<U extends string>(
  otherwise: number,
  fn: string,
  key: string | number,
  quantity: Quantity<U> | undefined,
  dimension: Dimension<U>,
  limits: Limits,
  path?: InputPath,
): number {
  return quantity === undefined ? otherwise : read(fn, key, quantity, dimension, limits, path);
}

/** As {@link read} for a field that may be left out. */
export function readOptional<U extends string>(
  fn: string,
  key: string | number,
  quantity: Quantity<U> | undefined,
  dimension: Dimension<U>,
  limits: Limits,
  path?: InputPath,
): number | undefined {
  return quantity === undefined ? undefined : read(fn, key, quantity, dimension, limits, path);
}

/** Says why a quantity was not read. */
export function refuseQuantity(
  fn: string,
  key: string | number,
  quantity: Partial<Quantity> | undefined,
  dimension: Dimension<string>,
  limits: Limits,
  outer: InputPath = [],
): never {
  const value = quantity?.value;
  const factor = factorOf(dimension, quantity?.unit);
  const shape = ' as { value, unit } in ' + unitsOf(dimension);
  const [code, asked]: [InputErrorCode, string] =
    quantity === undefined
      ? ['missing', shape]
      : typeof value !== 'number'
        ? ['not-a-quantity', shape]
        : factor === undefined
          ? ['wrong-unit', shape]
          : Number.isFinite(value * factor)
            ? ['out-of-range', '']
            : [Number.isFinite(value) ? 'too-large' : 'not-finite', ' that is finite'];
  return refuse(fn, code, [...outer, key], dimension.kind + limits.words + asked, quantity);
}

/** The unit codes of a kind of quantity, for a message. */
export function unitsOf(dimension: Dimension<string>): string {
  return Object.keys(dimension.exact).join(', ');
}

/**
 * Answers a number in base units as a quantity in the unit asked for. Refuses what no double can hold. `path` leads to
 * the field that asked for the unit.
 */
export function write<U extends V, V extends string>(
  fn: string,
  base: number,
  dimension: Dimension<V>,
  unit: U,
  path?: InputPath,
): Quantity<U> {
  const factor = factorOf(dimension, unit);
  const value = base / (factor as number);
  // Adding 0 turns −0 into 0.
  if (Number.isFinite(value)) return { value: value + 0, unit };
  return factor === undefined
    ? refuse(fn, 'wrong-unit', path ?? ['unit'], `one of ${unitsOf(dimension)}`, unit)
    : refuse(fn, 'too-large', [], 'finite', value);
}
