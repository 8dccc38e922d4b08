import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { across } from '../../src/core/across.ts';
import { attempt } from '../../src/core/attempt.ts';
import { between } from '../../src/core/between.ts';
import { wetThickness } from '../../src/film/wetThickness.ts';
import { add } from '../../src/units/add.ts';
import { convert } from '../../src/units/convert.ts';
import { scaleRange } from '../../src/units/scaleRange.ts';
import { subtract } from '../../src/units/subtract.ts';
import { sum } from '../../src/units/sum.ts';
import { sumRanges } from '../../src/units/sumRanges.ts';

const litres = (value: number) => ({ value, unit: 'l' }) as const;
const inside = fc.double({ min: 0, max: 1, noNaN: true });

it('no sum of values inside the parts lies outside the sum of ranges', () => {
  const part = fc.tuple(fc.integer({ min: -500, max: 500 }), fc.nat(100));
  fc.assert(
    fc.property(
      fc.array(part, { maxLength: 6 }),
      fc.array(inside, { minLength: 6, maxLength: 6 }),
      (parts, where) => {
        const ranges = parts.map(([low, width]) => between(low, low + width, 'l'));
        const within = parts.map(([low, width], i) => litres(low + width * (where[i] ?? 0)));
        const { low, high } = sumRanges({ ranges, unit: 'l' });
        const { value } = sum({ quantities: within, unit: 'l' });
        expect(value).toBeGreaterThanOrEqual(low.value - 1e-9);
        expect(value).toBeLessThanOrEqual(high.value + 1e-9);
      },
    ),
    { seed: 4 },
  );
});

it('carries the likely value only where every part has one', () => {
  const known = between(1, 3, 'l', { likely: 1.5 });
  expect(sumRanges({ ranges: [known, litres(1)], unit: 'l' }).likely).toEqual(litres(2.5));
  expect(sumRanges({ ranges: [known, between(1, 2, 'l')], unit: 'l' })).not.toHaveProperty('likely');
  expect(sumRanges({ ranges: [], unit: 'l' }).likely).toEqual(litres(0));
  expect(scaleRange({ range: known, by: 0, unit: 'l' })).toEqual({
    low: litres(0),
    likely: litres(0),
    high: litres(0),
  });
  expect(scaleRange({ range: litres(2), by: -1, unit: 'l' })).toEqual({
    low: litres(-2),
    likely: litres(-2),
    high: litres(-2),
  });
});

describe('across flips what a reciprocal flips', () => {
  it('and names the driver', () => {
    const film = across(wetThickness, {
      spreadRate: between(600, 800, 'ft2/usgal', { likely: 640 }),
      unit: 'mil',
    });
    expect(film.low.value).toBeCloseTo(9625 / 6 / 800, 12);
    expect(film.likely?.value).toBeCloseTo(9625 / 6 / 640, 12);
    expect(film.high.value).toBeCloseTo(9625 / 6 / 600, 12);
    expect(film).toMatchObject({ driver: 'spreadRate', enclosure: 'proven' });
  });

  it('and what is taken away', () => {
    const left = across(subtract, {
      quantity: between(1, 2, 'usgal'),
      from: between(10, 14, 'usgal'),
      unit: 'usgal',
    });
    expect([left.low.value, left.high.value, left.driver]).toEqual([8, 13, 'from']);
    const total = across(add, {
      quantity: between(1, 2, 'deltaC'),
      to: between(10, 14, 'degC'),
      unit: 'degC',
    });
    expect([total.low.value, total.high.value, total.enclosure]).toEqual([11, 16, 'proven']);
  });

  it('and converts a range', () => {
    expect(across(convert, { quantity: between(40, 50, 'degF'), unit: 'degC' }).high.value).toBeCloseTo(
      10,
      12,
    );
  });
});

it.each([
  [sumRanges, { ranges: [{ low: litres(2), high: litres(1) }], unit: 'l' }, 'conflict', ['ranges', 0]],
  [sumRanges, { ranges: [{ low: litres(2) }], unit: 'l' }, 'missing', ['ranges', 0, 'high']],
  [sumRanges, { ranges: [null], unit: 'l' }, 'not-a-quantity', ['ranges', 0]],
  [
    sumRanges,
    { ranges: [{ low: litres(1), high: { value: 2, unit: 'ml' } }], unit: 'l' },
    'conflict',
    ['ranges', 0],
  ],
  [sumRanges, { unit: 'l' }, 'missing', ['ranges']],
  [sumRanges, { ranges: [], unit: 'degC' }, 'wrong-unit', ['unit']],
  [scaleRange, { range: between(1, 2, 'l'), by: '2', unit: 'l' }, 'wrong-type', ['by']],
  [scaleRange, { range: between(1, 2, 'l'), by: 1e308, unit: 'ml' }, 'too-large', []],
  [scaleRange, { range: between(1, 2, 'm'), by: 2, unit: 'l' }, 'wrong-unit', ['range', 'low']],
])('%o refuses %o', (run, input, code, path) => {
  expect(attempt(run as typeof sumRanges, input)).toMatchObject({ ok: false, issues: [{ code, path }] });
});
