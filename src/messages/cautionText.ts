import type { Caution } from '../core/caution.ts';
import { en } from './en.ts';
import { filled } from './filled.ts';

/** Stands behind everything that may hurt somebody. */
const COMES_FIRST =
  "The product's safety data sheet and instructions, local codes and licensed practice come first.";
const FROM_MEMORY = 'The source of this was quoted from memory: look it up.';

/**
 * A caution in words.
 *
 * One about what may hurt somebody ends in what comes first, and one that is quoted from memory says so.
 *
 * @param caution - A caution out of any answer of this library.
 * @returns A few English sentences with its numbers in them.
 * @throws Never.
 * @example
 * ```ts
 * import { cautionText } from 'coating-math/messages';
 *
 * cautionText({
 *   code: 'leftover-material',
 *   severity: 'note',
 *   params: { name: 'topcoat', leftover: { value: 1.25, unit: 'usgal' } },
 *   source: 'common-practice',
 * }).slice(0, 36); // => '1.25 US gal will be left of topcoat.'
 * ```
 */
export function cautionText({ code, severity, params, status }: Caution): string {
  return [
    filled(en[code], params),
    ...(status === 'memory' ? [FROM_MEMORY] : []),
    ...(severity === 'danger' ? [COMES_FIRST] : []),
  ].join(' ');
}
