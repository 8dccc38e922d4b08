import type { Basis } from './caution.ts';
import type { Quantity } from './quantity.ts';

/**
 * Says where a figure comes from. What went in is copied as plain data, so that no later change of an input reaches
 * the answer; what was left out stays out.
 */
export function basis(
  id: string,
  fn: string,
  formula: string,
  source: string,
  inputs: Readonly<Record<string, unknown>>,
  assumption?: string,
): Basis {
  return { id, function: fn, formula, inputs: copied(inputs), source, ...(assumption && { assumption }) };
}

/** A copy of plain data: a quantity keeps its number and its unit and nothing else, −0 becomes 0. */
export function copied<T>(value: T): T;
export function copied(value: unknown): unknown {
  if (typeof value === 'number') return value + 0;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return (value as unknown[]).map((inner) => copied(inner));
  const { value: number, unit } = value as Partial<Quantity>;
  if (typeof number === 'number' && typeof unit === 'string') return { value: number + 0, unit };
  const present = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return Object.fromEntries(present.map(([key, inner]) => [key, copied(inner)]));
}
