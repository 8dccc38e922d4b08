import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../src/core/assessment.ts';
import { toField } from '../../src/core/fieldValue.ts';

describe('toField', () => {
  it.each([
    [5.01, 1, 'up', 6],
    [5.000000000000001, 1, 'up', 5],
    [4.999999999999999, 1, 'down', 5],
    [0.1 + 0.2, 0.1, 'up', 0.3],
    [10.2, 0.5, 'up', 10.5],
    [10.2, 0.5, 'down', 10],
    [10.25, 0.5, 'nearest', 10.5],
    [-10.25, 0.5, 'nearest', -10.5],
    [-0.2, 1, 'up', 0],
  ] as const)('%d in steps of %d %s is %d', (value, step, direction, field) => {
    const answer = toField({ value, unit: 'usfloz' }, step, direction);
    expect(answer).toEqual({
      exact: { value, unit: 'usfloz' },
      field: { value: field, unit: 'usfloz' },
      step: { value: step, unit: 'usfloz' },
      direction,
    });
    expect(Object.is(answer.field.value, -0)).toBe(false);
  });

  it('leaves a whole number of steps of any size as it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.integer({ min: 1, max: 5000 }),
        (step, steps) => {
          for (const direction of ['up', 'down', 'nearest'] as const) {
            const { field } = toField({ value: steps * step, unit: 'usgal' }, step, direction);
            expect(Math.abs(field.value / (steps * step) - 1)).toBeLessThan(1e-11);
          }
        },
      ),
      { seed: 21 },
    );
  });

  it('never buys too little and never promises too much', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.constantFrom(0.05, 0.25, 0.5, 1, 5),
        (value, step) => {
          const up = toField({ value, unit: 'l' }, step, 'up').field.value;
          const down = toField({ value, unit: 'l' }, step, 'down').field.value;
          const slack = 1e-11 * value;
          expect(up).toBeGreaterThanOrEqual(value - slack);
          expect(down).toBeLessThanOrEqual(value + slack);
          expect(up - down).toBeLessThanOrEqual(step + slack);
        },
      ),
      { seed: 1 },
    );
  });
});

describe('judge', () => {
  it.each([
    [0, 0, 1, 'meets'],
    [-1e-13, 0, 1, 'meets'],
    [-1e-11, 0, 1, 'fails'],
    [1, 0, 1, 'meets'],
    [1, 2, 1, 'undecided'],
    [2, 2, 1, 'meets'],
    [-1, 2, 1, 'undecided'],
    [-2, 2, 1, 'fails'],
    [-3, 2, 1, 'fails'],
  ])('gap %d, uncertainty %d, scale %d: %s', (gap, uncertainty, scale, verdict) => {
    expect(judge(gap, uncertainty, scale)).toBe(verdict);
  });
});
