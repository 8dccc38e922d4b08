/** Every formula of lengths: all lengths k times as large make areas k², volumes and masses k³ times as large. */
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/core/dimension.ts';
import { dimensionOf } from '../../src/core/dimensionOf.ts';
import { functions, rows } from '../support/library.ts';
import { isQuantity, type PlainQuantity } from '../support/values.ts';
import { nameOf } from '../../src/units/dimensionNamed.ts';

/** Which power of the length each kind grows with, densities held. */
const POWERS: Readonly<Record<string, number>> = {
  length: 1,
  area: 2,
  volume: 3,
  mass: 3,
  'mass per area': 1,
  'spread rate': -1,
  density: 0,
  share: 0,
};

const grown = ({ value, unit }: PlainQuantity, k: number): PlainQuantity => ({
  value: value * k ** (POWERS[nameOf(dimensionOf(unit) as Dimension<string>)] ?? NaN),
  unit,
});

/** A copy of an input or an answer with every quantity and every corner grown. */
function allGrown(value: unknown, k: number): unknown {
  if (isQuantity(value)) return grown(value, k);
  if (Array.isArray(value)) return value.map((inner) => allGrown(inner, k));
  if (typeof value !== 'object' || value === null) return value;
  if ('points' in value) {
    const { points } = value as { points: [number, number][] };
    return { ...value, points: points.map(([x, y]) => [x * k, y * k]) };
  }
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, allGrown(inner, k)]));
}

/** Compares every quantity of two answers. */
function agrees(got: unknown, want: unknown, rel: number, path = ''): void {
  if (isQuantity(want)) {
    const { value, unit } = got as PlainQuantity;
    expect(unit).toBe(want.unit);
    expect(Math.abs(value - want.value), `${path}: ${value} against ${want.value}`).toBeLessThanOrEqual(
      rel * Math.abs(want.value) + 1e-13,
    );
  } else if (typeof want === 'object' && want !== null) {
    for (const [key, inner] of Object.entries(want)) {
      // Where a figure comes from is not a figure.
      if (key !== 'basis') agrees((got as Record<string, unknown>)[key], inner, rel, `${path}.${key}`);
    }
  } else expect(got, path).toEqual(want);
}

/** Tables of thicknesses do not grow with the floor. */
const FIXED = ['film.surfaceProfile', 'film.comparatorProfile'];
const own = rows.filter(
  (row) => /^(area|film|aggregate)\./.test(row.function) && !FIXED.includes(row.function),
);

describe.each([0.5, 3])('%s times as large', (k) => {
  it.each(own.map((row) => [row.id, row] as const))('%s', (_, row) => {
    const run = functions.get(row.function);
    // A needle is known from its sides no better than its row says.
    const rel = row.id === 'area-triangle-sides-needle' ? 1e-6 : 1e-9;
    agrees(run?.(allGrown(row.given, k)), allGrown(run?.(row.given), k), rel);
  });
});
