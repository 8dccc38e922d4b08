import type { Basis, Caution, Cited } from './caution.ts';
import { echo } from './echo.ts';

/**
 * Says where a figure comes from. What went in is copied as plain data, so that no later change of an input reaches
 * the answer; what was left out stays out.
 */
export function basis(
  id: string,
  fn: string,
  formula: string,
  source: string | Cited,
  inputs: object,
  assumption?: string,
): Basis {
  return {
    id,
    function: fn,
    formula,
    inputs: echo(inputs) as Readonly<Record<string, unknown>>,
    ...(typeof source === 'string' ? { source } : source),
    ...(assumption && { assumption }),
  };
}

/** Marks what rests on a source that was not read but is quoted from memory. */
export function fromMemory<T extends Basis | Caution>(said: T): T {
  return { ...said, status: 'memory' };
}
