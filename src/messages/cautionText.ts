import type { Caution } from '../core/caution.ts';
import type { Quantity } from '../core/quantity.ts';
import { formatQuantity } from '../units/formatQuantity.ts';
import { en } from './en.ts';

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
export function cautionText(caution: Caution): string {
  return en[caution.code].replace(/\{(\w+)\}/g, (_, name: string) => shown(caution.params[name]));
}

/** A parameter as it stands in a sentence: a quantity to three digits that count. */
function shown(param: Quantity | string | number | undefined): string {
  if (typeof param !== 'object') return String(param);
  const quantity = { value: Number(param.value.toPrecision(3)), unit: param.unit as 'm' };
  return formatQuantity({ quantity, locale: 'en-US' });
}
