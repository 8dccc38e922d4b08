import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { Area } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { COUNT_RULES, testsFor, type MoistureMethod } from './count.ts';
import { testNotes } from './worst.ts';

/** Input of {@link testCount}. */
export interface TestCountInput {
  /** How the slab is tested. */
  readonly method: MoistureMethod;
  /** Area of the floor, all rooms that share one slab and one history. */
  readonly floorArea: Area;
}

/** How many tests a floor asks for. */
export interface TestCount {
  /** Tests, whole. */
  readonly count: number;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How many moisture or pH tests a floor of this size asks for.
 *
 * @formula
 * ```math
 * n = n_1 + n_2 \left\lceil \frac{\max(0, A - A_1)}{A_1} \right\rceil
 * ```
 * @units area; answers a count.
 * @validRange floorArea above 0 and up to 1e9 m². The areas are those of the US methods, in square feet.
 * @accuracy Exact: an area of 12 equal digits is equal, so that 2000 ft² ask for 4 and not for 5, in any unit.
 * @source california-dmv-flooring, astm-f1869, astm-f2170, astm-d4263, astm-d4262
 * @param input - Method and area.
 * @returns The number of tests with its rule.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const floor = { floorArea: { value: 5964, unit: 'ft2' } } as const;
 * moisture.testCount({ ...floor, method: 'in-slab humidity' }).count; // => 8
 * moisture.testCount({ ...floor, method: 'alkalinity' }).count; // => 24
 * ```
 */
export function testCount(input: TestCountInput): TestCount {
  const { method, floorArea } = fields('testCount', input);
  const { words, source } = COUNT_RULES[readKey('testCount', 'method', method, COUNT_RULES)];
  const count = testsFor('testCount', method, floorArea);
  return {
    count,
    cautions: testNotes({ source }),
    basis: [
      basis(
        'count',
        'moisture.testCount',
        words,
        source,
        { method, floorArea },
        'a part of an area counts as a whole one',
      ),
    ],
  };
}
