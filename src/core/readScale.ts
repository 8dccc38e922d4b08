import type { Dimension } from './dimension.ts';
import { scaleOf, UNKNOWN, type UnitScale } from './dimensionOf.ts';
import type { InputPath } from './InputError.ts';
import { ABSOLUTE, ANY } from './limits.ts';
import type { Quantity } from './quantity.ts';
import { refuseQuantity } from './read.ts';

/**
 * The scale on which the quantity in the field `key` stands, of one kind or of whatever kind its unit says. What base
 * units have no room for may still be a number in another unit, so it is not refused here.
 */
export function readScale(
  fn: string,
  key: string | number,
  quantity: Quantity | undefined,
  due?: Dimension<string>,
  path?: InputPath,
): UnitScale {
  // A caller without types may hand over anything, hence the question marks.
  const value = quantity?.value as number;
  const scale = scaleOf(quantity?.unit);
  const kind = due ?? scale?.dimension ?? UNKNOWN;
  const isOne = scale?.dimension === kind && Number.isFinite(value);
  if (isOne && (value - scale.zero) * scale.factor >= scale.least) return scale;
  return refuseQuantity(fn, key, quantity, kind, isOne ? ABSOLUTE : ANY, path);
}
