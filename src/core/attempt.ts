import { InputError, type InputIssue } from './InputError.ts';
import type { Quantity } from './quantity.ts';
import { refuse } from './read.ts';

/** Either the answer or what is wrong with the input. */
export type Attempt<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly [InputIssue, ...InputIssue[]] };

/** What a function answers, a quantity in the unit that its input asks for. */
type AnswerTo<T, I> =
  T extends Quantity<infer V> ? (I extends { readonly unit: infer U extends V } ? Quantity<U> : T) : T;

/**
 * Calls a function of this library and answers its refusal as data, for forms that show problems beside the fields.
 *
 * @typeParam F - The function, so that its answer keeps its type.
 * @typeParam I - The input, so that a quantity keeps the unit asked for.
 * @param fn - Any function of one input.
 * @param input - Its input, checked or not.
 * @returns `{ ok: true, value }` or `{ ok: false, issues }`.
 * @throws An `InputError` where `fn` is no function, and whatever it throws that is not an `InputError`.
 * @example
 * ```ts
 * import { attempt } from 'coating-math/core';
 * import * as film from 'coating-math/film';
 *
 * const result = attempt(film.wetThickness, { spreadRate: { value: 0, unit: 'ft2/usgal' }, unit: 'mil' });
 * result.ok ? [] : result.issues.map((issue) => [issue.code, issue.path]); // => [['out-of-range', ['spreadRate']]]
 * ```
 */
export function attempt<F extends (input: never) => unknown, const I>(
  fn: F,
  input: I,
): Attempt<AnswerTo<ReturnType<F>, I>> {
  if (typeof fn !== 'function') refuse('attempt', 'wrong-type', ['fn'], 'a function', fn);
  try {
    return { ok: true, value: fn(input as never) as AnswerTo<ReturnType<F>, I> };
  } catch (error) {
    if (error instanceof InputError) return { ok: false, issues: error.issues };
    throw error;
  }
}
