import { basis } from '../core/basis.ts';
import type { Caution } from '../core/caution.ts';
import { AREA, MASS, TIME, VAPOUR_EMISSION } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { TEST_DUST } from '../core/hazards.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Area, Mass, Quantity, Time } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readList, readObject } from '../core/readPlain.ts';
import type { VapourEmissionUnit } from '../core/unitCodes.ts';
import {
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { testsFor } from './count.ts';
import { emissionOf } from './emission.ts';
import { judgeWorst, testNotes, worstAssessment, type Reading, type WorstAssessment } from './worst.ts';

const METHOD = { source: 'astm-f1869' } as const;
/** What stands in for a service climate that is not to be had, and where a dish stands. */
const CONDITIONS: Caution = {
  code: 'dish-conditions',
  severity: 'note',
  params: {
    air: { value: 75, unit: 'degF' },
    airEitherWay: { value: 10, unit: 'deltaF' },
    humidity: { value: 50, unit: '%' },
    humidityEitherWay: { value: 10, unit: '%' },
    heldFor: { value: 48, unit: 'h' },
    side: { value: 20, unit: 'in' },
    openFor: { value: 24, unit: 'h' },
  },
  source: 'astm-f1869',
  status: 'memory',
};

/** One dish of calcium chloride under its dome. */
export interface CalciumChlorideDish {
  /** What the dish gained. */
  readonly gain: Mass;
  /** Concrete under the dome without the dish, see `exposedArea`. */
  readonly exposedArea: Area;
  /** Time under the dome. */
  readonly exposure: Time;
}

/** Input of {@link calciumChlorideTest}. */
export interface CalciumChlorideTestInput<
  U extends VapourEmissionUnit = VapourEmissionUnit,
> extends Confidence {
  /** Area of the floor that the tests stand for. */
  readonly floorArea: Area;
  /** All tests of the floor. */
  readonly tests: readonly CalciumChlorideDish[];
  /** Highest emission that the instructions of the system allow. */
  readonly limit: Quantity<U>;
  /** What the gain may be off by, from the step of the balance. */
  readonly gainError?: ReadingError<Mass> | undefined;
  /** What the exposed area may be off by. */
  readonly exposedAreaError?: ReadingError<Area> | undefined;
  /** What the exposure may be off by. */
  readonly exposureError?: ReadingError<Time> | undefined;
}

/** The window of 60 to 72 h, with room for round-off. */
const SHORTEST_S = 215_999.999_999;
const LONGEST_S = 259_200.000_001;

/**
 * Whether the vapour that leaves the slab is within what the system allows, by dishes of calcium chloride.
 *
 * The highest dish governs. A dish that stood outside the window of 60 to 72 h decides nothing; too few dishes never
 * make a floor meet its limit.
 *
 * @formula
 * ```math
 * \max_i \frac{\Delta m_i}{A_i \, t_i} \le E_{limit}
 * ```
 * @units areas, masses, times, mass per area and time; answers mass per area and time.
 * @validRange floorArea up to 1e9 m²; gains 0 or more; areas and exposures above 0 and above their errors; limit above
 * 0.
 * @accuracy Exact. A reading exactly on the limit meets it; errors are taken as all in one direction at once, or with
 * `confidence` propagated by the GUM.
 * @source astm-f1869, california-dmv-flooring
 * @param input - Floor, dishes, the limit of the system and what the readings may be off by.
 * @returns The verdict with the worst emission, in the unit of the limit.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const dish = (grams: number) => ({
 *   gain: { value: grams, unit: 'g' } as const,
 *   exposedArea: { value: 64.06, unit: 'in2' } as const,
 *   exposure: { value: 66, unit: 'h' } as const,
 * });
 * const slab = moisture.calciumChlorideTest({
 *   floorArea: { value: 900, unit: 'ft2' },
 *   tests: [dish(1.2), dish(2.1), dish(1.4)],
 *   limit: { value: 3, unit: 'lb/1000ft2/24h' },
 * });
 * [slab.verdict, slab.governing, slab.measured.value.toFixed(2)]; // => ['fails', 1, '3.78']
 * ```
 */
export function calciumChlorideTest<U extends VapourEmissionUnit>(
  input: CalciumChlorideTestInput<U>,
): WorstAssessment<U> {
  const fn = 'calciumChlorideTest';
  const { floorArea, tests, limit, gainError, exposedAreaError, exposureError } = fields(fn, input);
  const testsNeeded = testsFor(fn, 'calcium chloride', floorArea);
  const limit_gm2d = read(fn, 'limit', limit, VAPOUR_EMISSION, POSITIVE);
  const coverage = readCoverage(fn, input);
  const gainOff = readError(fn, 'gainError', gainError, coverage, MASS, NOT_NEGATIVE);
  const areaOff = readError(fn, 'exposedAreaError', exposedAreaError, coverage, AREA, NOT_NEGATIVE);
  const timeOff = readError(fn, 'exposureError', exposureError, coverage, TIME, NOT_NEGATIVE);

  const readings = readList(fn, 'tests', tests, 1).map((test, i): Reading => {
    const path = ['tests', i];
    const dish = readObject(fn, i, test, ['tests']);
    const gain_kg = read(fn, 'gain', dish.gain, MASS, NOT_NEGATIVE, path);
    const area_m2 = read(fn, 'exposedArea', dish.exposedArea, AREA, POSITIVE, path);
    const time_s = read(fn, 'exposure', dish.exposure, TIME, POSITIVE, path);
    if (areaOff.bound >= area_m2) {
      refuse(fn, 'conflict', ['exposedAreaError'], 'smaller than every exposed area', exposedAreaError);
    }
    if (timeOff.bound >= time_s) {
      refuse(fn, 'conflict', ['exposureError'], 'smaller than every exposure', exposureError);
    }
    const inWindow = time_s >= SHORTEST_S && time_s <= LONGEST_S;
    const value = emissionOf(gain_kg, area_m2, time_s);
    const off = coverage?.expanded(
      [emissionOf(1, area_m2, time_s), gainOff],
      [value / area_m2, areaOff],
      [value / time_s, timeOff],
    );
    const ends =
      off === undefined
        ? {
            low: emissionOf(
              Math.max(0, gain_kg - gainOff.bound),
              area_m2 + areaOff.bound,
              time_s + timeOff.bound,
            ),
            high: emissionOf(gain_kg + gainOff.bound, area_m2 - areaOff.bound, time_s - timeOff.bound),
          }
        : { low: value - off, high: value + off };
    return { value, ...ends, doubts: inWindow ? [] : ['exposure-outside-window'] };
  });
  const worst = judgeWorst(readings, limit_gm2d, limit_gm2d, testsNeeded);
  return worstAssessment({
    worst,
    readings,
    testsNeeded,
    limit: echo(limit),
    answer: (value) => write(fn, value, VAPOUR_EMISSION, limit.unit),
    base: limit_gm2d,
    always: [...testNotes(METHOD), TEST_DUST, CONDITIONS],
    method: METHOD,
    basis: [
      basis(
        'measured',
        `moisture.${fn}`,
        'highest of gain / (exposedArea · exposure)',
        METHOD,
        { tests: readings.length, floorArea, limit, gainError, exposedAreaError, exposureError },
        'window of 60 to 72 h',
      ),
      ...uncertaintyBasis(`moisture.${fn}`, { gainError, exposedAreaError, exposureError }, input),
    ],
  });
}
