import { ANY } from '../core/limits.ts';
import { inside } from '../core/inside.ts';
import type { Quantity } from '../core/quantity.ts';
import { readNumber, readObject } from '../core/readPlain.ts';
import { formatQuantity } from '../units/formatQuantity.ts';

/** What stands in the braces of a sentence. */
export type Params = Readonly<Record<string, Quantity | string | number>>;

/**
 * A sentence with its parameters in the place of their names in braces; a refusal names the function `fn`. A count may
 * bring its words with it, for one and for any other number: `{spots:spot|spots}`.
 */
export function filled(fn: string, sentence: string, params: Params, digits = 3): string {
  readObject(fn, 'params', params);
  return sentence.replace(
    /\{(\w+)(?::([^|}]*)\|([^}]*))?\}/g,
    (_, name: string, ofOne?: string, ofMore?: string) => {
      const text = shown(fn, name, params[name], digits);
      return ofOne === undefined ? text : `${text} ${params[name] === 1 ? ofOne : ofMore}`;
    },
  );
}

/** A parameter as it stands in a sentence: a quantity to so many digits that count. */
function shown(
  fn: string,
  name: string,
  param: Quantity | string | number | undefined,
  digits: number,
): string {
  const path = ['params'];
  if (typeof param === 'string') return param;
  if (typeof param !== 'object') {
    const number = readNumber(fn, name, param, ANY, path);
    // Counts stand as they are; figures on a scale without unit are told apart by one digit more than quantities.
    return String(Number.isInteger(number) ? number : Number(number.toPrecision(digits + 1)));
  }
  const { value, unit } = readObject(fn, name, param, path);
  const rounded = Number(readNumber(fn, 'value', value, ANY, [...path, name]).toPrecision(digits));
  return inside(fn, [...path, name], () =>
    formatQuantity({ quantity: { value: rounded, unit: unit as 'm' }, locale: 'en-US' }),
  );
}
