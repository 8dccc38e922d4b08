import { Decimal } from 'decimal.js';

/** A private copy, so that no setting of ours reaches the caller's decimals, nor theirs ours. */
const Exact = Decimal.clone({ precision: 40, rounding: Decimal.ROUND_HALF_UP });

/**
 * A figure ready to be counted, in decimals. A double out of a formula carries round-off in its last digits, which
 * would buy one pack too many; 12 significant digits are what it is worth.
 */
export function counted(value: number): Decimal {
  return new Exact(value.toPrecision(12));
}
