import type { Caution } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { en } from './en.ts';
import { filled } from './filled.ts';

/**
 * A caution in words.
 *
 * @param caution - A caution out of any answer of this library.
 * @returns One or two English sentences with its numbers in them.
 * @throws An `InputError` that names the field: an unknown code, or a number or name that its words need.
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
export function cautionText(caution: Caution): string {
  const { code, params } = fields('cautionText', caution);
  return filled('cautionText', en[readKey('cautionText', 'code', code, en)], params);
}
