import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, TIME, WORK_RATE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Area, Quantity, Time, WorkRate } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import { readObjects, readName } from '../core/readPlain.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** A line at which the work can stop: a joint, a door, a steel edge. */
export interface StopLine {
  /** What and where it is. */
  readonly name: string;
  /** Area from the stop before it, or from the start, to this one. */
  readonly area: Area;
}

/** Input of {@link stopPoint}. */
export interface StopPointInput<U extends AreaUnit = AreaUnit> {
  /** Time left: until dew, until the end of the shift, until the doors open. */
  readonly timeLeft: Time;
  /** Time kept back. None where not given. */
  readonly reserve?: Time | undefined;
  /** Area that is laid in a time. */
  readonly rate: WorkRate;
  /** The lines at which the work can stop, in working order. */
  readonly stops: readonly StopLine[];
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link stopPoint}. */
export interface StopPoint<U extends AreaUnit = AreaUnit> {
  /** Area that can be laid in the time. */
  readonly reach: Quantity<U>;
  /** Where to stop; not there where no line lies within reach. */
  readonly stop?: string | undefined;
  /** Area up to the stop; 0 where there is none. */
  readonly area: Quantity<U>;
  /** Area that could be laid beyond it, too little for the next line. */
  readonly spare: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * At which joint or door to stop before the time runs out, so that the day ends on a line and not in the middle.
 *
 * @formula
 * ```math
 * A = (t - t_r) \, \dot A
 * ```
 * @units times, work rate, areas; answers areas.
 * @validRange timeLeft, rate and areas above 0; reserve 0 or more and below timeLeft.
 * @accuracy Exact up to round-off; as good as the pace. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Time, rate, lines and the unit wanted.
 * @returns What can be laid, the last line within it, and what is to spare.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const stop = batch.stopPoint({
 *   timeLeft: { value: 3, unit: 'h' },
 *   rate: { value: 100, unit: 'm2/h' },
 *   stops: [
 *     { name: 'saw cut 1', area: { value: 120, unit: 'm2' } },
 *     { name: 'saw cut 2', area: { value: 120, unit: 'm2' } },
 *     { name: 'door', area: { value: 80, unit: 'm2' } },
 *   ],
 *   unit: 'm2',
 * });
 * [stop.stop, stop.area.value, stop.spare.value]; // => ['saw cut 2', 240, 60]
 * ```
 */
export function stopPoint<U extends AreaUnit>(input: StopPointInput<U>): StopPoint<U> {
  const fn = 'stopPoint';
  const { timeLeft, reserve, rate, stops, unit } = fields(fn, input);
  const left_s = read(fn, 'timeLeft', timeLeft, TIME, POSITIVE);
  const reserve_s = readOr(0, fn, 'reserve', reserve, TIME, NOT_NEGATIVE);
  if (reserve_s >= left_s) refuse(fn, 'conflict', ['reserve'], 'shorter than timeLeft', reserve);
  const reach_m2 = (left_s - reserve_s) * read(fn, 'rate', rate, WORK_RATE, POSITIVE);
  let upTo_m2 = 0;
  const lines = readObjects(fn, 'stops', stops, 1).map(({ name, area }, i) => {
    upTo_m2 += read(fn, 'area', area, AREA, POSITIVE, ['stops', i]);
    return { name: readName(fn, 'name', name, ['stops', i]), upTo_m2 };
  });
  const last = lines.filter((line) => line.upTo_m2 <= reach_m2 * (1 + 1e-12)).at(-1);
  const area_m2 = last?.upTo_m2 ?? 0;
  const areaOf = (m2: number) => write(fn, m2, AREA, unit);
  const reach = areaOf(reach_m2);
  return {
    reach,
    ...(last && { stop: last.name }),
    area: areaOf(area_m2),
    spare: areaOf(Math.max(0, reach_m2 - area_m2)),
    cautions: last
      ? []
      : [{ code: 'no-stop-in-reach', severity: 'caution', params: { reach }, source: 'common-practice' }],
    basis: [
      basis('reach', 'batch.stopPoint', '(timeLeft − reserve) · rate', 'common-practice', {
        timeLeft,
        reserve,
        rate,
        stops: stops.map(({ name, area }) => ({ name, area })),
      }),
    ],
  };
}
