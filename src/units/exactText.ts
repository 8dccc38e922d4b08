import type { Exact } from '../core/dimension.ts';
import { greatestCommonDivisor } from './greatestCommonDivisor.ts';

/** An exact number as text: a whole number, or a fraction in lowest terms. */
export function exactText(exact: Exact): string {
  const [numerator, denominator] = typeof exact === 'number' ? [exact, 1] : exact;
  // The only number here that no fraction gives.
  if (numerator === Math.PI) return `π/${String(denominator)}`;
  const [a, b] = decimalFraction(numerator);
  const [c, d] = decimalFraction(denominator);
  const [top, bottom] = [a * d, b * c];
  const common = greatestCommonDivisor(top, bottom);
  return bottom === common ? String(top / common) : `${String(top / common)}/${String(bottom / common)}`;
}

/** The decimal digits of a number as a fraction. */
function decimalFraction(digits: number | string): [bigint, bigint] {
  const [mantissa = '', exponent = '0'] = String(digits).split('e');
  const [whole = '', part = ''] = mantissa.split('.');
  const places = part.length - Number(exponent);
  const value = BigInt(whole + part);
  return places > 0 ? [value, 10n ** BigInt(places)] : [value * 10n ** BigInt(-places), 1n];
}
