import { dimensionOf, type SameKind, type Unit } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, refuse, unitsOf } from '../core/read.ts';
import { readScale } from '../core/readScale.ts';
import { convertDecimal, decimalOf, MOST_DIGITS } from './exactUnits.ts';

/** Input of {@link convertExact}. */
export interface ConvertExactInput<From extends Unit = Unit, To extends SameKind<From> = SameKind<From>> {
  /** What to convert. */
  readonly quantity: Quantity<From>;
  /** Unit of the answer, of the same kind. */
  readonly unit: To;
  /** How many significant digits to answer, 1 to 1000. */
  readonly digits: number;
  /**
   * What the number in `quantity` stands for: `'double'`, where left out, the binary number that the machine holds;
   * `'digits'` the decimal digits that were typed. The double of 0.1 is 0.1000000000000000055….
   */
  readonly valueAs?: 'double' | 'digits' | undefined;
}

/**
 * The same quantity in another unit to as many digits as asked for, out of exact fractions: for proofs and for other
 * programs to compare with. The everyday route is `convert` of `coating-math/units`.
 *
 * @param input - The quantity, the unit and the number of digits.
 * @returns Decimal digits without exponent, rounded half up; fewer than asked for where the result ends before.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import { convertExact } from 'coating-math/exact';
 *
 * convertExact({ quantity: { value: 1, unit: 'usgal' }, unit: 'ft3', digits: 30 });
 * // => '0.133680555555555555555555555556'
 * convertExact({ quantity: { value: 0.1, unit: 'ft' }, unit: 'm', digits: 30, valueAs: 'digits' }); // => '0.03048'
 * ```
 */
export function convertExact<From extends Unit, To extends SameKind<From>>(
  input: ConvertExactInput<From, To>,
): string {
  const fn = 'convertExact';
  const { quantity, unit, digits, valueAs = 'double' } = fields(fn, input);
  const { dimension } = readScale(fn, 'quantity', quantity);
  if (dimensionOf(unit)?.kind !== dimension.kind) {
    refuse(fn, 'wrong-unit', ['unit'], `one of ${unitsOf(dimension)}`, unit);
  }
  if (!Number.isInteger(digits) || digits < 1 || digits > MOST_DIGITS) {
    refuse(fn, 'out-of-range', ['digits'], `a whole number from 1 to ${MOST_DIGITS}`, digits);
  }
  if (!['double', 'digits'].includes(valueAs)) {
    refuse(fn, 'out-of-range', ['valueAs'], "'double' or 'digits'", valueAs);
  }
  return convertDecimal(decimalOf(quantity.value, valueAs), quantity.unit, unit, digits);
}
