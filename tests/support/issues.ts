import { attempt } from '../../src/core/attempt.ts';

/** Why and where a call was refused, as `code path`; empty where it answered. */
export function refusal(fn: (input: never) => unknown, input: unknown): string {
  const result = attempt(fn, input);
  return result.ok ? '' : result.issues.map(({ code, path }) => `${code} ${path.join('.')}`).join('; ');
}
