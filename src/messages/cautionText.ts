import type { Caution } from '../core/caution.ts';
import { en } from './en.ts';
import { filled } from './filled.ts';

/**
 * A caution in words.
 *
 * @param caution - A caution out of any answer of this library.
 * @returns One or two English sentences with its numbers in them.
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
export function cautionText({ code, params }: Caution): string {
  return filled(en[code], params);
}
