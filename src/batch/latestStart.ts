import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import { TIME } from '../core/dimensions.ts';
import { laterBy, readInstant, type Instant } from '../core/instant.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Time } from '../core/quantity.ts';
import { fields, read, readOr } from '../core/read.ts';

/** Input of {@link latestStart}. */
export interface LatestStartInput {
  /** Moment by which the last batch must be down. */
  readonly end: Instant;
  /** From the start of the first batch until the last is down: the duration of the clock. */
  readonly duration: Time;
  /** Time kept back. None where not given. */
  readonly reserve?: Time | undefined;
}

/** Answer of {@link latestStart}. */
export interface LatestStart {
  /** Latest moment at which the first batch may be begun, to the whole second before it. */
  readonly start: Instant;
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/**
 * When the first batch must be begun at the latest, so that the last is down in time.
 *
 * @formula
 * ```math
 * t_0 = t_\mathrm{end} - d - r
 * ```
 * @units moment, times; answers moment.
 * @validRange end with its offset from UTC; duration above 0; reserve 0 or more.
 * @accuracy To the whole second before. No published figure: it is a subtraction.
 * @source definition
 * @param input - End, duration and reserve.
 * @returns The latest start, with the offset of the end.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * batch.latestStart({
 *   end: '2025-10-14T18:00:00+02:00',
 *   duration: { value: 3.25, unit: 'h' },
 *   reserve: { value: 30, unit: 'min' },
 * }).start; // => '2025-10-14T14:15:00+02:00'
 * ```
 */
export function latestStart(input: LatestStartInput): LatestStart {
  const { end, duration, reserve } = fields('latestStart', input);
  const last = readInstant('latestStart', 'end', end);
  const duration_s = read('latestStart', 'duration', duration, TIME, POSITIVE);
  const reserve_s = readOr(0, 'latestStart', 'reserve', reserve, TIME, NOT_NEGATIVE);
  return {
    start: laterBy('latestStart', last, -duration_s - reserve_s),
    basis: [
      basis('start', 'batch.latestStart', 'end − duration − reserve', 'definition', {
        end,
        duration,
        reserve,
      }),
    ],
  };
}
