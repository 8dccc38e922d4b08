import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { FLOW, SHARE, TIME, VOLUME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { hazard } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Flow, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { readMixingFactor, WITHIN } from './limits.ts';

/** Input of {@link purgeTime}. */
export interface PurgeTimeInput<U extends TimeUnit = TimeUnit> {
  /** Volume of the room. */
  readonly room: Volume;
  /** Fresh air that goes through it. */
  readonly airflow: Flow;
  /** How many times the air of perfect mixing the room takes: 1 is perfect, 3 to 10 are common. */
  readonly mixingFactor: number;
  /** Vapour in the air at the start, by volume. */
  readonly from: Share;
  /** Vapour in the air at the end, by volume. */
  readonly to: Share;
  /** Unit of the time. */
  readonly unit: U;
}

/** Answer of {@link purgeTime}. */
export interface PurgeTime<U extends TimeUnit = TimeUnit> {
  /** Time until the vapour is down, provided that nothing evaporates any more. */
  readonly time: Quantity<U>;
  /** How often in an hour the airflow fills the room. No measure of dilution: that takes the rate of evaporation. */
  readonly airChangesPerHour: number;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How long fresh air takes to thin out the vapour in a room in which nothing evaporates any more.
 *
 * @formula
 * ```math
 * t = \frac{K \, V}{Q} \, \ln\frac{C_1}{C_2} \qquad n = \frac{Q}{V}
 * ```
 * @units volume, flow, shares, a plain number; answers time, and a number per hour.
 * @validRange room and airflow above 0; from and to above 0 % and below 100 %, to no more than from; mixingFactor 1 or more.
 * @accuracy Exact up to round-off for a mixed room; no better than the mixing factor. Wet film goes on evaporating.
 * No published figure was found worked out: the equation was read, the rows are computed with it.
 * @source room-purge, abih-equations
 * @param input - Room, air, the concentrations and the unit wanted.
 * @returns The time in `input.unit`, not rounded, the air changes, and the caution.
 * @throws An `InputError` that names the field; `conflict` where the vapour would have to grow.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const hall = safety.purgeTime({
 *   room: { value: 300, unit: 'm3' },
 *   airflow: { value: 1800, unit: 'm3/h' },
 *   mixingFactor: 3,
 *   from: { value: 1000, unit: 'ppm' },
 *   to: { value: 100, unit: 'ppm' },
 *   unit: 'min',
 * });
 * [hall.time.value.toFixed(1), hall.airChangesPerHour]; // => ['69.1', 6]
 * ```
 */
export function purgeTime<U extends TimeUnit>(input: PurgeTimeInput<U>): PurgeTime<U> {
  const fn = 'purgeTime';
  const { room, airflow, mixingFactor, from, to, unit } = fields(fn, input);
  const room_m3 = read(fn, 'room', room, VOLUME, POSITIVE);
  const airflow_m3PerS = read(fn, 'airflow', airflow, FLOW, POSITIVE);
  const factor = readMixingFactor(fn, mixingFactor);
  const first = read(fn, 'from', from, SHARE, WITHIN);
  const last = read(fn, 'to', to, SHARE, WITHIN);
  if (last > first * (1 + 1e-12)) refuse(fn, 'conflict', ['to'], 'no more than from', to);
  const filling_s = room_m3 / airflow_m3PerS;
  const time = write(fn, factor * filling_s * Math.log(Math.max(1, first / last)), TIME, unit);
  const changes = 3600 / filling_s;
  if (!Number.isFinite(changes)) refuse(fn, 'too-large', ['airflow'], 'finite air changes', airflow);
  return {
    time,
    airChangesPerHour: changes,
    cautions: [hazard('purge-is-no-measurement', 'room-purge', { time, to: echo(to) })],
    basis: [
      basis('time', 'safety.purgeTime', 'mixingFactor · room / airflow · ln(from / to)', 'room-purge', {
        room,
        airflow,
        mixingFactor,
        from,
        to,
      }),
    ],
  };
}
