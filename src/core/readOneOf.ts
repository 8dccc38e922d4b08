import { dimension, factorOf, type Dimension } from './dimension.ts';
import type { InputPath } from './InputError.ts';
import { POSITIVE, type Limits } from './limits.ts';
import type { Quantity } from './quantity.ts';
import { read } from './read.ts';
import type { AnyReading } from './readAny.ts';

/** Reads a quantity that may be of one kind or of another, such as an amount by volume or by mass. */
export function readOneOf(
  fn: string,
  key: string | number,
  quantity: Quantity | undefined,
  kinds: readonly Dimension<never>[],
  limits: Limits = POSITIVE,
  path?: InputPath,
): AnyReading {
  const given = quantity as Partial<Quantity> | null | undefined;
  const own = kinds.find((kind) => factorOf(kind, given?.unit) !== undefined);
  const dimension = (own as Dimension<string> | undefined) ?? allOf(kinds);
  return { base: read(fn, key, quantity, dimension, limits, path), dimension };
}

/** Stands in for all kinds where a unit belongs to none, so that the refusal names them all. */
function allOf(kinds: readonly Dimension<never>[]): Dimension<string> {
  const exact = Object.assign({}, ...kinds.map((kind) => kind.exact)) as Dimension<string>['exact'];
  const kind = kinds.map((one) => one.kind).join(' or ');
  return dimension(kind, exact);
}
