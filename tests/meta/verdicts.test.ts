/** A verdict is about the floor, not about the unit in which somebody wrote the readings down. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { dimensionOf } from '../../src/core/dimensionOf.ts';
import { convert } from '../../src/units/convert.ts';
import { functions, rows } from '../support/library.ts';
import { quantitiesIn, replaced } from '../support/values.ts';

/** What a check says, wherever it stands in an answer. */
const SAYS = new Set([
  'verdict',
  'trend',
  'outgassing',
  'condensation',
  'barrierNeeded',
  'fitToCoat',
  'agrees',
]);
function said(answer: unknown, path = ''): string[] {
  if (typeof answer !== 'object' || answer === null) return [];
  return Object.entries(answer).flatMap(([key, value]) => {
    const at = `${path}.${key}`;
    return SAYS.has(key) && typeof value !== 'object' ? [`${at} ${String(value)}`] : said(value, at);
  });
}

const checks = [...functions].flatMap(([id, run]) => {
  const own = rows.filter((row) => row.function === id);
  return own.some((row) => said(run(row.given)).length > 0) ? [{ id, run, own: own.slice(0, 60) }] : [];
});

it('there are checks in every folder that has readings', () => {
  const folders = new Set(checks.map(({ id }) => id.split('.')[0]));
  for (const folder of ['aggregate', 'batch', 'climate', 'mix', 'moisture', 'statistics']) {
    expect(folders).toContain(folder);
  }
});

describe.each(checks)('$id', ({ run, own }) => {
  it('says the same in every unit of its readings, on the limit too', () => {
    // Round steps, so that many readings fall exactly on their limits.
    const step = fc.integer({ min: -4, max: 4 });
    const steps = fc.array(step, { minLength: 8, maxLength: 8 });
    const picks = fc.array(fc.nat(20), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(fc.constantFrom(...own), steps, picks, (row, shake, pick) => {
        let given: unknown = row.given;
        quantitiesIn(row.given).forEach(([path, quantity], i) => {
          const value = Number((quantity.value * (1 + (shake[i % 8] ?? 0) / 20)).toPrecision(3));
          given = replaced(given, [...path, 'value'], value);
        });
        const shaken = attempt(run, given);
        if (!shaken.ok) return;
        let other: unknown = given;
        quantitiesIn(given).forEach(([path, quantity], i) => {
          // The ends of a range change their unit together, or not at all.
          if (['low', 'likely', 'high'].includes(String(path.at(-1)))) return;
          const units = Object.keys(dimensionOf(quantity.unit)?.exact ?? {});
          const unit = units[(pick[i % 8] ?? 0) % units.length] ?? quantity.unit;
          const moved = convert({ quantity: quantity as never, unit: unit as never }) as object;
          other = replaced(other, path, { ...quantity, ...moved });
        });
        const again = attempt(run, other);
        expect(again.ok, JSON.stringify(again)).toBe(true);
        if (again.ok) expect(said(again.value), JSON.stringify([given, other])).toEqual(said(shaken.value));
      }),
      { numRuns: 150, seed: 5 },
    );
  });
});
