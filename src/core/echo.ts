import type { Quantity } from './quantity.ts';

/**
 * What came in as it stands in an answer: a copy as plain data, so that no later change of an input reaches it.
 * A quantity keeps its number, its unit and its standard uncertainty and nothing else, −0 becomes 0, and what was left
 * out stays out.
 */
export function echo<T>(value: T): T {
  return copied(value) as T;
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
