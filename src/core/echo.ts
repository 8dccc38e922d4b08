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
  const { standardUncertainty, degreesOfFreedom } = value as Readonly<Record<string, unknown>>;
  if (typeof number === 'number' && typeof unit === 'string') {
    const plain = { value: number + 0, unit };
    if (standardUncertainty === undefined) return plain;
    return {
      ...plain,
      standardUncertainty: copied(standardUncertainty),
      ...(copied({ degreesOfFreedom }) as object),
    };
  }
  const present = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return Object.fromEntries(present.map(([key, inner]) => [key, copied(inner)]));
}
