/** What a formula declares of its inputs holds around every check row, with all other inputs shaken. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { directionsOf } from '../../src/core/monotone.ts';
import { functions, rows } from '../support/library.ts';
import { isQuantity, quantitiesIn, replaced } from '../support/values.ts';

const declared = [...functions].filter(([, run]) =>
  Object.values(directionsOf(run)).some((direction) => direction !== 'none'),
);

describe.each(declared)('%s', (id, run) => {
  const own = rows.filter((row) => row.function === id);
  it.each(Object.entries(directionsOf(run)).filter(([, direction]) => direction !== 'none'))(
    '%s %s',
    (key, direction) => {
      const having = own.filter((row) => isQuantity(row.given[key])).slice(0, 40);
      let compared = 0;
      const factor = fc.double({ min: 0.3, max: 3, noNaN: true });
      fc.assert(
        fc.property(
          fc.constantFrom(...having),
          fc.array(factor, { minLength: 12, maxLength: 12 }),
          factor,
          (row, shake, step) => {
            let given: unknown = row.given;
            quantitiesIn(row.given).forEach(([path, quantity], i) => {
              given = replaced(given, path, { ...quantity, value: quantity.value * (shake[i] ?? 1) });
            });
            const here = (given as Record<string, { value: number; unit: string }>)[key];
            if (!here) return;
            const there = { ...here, value: here.value + Math.abs(here.value) * step };
            const [first, second] = [attempt(run, given), attempt(run, replaced(given, [key], there))];
            if (!first.ok || !second.ok) return;
            const [before, after] = [first.value, second.value] as { value: number }[];
            if (!before || !after) return;
            compared++;
            const slack = 1e-12 * Math.abs(before.value);
            if (direction === '+') expect(after.value).toBeGreaterThanOrEqual(before.value - slack);
            else expect(after.value).toBeLessThanOrEqual(before.value + slack);
          },
        ),
        { numRuns: 300, seed: 7 },
      );
      expect(compared).toBeGreaterThan(30);
    },
  );
});
