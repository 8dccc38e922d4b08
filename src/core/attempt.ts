import { InputError, type InputIssue } from './InputError.ts';

/** Either the answer or what is wrong with the input. */
export type Attempt<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly [InputIssue, ...InputIssue[]] };

/**
 * Calls a function of this library and answers its refusal as data, for forms that show problems beside the fields.
 *
 * @typeParam F - The function, so that its answer keeps its type.
 * @param fn - Any function of one input.
 * @param input - Its input, checked or not.
 * @returns `{ ok: true, value }` or `{ ok: false, issues }`.
 * @throws Whatever `fn` throws that is not an `InputError`.
 * @example
 * ```ts
 * import { attempt } from 'coating-math/core';
 * import * as film from 'coating-math/film';
 *
 * const result = attempt(film.wetThickness, { spreadRate: { value: 0, unit: 'ft2/usgal' }, unit: 'mil' });
 * result.ok ? [] : result.issues.map((issue) => [issue.code, issue.path]); // => [['out-of-range', ['spreadRate']]]
 * ```
 */
export function attempt<F extends (input: never) => unknown>(fn: F, input: unknown): Attempt<ReturnType<F>> {
  try {
    return { ok: true, value: fn(input as never) as ReturnType<F> };
  } catch (error) {
    if (error instanceof InputError) return { ok: false, issues: error.issues };
    throw error;
  }
}
