import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** A moment as text: ISO 8601 date, time of day and offset from UTC, such as `2025-04-07T16:00:00+02:00`. */
export type Instant = string;

/** A moment in numbers. */
export interface BaseInstant {
  /** Milliseconds since 1970 UTC. */
  readonly ms: number;
  /** Offset from UTC in minutes, kept for the way back. */
  readonly offset_min: number;
}

const FORM =
  /^([1-9]\d{3})-(0[1-9]|1[0-2])-(\d\d)T([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d)(?:\.(\d{1,3}))?)?(?:Z|([+-])(0\d|1[0-4]):([0-5]\d))$/;

/** Reads the instant in the field `key`. A day that the calendar does not have and a time without offset are refused. */
export function readInstant(
  fn: string,
  key: string | number,
  given: Instant | undefined,
  path: InputPath = [],
): BaseInstant {
  const at = [...path, key];
  const expected = 'an instant such as 2025-04-07T16:00:00+02:00';
  if (typeof given !== 'string') {
    return refuse(fn, (given as unknown) === undefined ? 'missing' : 'wrong-type', at, expected, given);
  }
  const [
    ,
    year,
    month,
    day,
    hour,
    minute,
    second = '0',
    fraction = '',
    sign,
    offsetHour = '0',
    offsetMinute = '0',
  ] = FORM.exec(given) ?? [];
  const midnight = Date.UTC(Number(year), Number(month) - 1, Number(day));
  // Date.UTC counts 30 February on into March.
  if (!(new Date(midnight).getUTCDate() === Number(day)))
    return refuse(fn, 'out-of-range', at, expected, given);
  const offset_min = (sign === '-' ? -1 : 1) * (Number(offsetHour) * 60 + Number(offsetMinute));
  const time_min = Number(hour) * 60 + Number(minute) - offset_min;
  const ms = midnight + time_min * 60_000 + Number(second) * 1000 + Number(fraction.padEnd(3, '0'));
  return { ms, offset_min };
}

/** The instant as text, to the millisecond; without offset from UTC it ends in Z. */
export function writeInstant({ ms, offset_min }: BaseInstant): Instant {
  const local = new Date(ms + offset_min * 60_000).toISOString();
  return local.slice(0, local.endsWith('.000Z') ? SECONDS : MILLISECONDS) + offsetText(offset_min);
}

/** How long a date and time of day is, to the second and to the millisecond. */
const SECONDS = 19;
const MILLISECONDS = 23;

/** An offset from UTC as it ends an instant. */
function offsetText(offset_min: number): string {
  if (offset_min === 0) return 'Z';
  const away = Math.abs(offset_min);
  return `${offset_min < 0 ? '-' : '+'}${twoDigits(Math.floor(away / 60))}:${twoDigits(away % 60)}`;
}

function twoDigits(n: number): string {
  return String(n).padStart(2, '0');
}

/** The moments that are written with four digits of a year. */
const FIRST_MS = -62135596800000;
const LAST_MS = 253402300799000;

/** The moment so many seconds later, with the same offset, to the whole second before it. */
export function laterBy(fn: string, from: BaseInstant, seconds: number): Instant {
  const ms = Math.floor(from.ms / 1000 + seconds) * 1000;
  if (!(ms >= FIRST_MS && ms + from.offset_min * 60_000 <= LAST_MS)) {
    refuse(fn, 'too-large', [], 'over before the year 10000', seconds);
  }
  return writeInstant({ ms, offset_min: from.offset_min });
}
