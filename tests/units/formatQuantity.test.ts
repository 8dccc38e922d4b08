import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { formatQuantity, type FormatQuantityInput } from '../../src/units/formatQuantity.ts';

const write = (value: number, unit: string, more: Partial<FormatQuantityInput> = {}) =>
  formatQuantity({ quantity: { value, unit: unit as 'm' }, locale: 'en-US', ...more });

describe('in decimals', () => {
  it.each([
    [1604.1666666666667, 'ft2/usgal', { significantDigits: 4 }, '1,604 ft²/US gal'],
    [16, 'mil', { significantDigits: 3 }, '16.0 mil'],
    [16.04, 'mil', {}, '16.04 mil'],
    [0.1, 'l', {}, '0.1 L'],
    [1234567.891, 'ft2', { decimals: 1 }, '1,234,567.9 ft²'],
    [85, '%', { decimals: 0 }, '85 %'],
    [-5, 'degC', { decimals: 1 }, '-5.0 °C'],
    [2.5, 'deltaF', {}, '2.5 Δ°F'],
    [-0.2, 'm', { decimals: 0 }, '0 m'],
    [0, 'm', { significantDigits: 3 }, '0.00 m'],
    [0, 'm', { decimals: 2 }, '0.00 m'],
  ])('writes %d %s %o', (value, unit, more, text) => {
    expect(write(value, unit, more)).toBe(text);
  });

  it.each([
    [5.01, 'up', '6'],
    [5.01, 'down', '5'],
    [5.5, 'nearest', '6'],
    [-5.5, 'nearest', '-6'],
    [-5.01, 'up', '-5'],
    [-5.01, 'down', '-6'],
    // Round-off is not a reason to buy one more.
    [5.000000000000001, 'up', '5'],
    [4.999999999999999, 'down', '5'],
    [0.1 + 0.2, 'up', '1'],
  ] as const)('rounds %d %s', (value, direction, text) => {
    expect(write(value, 'usgal', { decimals: 0, direction, withoutUnit: true })).toBe(text);
  });

  it('rounds the decimal digits, not the double', () => {
    // The double of 1.005 lies below it.
    expect(write(1.005, 'l', { decimals: 2 })).toBe('1.01 L');
    expect(write(0.1 + 0.2, 'l', { decimals: 1, direction: 'up' })).toBe('0.3 L');
    expect(write(1.1, 'l', { significantDigits: 2, direction: 'up' })).toBe('1.1 L');
  });

  it('writes large figures to the last digit asked for', () => {
    expect(write(1234567890123.4, 'm', { decimals: 1 })).toBe('1,234,567,890,123.4 m');
    expect(write(1e21, 'm')).toBe('1,000,000,000,000,000,000,000 m');
  });

  it.each([
    ['de-DE', '1.604,17 ft²/US gal'],
    ['en-IN', '1,604.17 ft²/US gal'],
    ['sv-SE', '1\u00a0604,17 ft²/US gal'],
  ])('in %s', (locale, text) => {
    expect(write(1604.1666666666667, 'ft2/usgal', { locale, decimals: 2 })).toBe(text);
  });
});

describe('in marks', () => {
  it.each([
    [10.2, 'usfloz', 2, 'up', '10 1/2 US fl oz'],
    [10.5, 'usfloz', 2, 'up', '10 1/2 US fl oz'],
    [10.2, 'usfloz', 2, 'nearest', '10 US fl oz'],
    [10.2, 'usfloz', 2, 'down', '10 US fl oz'],
    [0.5, 'in', 16, 'nearest', '1/2 in'],
    [0.05, 'in', 16, 'nearest', '1/16 in'],
    [0.01, 'in', 16, 'nearest', '0 in'],
    [-0.5, 'in', 16, 'nearest', '-1/2 in'],
    [-2.75, 'in', 4, 'up', '-2 3/4 in'],
    [1234.5, 'ft', 2, 'nearest', '1,234 1/2 ft'],
    [1 / 3, 'usqt', 3, 'up', '1/3 US qt'],
  ] as const)('writes %d %s in 1/%d %s', (value, unit, denominator, direction, text) => {
    expect(write(value, unit, { denominator, direction })).toBe(text);
  });
});

describe('in feet and inches', () => {
  it.each([
    [150.5, 'in', 16, `12' 6 1/2"`],
    [12.5, 'ft', 16, `12' 6"`],
    [3.82, 'm', 16, `12' 6 3/8"`],
    [143.99, 'in', 16, `12' 0"`],
    [6.5, 'in', 8, `6 1/2"`],
    [0, 'm', 8, `0"`],
    [-18.25, 'in', 4, `-1' 6 1/4"`],
    [12345, 'ft', 1, `12,345' 0"`],
  ])('writes %d %s to 1/%d', (value, unit, denominator, text) => {
    expect(write(value, unit, { feetAndInches: true, denominator })).toBe(text);
  });
});

it('leaves the unit away for a field that has it beside it', () => {
  expect(write(10.5, 'mil', { unit: 'um', decimals: 1, withoutUnit: true })).toBe('266.7');
});

it.each([
  [{ locale: undefined }, 'missing', ['locale']],
  [{ locale: '' }, 'wrong-type', ['locale']],
  [{ locale: 7 }, 'wrong-type', ['locale']],
  [{ locale: 'no language' }, 'wrong-type', ['locale']],
  [{ significantDigits: 0 }, 'out-of-range', ['significantDigits']],
  [{ significantDigits: 16 }, 'out-of-range', ['significantDigits']],
  [{ decimals: -1 }, 'out-of-range', ['decimals']],
  [{ decimals: 1.5 }, 'out-of-range', ['decimals']],
  [{ decimals: '2' }, 'out-of-range', ['decimals']],
  [{ denominator: 0 }, 'out-of-range', ['denominator']],
  [{ denominator: null }, 'out-of-range', ['denominator']],
  [{ decimals: 1, denominator: 2 }, 'conflict', ['denominator']],
  [{ direction: 'sideways' }, 'out-of-range', ['direction']],
  [{ feetAndInches: true }, 'missing', ['denominator']],
  [{ feetAndInches: true, decimals: 2 }, 'missing', ['denominator']],
  [{ feetAndInches: true, denominator: 16, unit: 'ft' }, 'conflict', ['unit']],
  [{ feetAndInches: true, denominator: 16, quantity: { value: 1, unit: 'l' } }, 'wrong-unit', ['quantity']],
  [{ unit: 'furlong' }, 'wrong-unit', ['unit']],
  [{ unit: 'l' }, 'wrong-unit', ['quantity']],
  [{ quantity: undefined }, 'missing', ['quantity']],
  [{ quantity: { value: NaN, unit: 'm' } }, 'not-finite', ['quantity']],
  [{ quantity: { value: 1e308, unit: 'm' }, denominator: 16 }, 'too-large', ['quantity']],
])('refuses %o', (bad, code, path) => {
  const good = { quantity: { value: 1, unit: 'm' }, locale: 'en-US' };
  expect(attempt(formatQuantity, { ...good, ...bad })).toMatchObject({ ok: false, issues: [{ code, path }] });
});
