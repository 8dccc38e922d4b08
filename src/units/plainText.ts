/** Signs that are typed or pasted in many forms, and the one form in which they are read. */
const FORMS: readonly (readonly [RegExp, string])[] = [
  // Marks of direction and width that leave no trace on paper.
  [/[\u061c\u200b-\u200f\u2066-\u2069\ufeff]/g, ''],
  [/[º˚]/g, '°'],
  [/[″“”„ʺ]|''|′′/g, '"'],
  [/[′’‘´`ʹʼ]/g, "'"],
  [/[−–—‒]/g, '-'],
];

/** Raised over lowered digits, or one sign of both. */
const FRACTION = /[¼½¾⅐-⅞]|[⁰¹²³⁴-⁹]+[⁄∕/][₀-₉]+/g;
/** Raised or lowered digits that are no fraction: never the next digits of the number before them. */
const POWER = /[⁰¹²³⁴-⁹₀-₉]+/g;

/** A text with fractions, powers, quotes, dashes and spaces in their plain form: `6½″` becomes `6 1/2"`. */
export function plainText(text: string): string {
  const apart = text
    .replace(FRACTION, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .replace(POWER, (power) => `^${power}`);
  const plain = FORMS.reduce((all, [form, sign]) => all.replace(form, sign), apart).normalize('NFKC');
  return plain.replace(/[⁄∕]/g, '/').replace(/\s+/g, ' ').trim();
}
