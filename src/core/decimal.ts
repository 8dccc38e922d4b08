import { Decimal } from 'decimal.js';

/** A private copy, so that no setting of ours reaches the caller's decimals, nor theirs ours. */
const Exact = /* @__PURE__ */ privateDecimal();

function privateDecimal(): typeof Decimal {
  return Decimal.clone({ precision: 40, rounding: Decimal.ROUND_HALF_UP });
}

/** Significant digits that a double out of a formula is worth. */
const COUNTED_DIGITS = 12;

/**
 * A figure ready to be counted, in decimals. A double out of a formula carries round-off in its last digits, which
 * would buy one pack too many.
 */
export function counted(value: number): Decimal {
  return new Exact(value.toPrecision(COUNTED_DIGITS));
}

/**
 * How many times a step goes into a figure, to the digits that are worth it. Both are taken as they came: cut to
 * {@link counted} digits first, three steps of 1/3 would be a little more or less than a whole number of steps.
 */
export function countedSteps(figure: number, step: number): Decimal {
  return new Exact(figure).div(step).toSignificantDigits(COUNTED_DIGITS);
}

/** Digits to which shares are worked out: two more than a counted figure has, and all of them fit into a double. */
const SHARE_DIGITS = 14;

/** The finest step at which a figure of this size still has {@link SHARE_DIGITS} digits. */
function stepOf(figure: Decimal): Decimal {
  return new Exact(10).pow(figure.e + 1 - SHARE_DIGITS);
}

/** A figure to {@link SHARE_DIGITS} digits. */
export function toShare(figure: Decimal): Decimal {
  return figure.toSignificantDigits(SHARE_DIGITS);
}

/** Shares a whole out by weight. The last one takes what is left, so that they add up to the whole exactly. */
export function shareOut(whole: Decimal, weights: readonly Decimal[]): Decimal[] {
  const sum = weights.reduce((a, b) => a.plus(b));
  const step = stepOf(whole);
  const shares = weights.slice(1).map((_, i) => {
    const share = whole.times(weights[i] as Decimal).div(sum);
    return share.div(step).round().times(step);
  });
  return [...shares, shares.reduce((rest, share) => rest.minus(share), whole)];
}

/**
 * Divides a whole into a number of equal shares, each but the last rounded up in its last digit. The last one takes
 * what is left, so that they add up to the whole exactly.
 */
export function divideEqually(whole: Decimal, count: number): { each: Decimal; last: Decimal } {
  const each = whole.div(count).toSignificantDigits(SHARE_DIGITS, Decimal.ROUND_UP);
  return { each, last: whole.minus(each.times(count - 1)) };
}
