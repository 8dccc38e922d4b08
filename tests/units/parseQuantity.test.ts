import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { describeUnit } from '../../src/units/describeUnit.ts';
import { parseQuantity } from '../../src/units/parseQuantity.ts';
import { kinds } from '../support/definitions.ts';

const read = (text: string, more: object = {}) => attempt(parseQuantity, { text, locale: 'en-US', ...more });
const value = (number: number, unit: string) => ({ ok: true, value: { value: number, unit } });
const refused = (code: string, path = ['text']) => ({ ok: false, issues: [{ code, path }] });

describe('reads', () => {
  it.each([
    // feet and inches
    [`12' 6 1/2"`, 150.5, 'in'],
    [`12'-6 1/2"`, 150.5, 'in'],
    ['12 ft-6 in', 150, 'in'],
    [`12′ 6½″`, 150.5, 'in'],
    [`12’ 6 1/2”`, 150.5, 'in'],
    [`12' 6 1/2''`, 150.5, 'in'],
    [`12'6`, 150, 'in'],
    ['12 ft 6-1/2 in', 150.5, 'in'],
    ['12 ft. 6 in.', 150, 'in'],
    ['12 feet, 6 inches', 150, 'in'],
    ['12 feet and 6 and 1/2 inches', 150.5, 'in'],
    ['3 pies 2 pulgadas', 38, 'in'],
    ['12 ft 2', 146, 'in'],
    [`-1' 6"`, -18, 'in'],
    ['2 yd 1 ft 6 in', 90, 'in'],
    // fractions
    ['1 1/2 gal US', 1.5, 'usgal'],
    ['1-1/2 US gal', 1.5, 'usgal'],
    ['3/8 in', 0.375, 'in'],
    ['½ in', 0.5, 'in'],
    ['3⁄4"', 0.75, 'in'],
    ['1,234 1/2 ft', 1234.5, 'ft'],
    // numbers
    ['3,785 mL', 3785, 'ml'],
    ['1,604.17 ft2/usgal', 1604.17, 'ft2/usgal'],
    ['.5 in', 0.5, 'in'],
    ['5. ft', 5, 'ft'],
    ['+5 ft', 5, 'ft'],
    ['−5 °C', -5, 'degC'],
    ['０５ ｍｍ', 5, 'mm'],
    // units
    ['16 mils', 16, 'mil'],
    ['400 µm', 400, 'um'],
    ['400 μm', 400, 'um'],
    ['400 microns', 400, 'um'],
    ['85 %', 85, '%'],
    ['85%', 85, '%'],
    ['0.85 fraction', 0.85, 'fraction'],
    ['-5 °C', -5, 'degC'],
    ['-5℃', -5, 'degC'],
    ['21 º C', 21, 'degC'],
    ['70 F', 70, 'degF'],
    ['70 deg F', 70, 'degF'],
    ['70 degrees Fahrenheit', 70, 'degF'],
    ['5 Δ°C', 5, 'deltaC'],
    ['45 deg', 45, 'deg'],
    ['16 fl. oz. US', 16, 'usfloz'],
    ['16 imperial fluid ounces', 16, 'impfloz'],
    ['16 oz wt', 16, 'oz'],
    ['2 gallons (US)', 2, 'usgal'],
    ['2 UK gallons', 2, 'impgal'],
    ['5 sq. ft.', 5, 'ft2'],
    ['5 SF', 5, 'ft2'],
    ['5 ft^2', 5, 'ft2'],
    ['5 ft ^2', 5, 'ft2'],
    ['5 ft ²', 5, 'ft2'],
    ['6¹⁄₂ in', 6.5, 'in'],
    ['²⁄₃ yd', 2 / 3, 'yd'],
    ['5 metros cuadrados', 5, 'm2'],
    ['5 cubic yards', 5, 'yd3'],
    ['5 cu ft', 5, 'ft3'],
    ['5 cm³', 5, 'ml'],
    ['250 sf per US gallon', 250, 'ft2/usgal'],
    ['6 m² / L', 6, 'm2/l'],
    ['8.34 lb per US gal', 8.34, 'lb/usgal'],
    ['3 lb/1,000 ft²/24 h', 3, 'lb/1000ft2/24h'],
    ['3 lbs/1000 sq ft/day', 3, 'lb/1000ft2/24h'],
    ['5 g/m²/24 hours', 5, 'g/m2/24h'],
    ['1.5 N/mm²', 1.5, 'MPa'],
    ['29.92 "Hg', 29.92, 'inHg'],
    ['100 CFM', 100, 'ft3/min'],
    ['32 fluid oz US', 32, 'usfloz'],
    ['150 gsm', 150, 'g/m2'],
    ['10 lpm', 10, 'l/min'],
    ['20 kph', 20, 'km/h'],
    ['85 % RH', 85, '%'],
    ['200 lbf/in²', 200, 'psi'],
    ['200 lb/sq in', 200, 'psi'],
    ['200 pounds per square inch', 200, 'psi'],
    ['1.5 newtons per square millimetre', 1.5, 'MPa'],
    ['5 g/(m²·24 h)', 5, 'g/m2/24h'],
    ['57.2 ng/(s·m²·Pa)', 57.2, 'ng/s/m2/Pa'],
    ['2 kJ/(kg⋅K)', 2, 'kJ/kg/K'],
    ['5 galón US', 5, 'usgal'],
    ['5 galon US', 5, 'usgal'],
    ['5 milimetros', 5, 'mm'],
    ['5 metros cubicos', 5, 'm3'],
    ['5 onzas líquidas US', 5, 'usfloz'],
    ['minus 5 °C', -5, 'degC'],
    ['Menos 5 grados C', -5, 'degC'],
    ['5 MIN', 5, 'min'],
    // larger and smaller units together
    ['5 lb 3 oz', 83, 'oz'],
    ['1 h 30 min', 90, 'min'],
    ['1h30', 90, 'min'],
    ['2 US gal 3 qt', 11, 'usqt'],
    ['4 m 20.5 cm', 420.5, 'cm'],
  ])('%s', (text, number, unit) => {
    expect(read(text)).toEqual(value(number, unit));
  });

  it.each([
    ['3,785 l', 'de-DE', 3.785, 'l'],
    ['3.785 l', 'de-DE', 3785, 'l'],
    ['1.234,5 mm', 'es-ES', 1234.5, 'mm'],
    ['1 234,5 mm', 'fr-FR', 1234.5, 'mm'],
    ['1\u202f234,5 mm', 'fr-FR', 1234.5, 'mm'],
    ['1 1/2 gal US', 'fr-FR', 1.5, 'usgal'],
    ["1'234.5 mm", 'de-CH', 1234.5, 'mm'],
    [`12' 6"`, 'de-CH', 150, 'in'],
    ['12,34,567 mm', 'en-IN', 1234567, 'mm'],
    ['١٬٢٣٤٫٥ m', 'ar-EG', 1234.5, 'm'],
    ['1234.5 m', 'hi-IN', 1234.5, 'm'],
  ])('%s in %s', (text, locale, number, unit) => {
    expect(read(text, { locale })).toEqual(value(number, unit));
  });

  it.each(kinds.flatMap((kind) => kind.units))('%s by its code and by its symbol', (unit) => {
    const { symbol } = describeUnit(unit as 'm');
    expect(read(`2.5 ${symbol}`)).toEqual(value(2.5, unit));
    // The code of the ounce is the one word that stands for a volume as well.
    if (unit !== 'oz') expect(read(`2.5 ${unit}`)).toEqual(value(2.5, unit));
  });
});

describe('what may mean two things', () => {
  it.each([
    ['16 oz', 'one of usfloz, impfloz, oz'],
    ['2 gal', 'one of usgal, impgal'],
    ['2 gal 3 qt', 'one of usgal, impgal'],
    ['5°', 'one of degC, degF, deltaC, deltaF, deg'],
    ['250 sq ft/gal', 'one of ft2/usgal, ft2/impgal'],
    ['85', 'a number with its unit'],
  ])('is refused: %s', (text, expected) => {
    expect(read(text)).toMatchObject({
      ok: false,
      issues: [{ code: 'ambiguous', path: ['text'], expected }],
    });
  });

  it('is narrowed to the kind that is due', () => {
    expect(read('16 oz', { dimension: 'mass' })).toEqual(value(16, 'oz'));
    expect(read('5°', { dimension: 'angle' })).toEqual(value(5, 'deg'));
    expect(read('300 lb', { dimension: 'force' })).toEqual(value(300, 'lbf'));
    expect(read('5 K', { dimension: 'temperature difference' })).toEqual(value(5, 'deltaC'));
    expect(read('16 oz', { dimension: 'volume' })).toMatchObject({
      issues: [{ code: 'ambiguous', expected: 'one of usfloz, impfloz' }],
    });
    expect(read('70 deg', { dimension: 'temperature' })).toMatchObject({
      issues: [{ code: 'ambiguous', expected: 'one of degC, degF' }],
    });
    expect(read('0.85', { dimension: 'share' })).toMatchObject({
      issues: [{ code: 'ambiguous', expected: 'a share in one of %, fraction, ppm' }],
    });
  });

  it('is decided by the unit beside the field', () => {
    expect(read('16', { statedUnit: 'mil' })).toEqual(value(16, 'mil'));
    expect(read('6 1/2', { statedUnit: 'in' })).toEqual(value(6.5, 'in'));
    expect(read('12 ft 6', { statedUnit: 'ft' })).toEqual(value(150, 'in'));
    expect(read('16 oz', { statedUnit: 'usfloz' })).toEqual(value(16, 'usfloz'));
    expect(read('16 oz', { statedUnit: 'oz' })).toEqual(value(16, 'oz'));
    expect(read('2 gal', { statedUnit: 'impgal' })).toEqual(value(2, 'impgal'));
    expect(read('5°', { statedUnit: 'degF' })).toEqual(value(5, 'degF'));
    expect(read('5 °C', { statedUnit: 'deltaF' })).toEqual(value(5, 'deltaC'));
    expect(read('250 sq ft/gal', { statedUnit: 'ft2/usgal' })).toEqual(value(250, 'ft2/usgal'));
  });

  it.each([
    // A thousand in groups of another language would read as 1 ft 0 in.
    ['1 000', 'ft'],
    ['1 005 in', 'ft'],
    ['5-6', 'ft'],
    ['1 30', 'h'],
    ['1 005 mm', 'm'],
  ] as const)('does not tell what two bare numbers mean: %s beside %s', (text, statedUnit) => {
    expect(read(text, { statedUnit })).toMatchObject(refused('ambiguous'));
  });

  it('is of the country of the unit beside the field', () => {
    expect(read('3 qt', { statedUnit: 'usgal' })).toEqual(value(3, 'usqt'));
    expect(read('16 oz', { statedUnit: 'impgal' })).toEqual(value(16, 'impfloz'));
    expect(read('5°', { statedUnit: 'K' })).toMatchObject(refused('ambiguous'));
  });

  it('never overrules what was written', () => {
    expect(read('400 µm', { statedUnit: 'mil' })).toEqual(value(400, 'um'));
    expect(read(`12' 6"`, { statedUnit: 'm' })).toEqual(value(150, 'in'));
    expect(read('5 degC', { statedUnit: 'degF' })).toEqual(value(5, 'degC'));
  });
});

describe('refuses', () => {
  it.each([
    ['', 'not-a-quantity'],
    ['ft', 'not-a-quantity'],
    ['--5 ft', 'not-a-quantity'],
    ['1,23 ft', 'not-a-quantity'],
    ['0,123 ft', 'not-a-quantity'],
    ['1/0 in', 'not-a-quantity'],
    ['1 3/2 in', 'not-a-quantity'],
    ['1 0/0 in', 'not-a-quantity'],
    ['Infinity ft', 'not-a-quantity'],
    ['12 apples', 'wrong-unit'],
    // Powers are not the next digits of a number.
    [`6'²`, 'wrong-unit'],
    [`6' ^2`, 'wrong-unit'],
    ['6² ft', 'wrong-unit'],
    ['6₂ ft', 'wrong-unit'],
    ['1e5 ft', 'wrong-unit'],
    ['0x10 ft', 'wrong-unit'],
    ['12 x 10 ft', 'wrong-unit'],
    ['5 Mg', 'wrong-unit'],
    ['5 mPa', 'wrong-unit'],
    ['300 k', 'wrong-unit'],
    ['16 us oz', 'wrong-unit'],
    ['2 tons', 'wrong-unit'],
    ['12 ft -', 'wrong-unit'],
    ['5 ft2/ft2/ft2/ft2/ft2', 'wrong-unit'],
    ['5 m²·min', 'wrong-unit'],
    ['5 N·mm²', 'wrong-unit'],
    ['minus', 'not-a-quantity'],
    ['minus -5 ft', 'not-a-quantity'],
    ['600-800 ft2/usgal', 'ambiguous'],
    ['1 200 ml', 'ambiguous'],
    ['5 in 3', 'ambiguous'],
    ['12 ft 12 in', 'conflict'],
    ['12 ft 13 in', 'conflict'],
    ['12 in 1 ft', 'conflict'],
    ['1.5 ft 6 in', 'conflict'],
    ['5 ft 3 cm', 'conflict'],
    ['5 ft 3 lb', 'wrong-unit'],
    ['5 ft 3 ft', 'conflict'],
    ['20 degC 5 degC', 'conflict'],
    ['-500 °C', 'out-of-range'],
    ['5'.repeat(601), 'out-of-range'],
    // A hyphen with a space beside it may be a minus.
    ['5 ft -6 in', 'ambiguous'],
    ['5 ft - 6 in', 'ambiguous'],
    ['5 ft- 6 in', 'ambiguous'],
    [`12' - 6"`, 'ambiguous'],
    ['6 -1/2 in', 'ambiguous'],
    ['6 - 1/2 in', 'ambiguous'],
    ['5 ft −6 in', 'ambiguous'],
  ])('%s', (text, code) => {
    expect(read(text)).toMatchObject(refused(code));
  });

  it('a kind that is not due', () => {
    expect(read('5 gal US', { dimension: 'length' })).toMatchObject(refused('wrong-unit'));
    expect(read('16 mils', { statedUnit: 'usgal' })).toMatchObject(refused('wrong-unit'));
  });

  it.each([
    [{ text: undefined }, 'missing', ['text']],
    [{ text: 12 }, 'wrong-type', ['text']],
    [{ locale: undefined }, 'missing', ['locale']],
    [{ locale: 'not a language' }, 'wrong-type', ['locale']],
    [{ dimension: 'lengths' }, 'out-of-range', ['dimension']],
    [{ statedUnit: 'gal' }, 'wrong-unit', ['statedUnit']],
    [{ dimension: 'length', statedUnit: 'l' }, 'conflict', ['statedUnit']],
  ])('%o', (bad, code, path) => {
    expect(attempt(parseQuantity, { text: '5 ft', locale: 'en-US', ...bad })).toMatchObject(
      refused(code, path),
    );
  });
});
