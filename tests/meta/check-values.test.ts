/** Every check row is run as written, and again with each of its inputs in each unit of its kind. */
import { describe, expect, it } from 'vitest';
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
    for (const [path, quantity] of quantitiesIn(row.given)) {
      for (const unit of Object.keys(dimensionOf(quantity.unit)?.factor ?? {})) {
        // A limit is judged and answered in its own unit, and so is whatever the row says is so.
        if (path.includes('limit')) continue;
        // The ends of a range are in one unit.
        if (['low', 'likely', 'high'].includes(String(path.at(-1)))) continue;
        const other = convert({ quantity: quantity as never, unit: unit as never });
        check(row, replaced(row.given, path, other), 1e-12);
      }
    }
  });
});
