import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { add } from '../../src/units/add.ts';
import { compare } from '../../src/units/compare.ts';
import { convert } from '../../src/units/convert.ts';
import { scale } from '../../src/units/scale.ts';
import { subtract } from '../../src/units/subtract.ts';
import { sum } from '../../src/units/sum.ts';
import { exactly, kinds } from '../support/definitions.ts';
import { double, minus, plus, toNumber } from '../support/rational.ts';

const q = (value: number, unit: string) => ({ value, unit: unit as 'm' });
const scalable = kinds.filter(({ name }) => name !== 'temperature');

describe.each(scalable)('$name', ({ units }) => {
  const unit = fc.constantFrom(...units);
  const value = fc.integer({ min: -1e9, max: 1e9 }).map((n) => n / 997);

  it('adds and subtracts as fractions do, whatever the units', () => {
    fc.assert(
      fc.property(value, unit, value, unit, unit, (a, ua, b, ub, to) => {
        const [x, y] = [exactly(double(a), ua, to), exactly(double(b), ub, to)];
        const slack = 1e-15 * (Math.abs(toNumber(x)) + Math.abs(toNumber(y)));
        const input = { quantity: q(a, ua), unit: to as 'm' };
        const more = add({ ...input, to: q(b, ub) }).value;
        const less = subtract({ ...input, from: q(b, ub) }).value;
        expect(Math.abs(more - toNumber(plus(x, y)))).toBeLessThanOrEqual(slack);
        expect(Math.abs(less - toNumber(minus(y, x)))).toBeLessThanOrEqual(slack);
      }),
      { numRuns: 100, seed: 5 },
    );
  });

  it('orders quantities as their exact sizes are ordered', () => {
    fc.assert(
      fc.property(value, unit, value, unit, (a, ua, b, ub) => {
        const off = toNumber(minus(exactly(double(a), ua, ub), double(b)));
        const sign = Math.abs(off) < 2e-12 * Math.abs(b) ? undefined : Math.sign(off);
        const order = compare({ quantity: q(a, ua), to: q(b, ub) });
        if (sign !== undefined) expect(order).toBe(sign);
        expect(compare({ quantity: q(b, ub), to: q(a, ua) })).toBe(order === 0 ? 0 : -order);
      }),
      { numRuns: 100, seed: 6 },
    );
  });

  it('finds a quantity equal to itself in every other unit', () => {
    for (const a of units) {
      for (const b of units) {
        const other = convert({ quantity: q(0.7, a), unit: b as 'm' });
        expect(compare({ quantity: q(0.7, a), to: other })).toBe(0);
      }
    }
  });
});

it('calls equal what round-off parts, and nothing more', () => {
  const one = q(1, 'm');
  expect(compare({ quantity: q(1 + 1e-13, 'm'), to: one })).toBe(0);
  expect(compare({ quantity: q(1 + 1e-11, 'm'), to: one })).toBe(1);
  expect(compare({ quantity: q(1 - 1e-11, 'm'), to: one })).toBe(-1);
});

it('keeps the plain figures of quantities in one unit', () => {
  expect(add({ quantity: q(1, 'mil'), to: q(2, 'mil'), unit: 'mil' as 'm' }).value).toBe(3);
  expect(subtract({ quantity: q(0.25, 'in'), from: q(1, 'in'), unit: 'in' }).value).toBe(0.75);
  expect(scale({ quantity: q(0.3, 'in'), by: 10, unit: 'in' }).value).toBe(3);
});

it('sums without losing the small ones', () => {
  const one = q(1, 'm');
  const quantities = [q(1e16, 'm'), ...Array<typeof one>(10).fill(one), q(-1e16, 'm')];
  expect(sum({ quantities, unit: 'm' })).toEqual(q(10, 'm'));
  expect(sum({ quantities: [], unit: 'ft2' })).toEqual({ value: 0, unit: 'ft2' });
});

it('answers whatever a double can hold, though base units or a part of the sum cannot', () => {
  const big = (value: number, unit: string) => ({ value, unit: unit as 'm' });
  expect(convert({ quantity: big(1e307, 'bar'), unit: 'MPa' as 'm' }).value).toBeCloseTo(1e306, -293);
  expect(convert({ quantity: big(-1e307, 'bar'), unit: 'bar' as 'm' }).value).toBe(-1e307);
  expect(convert({ quantity: big(1e308, 't'), unit: 't' as 'm' }).value).toBe(1e308);
  expect(add({ quantity: big(1e308, 't'), to: big(-1e308, 't'), unit: 't' as 'm' }).value).toBe(0);
  expect(sum({ quantities: [big(1e308, 'm'), big(1e308, 'm'), big(-1e308, 'm')], unit: 'm' }).value).toBe(
    1e308,
  );
  expect(compare({ quantity: big(1e307, 'bar'), to: big(2e306, 'MPa') })).toBe(-1);
});

it('never answers a negative zero', () => {
  const zero = q(-0, 'm');
  expect(Object.is(convert({ quantity: zero, unit: 'm' }).value, 0)).toBe(true);
  expect(Object.is(add({ quantity: zero, to: zero, unit: 'm' }).value, 0)).toBe(true);
  expect(Object.is(scale({ quantity: q(0, 'm'), by: -1, unit: 'm' }).value, 0)).toBe(true);
  expect(Object.is(sum({ quantities: [zero], unit: 'm' }).value, 0)).toBe(true);
});

describe('temperatures', () => {
  const warm = { value: 20, unit: 'degC' } as const;
  const warmer = { value: 77, unit: 'degF' } as const;

  it('are points: between two lies a difference, and a difference leads from one to another', () => {
    expect(subtract({ quantity: warm, from: warmer, unit: 'deltaC' })).toEqual({ value: 5, unit: 'deltaC' });
    expect(subtract({ quantity: warm, from: warmer, unit: 'deltaF' })).toEqual({ value: 9, unit: 'deltaF' });
    expect(add({ quantity: { value: 9, unit: 'deltaF' }, to: warm, unit: 'degF' })).toEqual(warmer);
    expect(add({ quantity: { value: 9, unit: 'deltaF' }, to: warm, unit: 'K' }).value).toBeCloseTo(
      298.15,
      12,
    );
    expect(subtract({ quantity: { value: 5, unit: 'deltaC' }, from: warmer, unit: 'degC' })).toEqual(warm);
    expect(
      add({ quantity: { value: 9, unit: 'deltaF' }, to: { value: 5, unit: 'deltaC' }, unit: 'deltaC' }),
    ).toEqual({
      value: 10,
      unit: 'deltaC',
    });
  });

  it.each([
    ['two points added', add, { quantity: warm, to: warmer, unit: 'degC' }, ['quantity']],
    [
      'a point added to a difference',
      add,
      { quantity: warm, to: { value: 5, unit: 'deltaC' }, unit: 'degC' },
      ['to'],
    ],
    [
      'a point minus a point as a point',
      subtract,
      { quantity: warm, from: warmer, unit: 'degC' },
      ['quantity'],
    ],
    [
      'a point taken from a difference',
      subtract,
      { quantity: warm, from: { value: 5, unit: 'deltaC' }, unit: 'deltaC' },
      ['quantity'],
    ],
    ['twice a point', scale, { quantity: warm, by: 2, unit: 'degC' }, ['unit']],
    ['a sum of points', sum, { quantities: [warm, warmer], unit: 'degC' }, ['unit']],
    ['a point against a difference', compare, { quantity: warm, to: { value: 5, unit: 'deltaC' } }, ['to']],
    ['a point as a difference', convert, { quantity: warm, unit: 'deltaC' }, ['unit']],
  ])('refuse %s', (_, run, input, path) => {
    expect(attempt(run as typeof add, input)).toMatchObject({
      ok: false,
      issues: [{ code: 'wrong-unit', path }],
    });
  });

  it('are equal up to round-off of the scale, near its zero too', () => {
    expect(compare({ quantity: { value: 32.0018, unit: 'degF' }, to: { value: 0.001, unit: 'degC' } })).toBe(
      0,
    );
    expect(compare({ quantity: { value: 32.0019, unit: 'degF' }, to: { value: 0.001, unit: 'degC' } })).toBe(
      1,
    );
  });
});

it.each([
  [add, { quantity: q(1, 'm'), to: q(1, 'l'), unit: 'm' }, 'wrong-unit', ['to']],
  [add, { quantity: q(1e308, 'm'), to: q(1e308, 'm'), unit: 'm' }, 'too-large', []],
  [subtract, { quantity: q(1, 'm'), unit: 'm' }, 'missing', ['from']],
  [subtract, { quantity: q(1, 'm'), from: null, unit: 'm' }, 'not-a-quantity', ['from']],
  [scale, { quantity: q(1, 'm'), unit: 'm' }, 'missing', ['by']],
  [scale, { quantity: q(1, 'm'), by: '2', unit: 'm' }, 'wrong-type', ['by']],
  [scale, { quantity: q(1, 'm'), by: NaN, unit: 'm' }, 'not-finite', ['by']],
  [scale, { quantity: q(1e300, 'm'), by: 1e300, unit: 'm' }, 'too-large', []],
  [sum, { unit: 'm' }, 'missing', ['quantities']],
  [sum, { quantities: 'all', unit: 'm' }, 'wrong-type', ['quantities']],
  [sum, { quantities: [q(1, 'm'), q(1, 'l')], unit: 'm' }, 'wrong-unit', ['quantities', 1]],
  [sum, { quantities: [q(1, 'm'), , q(1, 'm')], unit: 'm' }, 'missing', ['quantities', 1]],
  [sum, { quantities: [q(1e308, 'm'), q(1e308, 'm')], unit: 'm' }, 'too-large', []],
  [compare, { quantity: q(1, 'm'), to: q(1, 'l') }, 'wrong-unit', ['to']],
  [convert, { quantity: q(1e308, 'm'), unit: 'um' }, 'too-large', ['quantity']],
  [convert, { quantity: q(-1, 'K'), unit: 'degC' }, 'out-of-range', ['quantity']],
  [convert, { quantity: q(-460, 'degF'), unit: 'degF' }, 'out-of-range', ['quantity']],
  [convert, { quantity: q(1e308, 't'), unit: 'mg' }, 'too-large', ['quantity']],
  [sum, { quantities: [q(1, 'm'), q(1e308, 'm')], unit: 'um' }, 'too-large', ['quantities', 1]],
])('%o refuses %o', (run, input, code, path) => {
  expect(attempt(run as typeof add, input)).toMatchObject({ ok: false, issues: [{ code, path }] });
});

it('says what a number was too large for', () => {
  expect(() => convert({ quantity: q(1e308, 'm'), unit: 'um' })).toThrow(
    "convert: quantity must be finite in um, got 1e+308 'm'",
  );
  expect(() => convert({ quantity: q(-300, 'degC'), unit: 'K' as 'm' })).toThrow(
    "convert: quantity must be from 0 K up, got -300 'degC'",
  );
});
