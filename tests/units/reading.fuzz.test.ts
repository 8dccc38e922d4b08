/** Reading never fails but by refusing, never hangs, and gives back what was written. `npm run fuzz` runs it long. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import type { RoundingDirection } from '../../src/core/fieldValue.ts';
import { convert } from '../../src/units/convert.ts';
import { formatQuantity } from '../../src/units/formatQuantity.ts';
import { parseQuantity } from '../../src/units/parseQuantity.ts';
import { kinds } from '../support/definitions.ts';

const { MODE } = (import.meta as unknown as { env: { MODE: string } }).env;
const long = MODE === 'fuzz';
const runs = { numRuns: long ? 100_000 : 3_000, ...(long ? {} : { seed: 17 }) };

const locales = fc.constantFrom(
  'en-US',
  'de-DE',
  'fr-FR',
  'de-CH',
  'en-IN',
  'es-ES',
  'ar-EG',
  'fa-IR',
  'sv-SE',
  'hi-IN',
);
const units = fc.constantFrom(...kinds.flatMap((kind) => kind.units));

/** Text out of what quantities are made of, so that many come close to being one. */
const pieces = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        ...Array.from('0123456789.,\' "-/+½⅞²³°%µ×٣٫\u202f\u200e′″'),
        ' 1/2',
        'and',
        'per',
        'sq',
        '24 h',
        '1000',
      ),
      fc.constantFrom(
        'ft',
        'in',
        'gal',
        'US',
        'oz',
        'fl',
        'mil',
        'm²',
        'h',
        'min',
        'lb',
        'C',
        'deg',
        'Pa',
        '/',
        '//',
      ),
      units,
      fc.string({ unit: 'grapheme', maxLength: 3 }),
    ),
    { maxLength: 14 },
  )
  .map((parts) => parts.join(''));
const texts = fc.oneof(
  { weight: 6, arbitrary: pieces },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 220 }) },
  { weight: 1, arbitrary: fc.tuple(pieces, fc.nat(60)).map(([piece, n]) => piece.repeat(n).slice(0, 200)) },
);

it('any text is answered or refused', () => {
  fc.assert(
    fc.property(texts, locales, fc.option(units, { nil: undefined }), (text, locale, statedUnit) => {
      // Whatever is thrown and is no InputError comes through.
      const result = attempt(parseQuantity, { text, locale, statedUnit });
      if (result.ok) {
        expect(Number.isFinite(result.value.value) && !Object.is(result.value.value, -0)).toBe(true);
        convert({ quantity: result.value, unit: result.value.unit });
      } else {
        expect(result.issues[0]).toMatchObject({ function: 'parseQuantity', path: ['text'] });
      }
    }),
    runs,
  );
}, 600_000);

it('the worst of texts take no longer than others', () => {
  for (const sign of ['1', '1,', "1'", '1 ', '1/', 'ft', '°/', '-', ' and', '1 ft ', 'sq', '1000', '½']) {
    for (const end of ['', '!', ' ft', '/x']) {
      attempt(parseQuantity, { text: sign.repeat(200 / sign.length - 1) + end, locale: 'en-US' });
    }
  }
});

/** Every size that is written for people; colder than this, one digit may be rounded below absolute zero. */
const values = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -6, max: 9 }), fc.boolean())
  .map(([part, power, below]) => (below ? -1 : 1) * part * 10 ** power);
const isCold = (value: number, unit: string) => ['degC', 'degF', 'K'].includes(unit) && value < -200;

/** Every double. */
const doubles = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constantFrom(5e-324, 1e-200, 1.7e308),
);

it('what is written in full is read back as it was', () => {
  fc.assert(
    fc.property(fc.oneof(values, doubles), units, locales, (value, unit, locale) => {
      const quantity = { value, unit: unit as 'm' };
      if (isCold(value, unit) || (unit === 'K' && value < 0)) return;
      expect(parseQuantity({ text: formatQuantity({ quantity, locale }), locale })).toEqual({
        ...quantity,
        value: value + 0,
      });
    }),
    runs,
  );
}, 600_000);

const directions = fc.constantFrom<RoundingDirection>('up', 'down', 'nearest');

/** Whether a rounded value lies within a step of the one it came from, on the right side; 12 digits count. */
function isRounded(rounded: number, value: number, step: number, direction: RoundingDirection): boolean {
  const slack = 1e-11 * Math.abs(value) + 1e-9 * step;
  const off = rounded - value;
  if (direction === 'up') return off >= -slack && off <= step + slack;
  if (direction === 'down') return off <= slack && off >= -step - slack;
  return Math.abs(off) <= step / 2 + slack;
}

it('what is written with decimals is read back to the last of them', () => {
  fc.assert(
    fc.property(values, units, locales, directions, fc.nat(4), (value, unit, locale, direction, decimals) => {
      if (isCold(value, unit) || (unit === 'K' && value < 1)) return;
      const quantity = { value, unit: unit as 'm' };
      const text = formatQuantity({ quantity, locale, direction, decimals });
      const back = parseQuantity({ text, locale });
      expect(back.unit).toBe(unit);
      expect(isRounded(back.value, value, 10 ** -decimals, direction), text).toBe(true);
    }),
    runs,
  );
}, 600_000);

it('what is written with significant digits is read back to the last of them', () => {
  fc.assert(
    fc.property(
      values,
      units,
      locales,
      directions,
      fc.integer({ min: 1, max: 9 }),
      (value, unit, locale, direction, n) => {
        if (isCold(value, unit) || (unit === 'K' && value < 1)) return;
        const quantity = { value, unit: unit as 'm' };
        const text = formatQuantity({ quantity, locale, direction, significantDigits: n });
        const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - n);
        expect(isRounded(parseQuantity({ text, locale }).value, value, step, direction), text).toBe(true);
      },
    ),
    runs,
  );
}, 600_000);

it('what is written in marks, feet and inches is read back to the mark', () => {
  const marks = fc.constantFrom(1, 2, 3, 4, 8, 10, 16, 32, 64);
  const lengths = fc.constantFrom<'in' | 'ft' | 'm' | 'mm'>('in', 'ft', 'm', 'mm');
  fc.assert(
    fc.property(
      values,
      lengths,
      locales,
      directions,
      marks,
      (value, unit, locale, direction, denominator) => {
        const quantity = { value, unit };
        const way = { quantity, locale, direction, denominator };
        const inches = convert({ quantity, unit: 'in' }).value;
        for (const text of [
          formatQuantity({ ...way, unit: 'in' }),
          formatQuantity({ ...way, feetAndInches: true }),
        ]) {
          const back = parseQuantity({ text, locale });
          expect(back.unit).toBe('in');
          expect(isRounded(back.value, inches, 1 / denominator, direction), text).toBe(true);
        }
      },
    ),
    runs,
  );
}, 600_000);
