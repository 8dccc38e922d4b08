import type { Basis } from './caution.ts';
import { echo } from './echo.ts';

/**
 * Says where a figure comes from. What went in is copied as plain data, so that no later change of an input reaches
 * the answer; what was left out stays out.
 */
export function basis(
  id: string,
  fn: string,
  formula: string,
  source: string,
  inputs: object,
  assumption?: string,
): Basis {
  return {
    id,
    function: fn,
    formula,
    inputs: echo(inputs) as Readonly<Record<string, unknown>>,
    source,
    ...(assumption && { assumption }),
  };
}
