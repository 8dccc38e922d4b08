import type { NumberStyle } from './numberStyle.ts';
import { plainText } from './plainText.ts';

/** A number found in a text. */
export interface FoundNumber {
  readonly value: number;
  /** Where in the text it ends. */
  readonly end: number;
}

/** Text with the digits of a language as 0 to 9. */
export function plainDigits(text: string, { digits }: NumberStyle): string {
  if (digits[0] === '0') return text;
  return Array.from(text, (sign) => (digits.includes(sign) ? String(digits.indexOf(sign)) : sign)).join('');
}

/**
 * The number without sign that starts at a place in a text: `1,234.5`, `3/8`, `6 1/2` or `6-1/2`. Nothing where none
 * starts there, or where it is not written as in that language.
 */
export function numberAt(text: string, start: number, style: NumberStyle): FoundNumber | undefined {
  const { whole, end, decimals } = decimalAt(text, start, style);
  if (whole === undefined) return undefined;
  if (decimals) return { value: Number(`${whole}.${decimals}`), end };

  const plain = Number(whole);
  const mixed = matchAt(/(?:-| (?:and |y )?)(\d{1,6}) ?\/ ?(\d{1,6})(?!\d)/y, text, end);
  if (mixed) {
    const [top, bottom] = [Number(mixed[1]), Number(mixed[2])];
    return top < bottom ? { value: plain + top / bottom, end: end + mixed[0].length } : undefined;
  }
  const over = matchAt(/ ?\/ ?(\d{1,6})(?!\d)/y, text, end);
  if (!over) return { value: plain, end };
  return Number(over[1]) > 0 ? { value: plain / Number(over[1]), end: end + over[0].length } : undefined;
}

interface FoundDecimal {
  /** Its digits before the decimal sign, groups taken away; nothing where they are not as the language has them. */
  readonly whole?: string;
  readonly decimals?: string;
  readonly end: number;
}

/** The decimal number at a place in a text. */
function decimalAt(text: string, start: number, style: NumberStyle): FoundDecimal {
  const decimal = literally(style.decimal);
  const group = literally(style.group);
  // A space or an apostrophe may also mean something else, so it groups only three digits.
  const next = / |'/.test(style.group) ? '\\d{3}(?![\\d/])' : '\\d+';
  const grouped = group && `(?:${group}${next})*`;
  const found = matchAt(
    new RegExp(`(\\d+${grouped})(?:${decimal}(\\d*))?|${decimal}(\\d+)`, 'y'),
    text,
    start,
  );
  if (!found) return { end: start };
  const [all, before = '0', after, alone] = found;
  const end = start + all.length;
  const whole = before.replaceAll(style.group, '');
  const asWritten =
    whole === before || plainDigits(plainText(style.grouped(BigInt(whole))), style) === before;
  return { end, ...(asWritten && { whole, decimals: alone ?? after ?? '' }) };
}

function matchAt(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}

/** A sign as it stands in a pattern. */
function literally(sign: string): string {
  return sign.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');
}
