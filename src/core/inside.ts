import { InputError, type InputIssue, type InputPath } from './InputError.ts';

/**
 * Runs one function of the library on a part of the input of another; a refusal then names the outer function and
 * the whole path.
 */
export function inside<T>(fn: string, path: InputPath, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const [first, ...rest] = error.issues;
    const moved = (issue: InputIssue) => ({ ...issue, function: fn, path: [...path, ...issue.path] });
    throw new InputError([moved(first), ...rest.map(moved)]);
  }
}
