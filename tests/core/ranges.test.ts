import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { across } from '../../src/core/across.ts';
import { withMiddles } from '../../src/core/acrossLikely.ts';
import { attempt } from '../../src/core/attempt.ts';
import { between } from '../../src/core/between.ts';
import { LENGTH } from '../../src/core/dimensions.ts';
import { POSITIVE } from '../../src/core/limits.ts';
import { monotone } from '../../src/core/monotone.ts';
import type { Length, Quantity, Share } from '../../src/core/quantity.ts';
import { quantity } from '../../src/core/quantity.ts';
import { readRange, type Range } from '../../src/core/range.ts';

const m = (value: number): Quantity<'m'> => ({ value, unit: 'm' });

describe('the middle of a range', () => {
  it('stands in for the likely value, also where its width is too much for a double', () => {
    expect(withMiddles({ x: between(1, 2, 'm'), unit: 'm' })).toEqual({
      x: between(1, 2, 'm', { likely: 1.5 }),
      unit: 'm',
    });
    const widest = between(-1.7e308, 1.7e308, 'm');
    expect(withMiddles({ x: widest })).toEqual({ x: { ...widest, likely: m(0) } });
  });
});

describe('between', () => {
  it('makes plain data, with a likely value where one is given', () => {
    expect(between(1, 2, 'm')).toEqual({ low: m(1), high: m(2) });
    expect(between(1, 2, 'm', { likely: 1.5 })).toEqual({ low: m(1), likely: m(1.5), high: m(2) });
    expect(between(2, 2, 'm')).toEqual({ low: m(2), high: m(2) });
  });

  it.each([
    [() => between(NaN, 2, 'm'), 'not-finite', ['low']],
    [() => between(1, Infinity, 'm'), 'not-finite', ['high']],
    [() => between(1, 2, 'm', { likely: NaN }), 'not-finite', ['likely']],
    [() => between(1, 2, 'gal' as 'm'), 'wrong-unit', ['unit']],
    [() => between(2, 1, 'm'), 'conflict', []],
    [() => between(1, 2, 'm', { likely: 3 }), 'conflict', []],
    [() => between(1, 2, 'm', null as never), 'wrong-type', ['more']],
  ])('refuses %s', (run, code, path) => {
    expect(attempt(run, undefined)).toMatchObject({ ok: false, issues: [{ code, path }] });
  });
});

it('quantity checks number and unit', () => {
  expect(quantity(16, 'mil')).toEqual({ value: 16, unit: 'mil' });
  expect(Object.is(quantity(-0, 'mil').value, 0)).toBe(true);
  expect(attempt(() => quantity(NaN, 'mil'), 0)).toMatchObject({
    issues: [{ code: 'not-finite', path: ['value'] }],
  });
  expect(attempt(() => quantity('1' as never, 'mil'), 0)).toMatchObject({ issues: [{ code: 'not-finite' }] });
  expect(attempt(() => quantity(1, 'gal' as 'm'), 0)).toMatchObject({
    issues: [{ code: 'wrong-unit', path: ['unit'] }],
  });
});

it('readRange reads one value as a range without width', () => {
  expect(readRange('f', 'film', { value: 2, unit: 'mm' }, LENGTH, POSITIVE)).toEqual({
    low: 0.002,
    likely: 0.002,
    high: 0.002,
  });
  expect(readRange('f', 'film', between(1, 2, 'm'), LENGTH, POSITIVE)).toEqual({
    low: 1,
    likely: undefined,
    high: 2,
  });
  expect(
    attempt(() => readRange('f', 'film', between(0, 2, 'm'), LENGTH, POSITIVE, ['coats', 1]), 0),
  ).toMatchObject({ issues: [{ code: 'out-of-range', path: ['coats', 1, 'film', 'low'] }] });
});

/** A formula of every sort of input: up, down, and neither. */
const shape = ({ a, b, c }: { a: Length; b: Length; c: Length; part?: Share | undefined }): Quantity<'m'> =>
  m(a.value / b.value + (c.value - 2) ** 2);
const declared = monotone({ a: '+', b: '-' }, shape);

describe('across', () => {
  it('answers a plain input with a range without width and without driver', () => {
    expect(across(declared, { a: m(1), b: m(1), c: m(2) })).toEqual({
      low: m(1),
      likely: m(1),
      high: m(1),
      enclosure: 'proven',
    });
  });

  it('proves the range where every ranged input is declared', () => {
    const answer = across(declared, {
      a: between(1, 2, 'm', { likely: 1.5 }),
      b: between(1, 4, 'm'),
      c: m(2),
    });
    expect(answer).toEqual({ low: m(0.25), high: m(2), driver: 'b', enclosure: 'proven' });
  });

  it('tries the corners of the others and says so', () => {
    const answer = across(declared, { a: between(1, 2, 'm'), b: m(1), c: between(2, 5, 'm') });
    expect(answer).toEqual({ low: m(1), high: m(11), driver: 'c', enclosure: 'corners only' });
  });

  it('no answer inside a proven range lies outside it', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.nat(50),
        fc.nat(50),
        fc.integer({ min: 1, max: 50 }),
        fc.nat(50),
        part,
        part,
        (a, wa, b, wb, p, r) => {
          const ranges = { a: between(a, a + wa, 'm'), b: between(b, b + wb, 'm'), c: m(2) };
          const { low, high } = across(declared, ranges);
          const { value } = shape({ a: m(a + p * wa), b: m(b + r * wb), c: m(2) });
          expect(value).toBeGreaterThanOrEqual(low.value * (1 - 1e-12));
          expect(value).toBeLessThanOrEqual(high.value * (1 + 1e-12));
        },
      ),
      { seed: 2 },
    );
  });

  it('names every unit of a range that has several', () => {
    const likely = { value: 4, unit: 'ft' };
    const input = { a: { low: m(1), likely, high: m(2) }, b: m(1), c: m(1) };
    expect(attempt((given: never) => across(declared, given), input)).toMatchObject({
      issues: [{ code: 'conflict', path: ['a'], received: "'m and ft'" }],
    });
  });

  it('takes the widest doubles', () => {
    const same = monotone({ a: '+' }, ({ a }: { a: Quantity<'m'> }): Quantity<'m'> => a);
    expect(across(same, { a: between(-1e308, 1e308, 'm') }).driver).toBe('a');
  });

  const many = Object.fromEntries(Array.from({ length: 9 }, (_, i) => [`x${i}`, between(0, 1, 'm')]));
  const free = (input: Record<string, Quantity<'m'>>): Quantity<'m'> => m(Object.keys(input).length);
  it('tries at most eight undeclared ranges', () => {
    expect(attempt((input: never) => across(free, input), many)).toMatchObject({
      ok: false,
      issues: [{ code: 'conflict', path: [], received: '9' }],
    });
    const eight = Object.fromEntries(Object.entries(many).slice(1));
    expect(across(free, eight).enclosure).toBe('corners only');
  });

  it.each([
    [undefined, 'missing', []],
    [{ a: { low: m(2), high: m(1) } }, 'conflict', ['a']],
    [{ a: { low: m(1), high: { value: 2, unit: 'ft' } } }, 'conflict', ['a']],
    [{ a: { low: m(1) } }, 'missing', ['a', 'high']],
    [{ a: { high: m(1) } }, 'missing', ['a', 'low']],
    [{ a: { low: m(1), likely: 1, high: m(2) } }, 'not-a-quantity', ['a', 'likely']],
    [{ a: { low: m(1), high: { value: 2, unit: 'gal' } } }, 'wrong-unit', ['a', 'high']],
  ])('refuses %o', (bad, code, path) => {
    const input = bad && { b: m(1), c: m(1), ...bad };
    expect(attempt((given: never) => across(declared, given), input)).toMatchObject({
      ok: false,
      issues: [{ code, path }],
    });
  });

  it.each([
    [() => across(5 as never, {} as never), 'wrong-type'],
    [() => across((() => undefined) as never, { a: between(1, 2, 'm') } as never), 'not-a-quantity'],
    [() => across((() => m(NaN)) as never, {} as never), 'not-a-quantity'],
  ])('refuses what is no formula: %s', (run, code) => {
    expect(attempt(run, 0)).toMatchObject({ ok: false, issues: [{ code, path: ['formula'] }] });
  });

  it('works on temperatures', () => {
    const same = monotone({ air: '+' }, ({ air }: { air: Quantity<'degC'> }): Quantity<'degC'> => air);
    const answer: Range<'degC'> = across(same, { air: between(-5, 5, 'degC') });
    expect(answer.high.value).toBe(5);
  });
});
