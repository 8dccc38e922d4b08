import type { Quantity } from '../core/quantity.ts';
import { formatQuantity } from '../units/formatQuantity.ts';

/** A sentence with its parameters in the place of their names in braces. */
export function filled(
  sentence: string,
  params: Readonly<Record<string, Quantity | string | number>>,
  digits = 3,
): string {
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => shown(params[name], digits));
}

/** A parameter as it stands in a sentence: a quantity to so many digits that count. */
function shown(param: Quantity | string | number | undefined, digits: number): string {
  if (typeof param !== 'object') return String(param);
  const quantity = { value: Number(param.value.toPrecision(digits)), unit: param.unit as 'm' };
  return formatQuantity({ quantity, locale: 'en-US' });
}
