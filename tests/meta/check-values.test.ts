/** Every check row is run as written, and again with each of its inputs in each unit of its kind. */
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/core/dimension.ts';
import { dimensionOf } from '../../src/core/dimensionOf.ts';
import { convert } from '../../src/units/convert.ts';
import { functions, rows, sources, type CheckRow } from '../support/library.ts';
import { at, isQuantity, quantitiesIn, replaced } from '../support/values.ts';

/** Compares one expected figure, in the unit in which it is expected. */
function agrees(got: unknown, want: unknown, tolerance: CheckRow['tolerance'], extra: number): void {
  if (isQuantity(want)) {
    expect(got).toEqual({ value: expect.any(Number) as number, unit: want.unit });
    agrees((got as { value: number }).value, want.value, tolerance, extra);
  } else if (typeof want === 'number') {
    const slack = (tolerance.abs ?? 0) + ((tolerance.rel ?? 0) + extra) * Math.abs(want);
    expect(got).toBeTypeOf('number');
    expect(Math.abs((got as number) - want), `${String(got)} against ${String(want)}`).toBeLessThanOrEqual(
      slack,
    );
  } else {
    expect(got).toEqual(want);
  }
}

function check(row: CheckRow, given: unknown, extra = 0): void {
  const run = functions.get(row.function);
  if (!run) throw new Error(`no function ${row.function}`);
  const answer = run(given);
  if (typeof row.expect !== 'object' || isQuantity(row.expect))
    agrees(answer, row.expect, row.tolerance, extra);
  else
    for (const [path, want] of Object.entries(row.expect))
      agrees(at(answer, path), want, row.tolerance, extra);
}

it('ids are unique', () => {
  expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
});

describe.each(rows)('$id', (row) => {
  it('gives the published figure', () => {
    check(row, row.given);
  });

  it('names its source, its status and the reason of its tolerance', () => {
    expect(sources).toHaveProperty([row.source]);
    expect(row.tolerance.why).not.toBe('');
    expect(row.tolerance.abs ?? row.tolerance.rel).toBeTypeOf('number');
    expect(['published', 'computed', 'common practice', 'memory']).toContain(row.status);
  });

  it('gives it in every unit of every input', () => {
    for (const [path, dimension] of slots(row.given)) {
      // A limit is judged and answered in its own unit.
      if (path.includes('limit') || path[0] === 'least' || path[0] === 'most') continue;
      for (const unit of Object.keys(dimension.exact)) {
        let given: unknown = row.given;
        for (const [at, quantity] of quantitiesIn(row.given)) {
          if (slotOf(at).join() !== path.join()) continue;
          given = replaced(given, at, {
            ...quantity,
            ...convert({ quantity: quantity as never, unit: unit as never }),
          });
        }
        check(row, given, 1e-12);
      }
    }
  });
});

/** Where a quantity belongs: the ends of a range change their unit together. */
function slotOf(path: (string | number)[]): (string | number)[] {
  return ['low', 'likely', 'high'].includes(String(path.at(-1))) ? path.slice(0, -1) : path;
}

/** Every input that takes a quantity or a range of them, with its kind. */
function slots(given: unknown): [(string | number)[], Dimension<string>][] {
  return quantitiesIn(given).flatMap(([path, quantity]) => {
    const dimension = dimensionOf(quantity.unit);
    return dimension ? [[slotOf(path), dimension]] : [];
  });
}
