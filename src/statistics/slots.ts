/** The uncertain quantities inside the input of a formula, wherever they stand. */
import type { InputPath } from '../core/InputError.ts';
import type { Quantity } from '../core/quantity.ts';
import { write } from '../core/read.ts';
import { isUncertainty, readUncertain, stepUnitOf, type Uncertain } from './uncertain.ts';

/** A quantity that a formula reads, which may be changed between two calls. */
interface Changeable {
  value: number;
  readonly unit: string;
}

/** One uncertain quantity of an input. */
export interface Slot {
  /** Where it stands, with points between: `tests.0.gain`. */
  readonly name: string;
  readonly path: InputPath;
  /** What the formula reads in its place. */
  readonly quantity: Changeable;
  /** Its value as it was given. */
  readonly value: number;
  /** Its standard uncertainty, in steps of its own unit. */
  readonly uncertainty: number;
  /** Degrees of freedom; nothing where there are infinitely many. */
  readonly freedom: number | undefined;
}

/** A copy of an input in which the uncertain quantities can be changed, and these quantities. */
export function slotsOf(
  fn: string,
  inputs: object,
): { readonly plain: object; readonly slots: readonly Slot[] } {
  const slots: Slot[] = [];
  const copied = (value: unknown, path: InputPath): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (isUncertainty(value)) return open(value as Uncertain, path);
    if (Array.isArray(value)) return value.map((inner, i) => copied(inner, [...path, i]));
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, copied(inner, [...path, key])]),
    );
  };
  const open = (given: Uncertain, path: InputPath): Quantity => {
    const key = path.at(-1) ?? '';
    const { dimension, step, uncertainty } = readUncertain(fn, key, given, ['inputs', ...path.slice(0, -1)]);
    const quantity: Changeable = { value: given.value, unit: given.unit };
    slots.push({
      name: path.join('.'),
      path: ['inputs', ...path],
      quantity,
      value: given.value,
      uncertainty: write(fn, uncertainty.base, step, stepUnitOf(given.unit, dimension)).value,
      freedom: uncertainty.freedom,
    });
    return quantity;
  };
  return { plain: copied(inputs, []) as object, slots };
}
