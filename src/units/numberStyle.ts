import { refuse } from '../core/read.ts';
import { plainText } from './plainText.ts';

/** How one language writes numbers. */
export interface NumberStyle {
  readonly locale: string;
  /** Sign between whole and fraction. */
  readonly decimal: string;
  /** Sign between thousands; a plain space where the language has a space of any kind. */
  readonly group: string;
  readonly minus: string;
  /** The ten digits, from nought. */
  readonly digits: readonly string[];
  /** A whole number with every group marked. */
  readonly grouped: (whole: bigint) => string;
}

/** Asking for a style takes long and an app seldom changes its language, so the last one is remembered. */
let last: NumberStyle | undefined;

/** How the language in the field `locale` writes numbers. */
export function numberStyle(fn: string, locale: string): NumberStyle {
  if (last?.locale !== locale) last = ask(fn, locale);
  return last;
}

function ask(fn: string, locale: unknown): NumberStyle {
  const expected = "a language tag such as 'en-US'";
  if (typeof locale !== 'string' || locale === '') {
    return refuse(fn, locale === undefined ? 'missing' : 'wrong-type', ['locale'], expected, locale);
  }
  try {
    const marks = new Intl.NumberFormat(locale, { useGrouping: 'always' });
    const parts = marks.formatToParts(-1234567.5);
    const sign = (type: string) => parts.find((part) => part.type === type)?.value ?? '';
    const plain = new Intl.NumberFormat(locale, { useGrouping: false });
    const group = sign('group');
    return {
      locale,
      decimal: sign('decimal'),
      group: plainText(group) || (group && ' '),
      minus: sign('minusSign'),
      digits: Array.from({ length: 10 }, (_, digit) => plain.format(digit)),
      grouped: (whole) => marks.format(whole),
    };
  } catch {
    return refuse(fn, 'wrong-type', ['locale'], expected, locale);
  }
}
