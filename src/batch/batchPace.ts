import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import { AREA, TIME, WORK_RATE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Area, Quantity, Time, WorkRate } from '../core/quantity.ts';
import { fields, read, readOptional, write } from '../core/read.ts';
import { readCount, readObject } from '../core/readPlain.ts';
import type { TimeUnit, WorkRateUnit } from '../core/unitCodes.ts';
import { countUp, staggerOf, type PacedBy } from './stagger.ts';

/** Input of {@link batchPace}. */
export interface BatchPaceInput<T extends TimeUnit = TimeUnit, R extends WorkRateUnit = WorkRateUnit> {
  /** Area that one batch covers. */
  readonly batchArea: Area;
  /** Time to measure and mix one batch. */
  readonly mixTime: Time;
  /** Time to carry it to the edge and pour it. */
  readonly carryTime: Time;
  /** How many batches can be mixed at the same time. */
  readonly mixers: number;
  /** Area that the hands on one batch place in a time. Taken to keep up with the mixers where not given. */
  readonly placingRate?: WorkRate | undefined;
  /** How many batches are placed at the same time; one where not given. */
  readonly crews?: number | undefined;
  /** Units of the answer. */
  readonly units: { readonly time: T; readonly rate: R };
}

/** Answer of {@link batchPace}. */
export interface BatchPace<T extends TimeUnit = TimeUnit, R extends WorkRateUnit = WorkRateUnit> {
  /** A batch is begun every so often. */
  readonly stagger: Quantity<T>;
  /** Whose pace that is; the other waits. */
  readonly pacedBy: PacedBy;
  /** Area that is laid in a time at that pace. */
  readonly rate: Quantity<R>;
  /** Mixers with which mixing would keep up with placing; as many as there are where no placing rate was given. */
  readonly mixersToKeepUp: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How often a batch can be begun, so that no two pails are ready at once, and how fast the floor then grows.
 *
 * @formula
 * ```math
 * s = \max\left( \frac{t_m + t_c}{m},\ \frac{A_b}{R\,k} \right) \qquad \dot A = \frac{A_b}{s}
 * ```
 * @units area, times, work rate, numbers; answers time, work rate and a number.
 * @validRange batchArea, mixTime and placingRate above 0; carryTime 0 or more; mixers and crews whole, 1 or more.
 * @accuracy Exact up to round-off; as good as the pace. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Batch, times, crew and the units wanted.
 * @returns The stagger, whose pace it is, the area laid in a time, and the mixers it takes.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const pace = batch.batchPace({
 *   batchArea: { value: 12, unit: 'm2' },
 *   mixTime: { value: 3, unit: 'min' },
 *   carryTime: { value: 1, unit: 'min' },
 *   mixers: 1,
 *   placingRate: { value: 4, unit: 'm2/min' },
 *   units: { time: 'min', rate: 'm2/min' },
 * });
 * [pace.stagger.value, pace.pacedBy, pace.rate.value, pace.mixersToKeepUp]; // => [4, 'mixers', 3, 2]
 * ```
 */
export function batchPace<T extends TimeUnit, R extends WorkRateUnit>(
  input: BatchPaceInput<T, R>,
): BatchPace<T, R> {
  const fn = 'batchPace';
  const given = fields(fn, input);
  const { batchArea, mixTime, carryTime, placingRate } = given;
  const units = readObject(fn, 'units', given.units);
  const area_m2 = read(fn, 'batchArea', batchArea, AREA, POSITIVE);
  const mix_s = read(fn, 'mixTime', mixTime, TIME, POSITIVE);
  const carry_s = read(fn, 'carryTime', carryTime, TIME, NOT_NEGATIVE);
  const mixers = readCount(fn, 'mixers', given.mixers);
  const rate = readOptional(fn, 'placingRate', placingRate, WORK_RATE, POSITIVE) ?? Infinity;
  const crews = given.crews === undefined ? 1 : readCount(fn, 'crews', given.crews);
  const mixer_s = mix_s + carry_s;
  const { stagger_s, pacedBy } = staggerOf(mixer_s / mixers, area_m2 / rate / crews);
  const keepUp = rate === Infinity ? mixers : countUp(fn, (mixer_s * rate * crews) / area_m2);
  return {
    stagger: write(fn, stagger_s, TIME, units.time, ['units', 'time']),
    pacedBy,
    rate: write(fn, area_m2 / stagger_s, WORK_RATE, units.rate, ['units', 'rate']),
    mixersToKeepUp: keepUp,
    basis: [
      basis(
        'stagger',
        'batch.batchPace',
        'max((mixTime + carryTime) / mixers, batchArea / (placingRate · crews))',
        'common-practice',
        { batchArea, mixTime, carryTime, mixers, placingRate, crews },
      ),
    ],
  };
}
