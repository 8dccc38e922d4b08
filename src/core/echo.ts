import type { Dimension } from './dimension.ts';
import type { InputPath } from './InputError.ts';
import type { Quantity } from './quantity.ts';
import { write } from './read.ts';

/**
 * What came in as it stands in an answer: a copy as plain data, so that no later change of an input reaches it.
 * A quantity keeps its number, its unit and its standard uncertainty and nothing else, −0 becomes 0, and what was left
 * out stays out.
 */
export function echo<T>(value: T): T {
  return copied(value) as T;
}

/**
 * Answers what came in, read as `base`, in the unit asked for: where it came in that unit, as the number that it was,
 * which a way through base units can miss by its last digit.
 */
export function echoIn<U extends V, V extends string>(
  fn: string,
  came: Quantity | undefined,
  base: number,
  dimension: Dimension<V>,
  unit: U,
  path?: InputPath,
): Quantity<U> {
  const written = write(fn, base, dimension, unit, path);
  return came?.unit === unit ? { value: came.value + 0, unit } : written;
}

function copied(value: unknown): unknown {
  if (typeof value === 'number') return value + 0;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(copied);
  const { value: number, unit } = value as Partial<Quantity>;
  if (typeof number === 'number' && typeof unit === 'string') return copiedQuantity(number, unit, value);
  // A loop, since every answer passes here: lists of pairs made most of what a check costs.
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(value)) {
    const inner = (value as Readonly<Record<string, unknown>>)[key];
    // No field of ours has that name, and to write it would give the copy a parent.
    if (inner !== undefined && key !== '__proto__') copy[key] = copied(inner);
  }
  return copy;
}

function copiedQuantity(number: number, unit: string, value: object): unknown {
  const { standardUncertainty, degreesOfFreedom } = value as Readonly<Record<string, unknown>>;
  if (standardUncertainty === undefined) return { value: number + 0, unit };
  return {
    value: number + 0,
    unit,
    standardUncertainty: copied(standardUncertainty),
    ...(degreesOfFreedom !== undefined && { degreesOfFreedom: copied(degreesOfFreedom) }),
  };
}
