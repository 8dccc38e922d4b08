import type { Caution } from '../core/caution.ts';
import { fields, refuse } from '../core/read.ts';
import { en } from './en.ts';
import { filled } from './filled.ts';

/** Stands behind everything that may hurt somebody. */
const COMES_FIRST =
  "The product's safety data sheet and instructions, local codes and licensed practice come first.";
const OF_BATCH = 'This is about the batch of {ofBatch}.';
const FROM_MEMORY = 'The source of this was quoted from memory: look it up.';

/**
 * A caution in words.
 *
 * Where a clock has two sizes of batch, it says which one it is about. One about what may hurt somebody ends in what
 * comes first, and one that is quoted from memory says so.
 *
 * @param caution - A caution out of any answer of this library.
 * @returns A few English sentences with its numbers in them.
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
 * }).slice(0, 42); // => 'Up to 1.25 US gal will be left of topcoat.'
 * ```
 */
export function cautionText(caution: Caution): string {
  const { code, severity, params, status } = fields('cautionText', caution);
  const words = Object.hasOwn(en, code) ? en[code] : refuseCode(code);
  return [
    filled('cautionText', words, params),
    ...('ofBatch' in params ? [filled('cautionText', OF_BATCH, params)] : []),
    ...(status === 'memory' ? [FROM_MEMORY] : []),
    ...(severity === 'danger' ? [COMES_FIRST] : []),
  ].join(' ');
}

/** There are too many codes to list them. */
function refuseCode(code: unknown): never {
  const why = code === undefined ? 'missing' : typeof code === 'string' ? 'out-of-range' : 'wrong-type';
  return refuse('cautionText', why, ['code'], 'the code of a caution of this library', code);
}
