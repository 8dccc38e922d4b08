import { across, type AcrossInput } from '../core/across.ts';
import type { Values } from '../core/acrossLikely.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, DENSITY, MASS, SPREAD_RATE, VOLUME } from '../core/dimensions.ts';
import { inside } from '../core/inside.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Density, Mass, Volume } from '../core/quantity.ts';
import type { Range, Ranged } from '../core/range.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import type { SpreadRateUnit } from '../core/unitCodes.ts';

/** Input of {@link testSquare}. Give `mixed`, or `mixedMass` with `density`. */
export interface TestSquareInput<U extends SpreadRateUnit = SpreadRateUnit> {
  /** Area that was covered. */
  readonly area: Ranged<Area>;
  /** Volume that was mixed. */
  readonly mixed?: Ranged<Volume> | undefined;
  /** Mass that was mixed, from the scale. */
  readonly mixedMass?: Ranged<Mass> | undefined;
  /** Density of the mix; goes with `mixedMass`. */
  readonly density?: Ranged<Density> | undefined;
  /** Volume that was left over and not spread. None where not given. */
  readonly leftOver?: Ranged<Volume> | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** What a test square says of its floor. */
export interface TestSquare<U extends SpreadRateUnit = SpreadRateUnit> {
  /** As-applied rate, as it goes into a plan. */
  readonly spreadRate: Range<U>;
  /** The reading whose error moves the rate most; nothing where no reading is a range. */
  readonly driver?: string | undefined;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

type Readings = Omit<TestSquareInput, 'unit'>;

/** How the rate moves with each reading. */
const DIRECTIONS = { area: '+', mixed: '-', mixedMass: '-', density: '+', leftOver: '+' } as const;

/**
 * The spread rate of this floor, from a mock-up square on it: the number that a plan should rest on, because it holds
 * what the floor drinks.
 *
 * Readings may be ranges, for the error of tape and scale; the rate is then one too.
 *
 * @formula
 * ```math
 * S = \frac{A}{V - V_l} \qquad V = \frac{m}{\rho}
 * ```
 * @units area, volumes or mass and density, each a value or a range; answers spread rate.
 * @validRange area, mixed, mixedMass and density above 0; leftOver 0 or more and less than what was mixed.
 * @accuracy Exact up to round-off: relative error below 1e-15. A scale of 10 g on 4 kg is worth 0.25 %, the edge of the
 * square about 2 %.
 * @source common-practice
 * @param input - Area, what was mixed, what was left, and the unit wanted.
 * @returns The as-applied spread rate and what its error comes from.
 * @throws An `InputError` that names the field, or `conflict` where more is left than was mixed.
 * @example
 * ```ts
 * import { between } from 'coating-math/core';
 * import * as film from 'coating-math/film';
 *
 * const { spreadRate } = film.testSquare({
 *   area: between(98, 102, 'ft2', { likely: 100 }),
 *   mixed: { value: 20, unit: 'usfloz' },
 *   leftOver: { value: 1, unit: 'usfloz' },
 *   unit: 'ft2/usgal',
 * });
 * [spreadRate.low.value, spreadRate.likely?.value, spreadRate.high.value].map((v) => v?.toFixed(0));
 * // => ['660', '674', '687']
 * ```
 */
export function testSquare<U extends SpreadRateUnit>(input: TestSquareInput<U>): TestSquare<U> {
  const { mixed, mixedMass, density, unit } = fields('testSquare', input);
  if (mixed !== undefined && mixedMass !== undefined) {
    refuse('testSquare', 'conflict', ['mixedMass'], 'nothing beside mixed', mixedMass);
  }
  if (mixed !== undefined && density !== undefined) {
    refuse('testSquare', 'conflict', ['density'], 'nothing without mixedMass', density);
  }
  const asApplied = monotone(DIRECTIONS, (values: Values<Readings>) =>
    write('testSquare', rateOf(values), SPREAD_RATE, unit),
  );
  const { low, likely, high, driver } = inside('testSquare', [], () =>
    across(asApplied, input as AcrossInput<Values<Readings>>),
  );
  return {
    spreadRate: { low, ...(likely && { likely }), high },
    ...(driver && { driver }),
    cautions: [
      { code: 'square-stands-for-its-place', severity: 'note', params: {}, source: 'common-practice' },
    ],
    basis: [basis('spreadRate', 'film.testSquare', 'S = A / (V − Vl)', 'common-practice', input)],
  };
}

/** The rate at one value of each reading, in m²/m³. */
function rateOf({ area, mixed, mixedMass, density, leftOver }: Values<Readings>): number {
  const area_m2 = read('testSquare', 'area', area, AREA, POSITIVE);
  const mixed_m3 =
    mixedMass === undefined
      ? read('testSquare', 'mixed', mixed, VOLUME, POSITIVE)
      : read('testSquare', 'mixedMass', mixedMass, MASS, POSITIVE) /
        read('testSquare', 'density', density, DENSITY, POSITIVE);
  const left_m3 = readOr(0, 'testSquare', 'leftOver', leftOver, VOLUME, NOT_NEGATIVE);
  if (left_m3 >= mixed_m3 * (1 - 1e-12))
    refuse('testSquare', 'conflict', ['leftOver'], 'less than what was mixed', leftOver);
  return area_m2 / (mixed_m3 - left_m3);
}
