import { greatestCommonDivisor } from './greatestCommonDivisor.ts';
import type { NumberStyle } from './numberStyle.ts';

/** A whole number of steps of 1/`denominator` as a whole and a fraction in lowest terms: `6 3/8`. */
export function mixedNumberText(steps: number, denominator: number, style: NumberStyle): string {
  const { locale, minus } = style;
  const write = (whole: number) => new Intl.NumberFormat(locale).format(whole);
  const size = Math.abs(steps);
  const whole = Math.floor(size / denominator);
  const over = size % denominator;
  const common = Number(greatestCommonDivisor(BigInt(denominator), BigInt(over)));
  const fraction = over === 0 ? '' : `${write(over / common)}/${write(denominator / common)}`;
  const parts = [whole > 0 || !fraction ? write(whole) : '', fraction].filter(Boolean);
  return (steps < 0 ? minus : '') + parts.join(' ');
}

/** Inches in steps of 1/`denominator` as a tape shows them: `12' 6 3/8"`; inches alone below a foot. */
export function feetAndInchesText(steps: number, denominator: number, style: NumberStyle): string {
  const size = Math.abs(steps);
  const perFoot = 12 * denominator;
  const feet = size < perFoot ? '' : `${mixedNumberText(Math.floor(size / perFoot), 1, style)}' `;
  return `${steps < 0 ? style.minus : ''}${feet}${mixedNumberText(size % perFoot, denominator, style)}"`;
}
