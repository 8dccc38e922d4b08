import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** A moment as ISO text with its offset from UTC, such as `2025-06-03T07:30:00-05:00`. */
export type Instant = string;

/** A moment in numbers. */
export interface BaseInstant {
  /** Milliseconds since 1970-01-01T00:00Z. */
  readonly epoch_ms: number;
  /** Minutes by which the clock on the wall is ahead of UTC. */
  readonly offset_min: number;
  /** The offset as it was written. */
  readonly offset: string;
}

const FORM = /^\d{4}-\d\d-(\d\d)T\d\d:\d\d(?::\d\d(?:\.\d{1,3})?)?(Z|([+-])(\d\d):(\d\d))$/;
/** The years 0 to 9999, which are written with four digits. */
const FIRST_MS = -62167219200000;
const LAST_MS = 253402300799000;

/** Reads a moment. Without an offset nobody could tell which it is, so it is refused. */
export function readInstant(
  fn: string,
  key: string | number,
  instant: Instant | undefined,
  path: InputPath = [],
): BaseInstant {
  const no = (code: 'missing' | 'wrong-type' | 'out-of-range') =>
    refuse(fn, code, [...path, key], 'a moment as 2025-06-03T07:30:00-05:00, with its offset', instant);
  if (typeof instant !== 'string') return no((instant as unknown) === undefined ? 'missing' : 'wrong-type');
  const match = FORM.exec(instant);
  const epoch_ms = Date.parse(instant);
  if (!match || Number.isNaN(epoch_ms)) return no('out-of-range');
  const [, day, offset = 'Z', sign, hours, minutes] = match;
  const offset_min = sign ? (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) : 0;
  // A day that the month does not have would otherwise roll over into the next.
  if (new Date(epoch_ms + offset_min * 60e3).getUTCDate() !== Number(day)) return no('out-of-range');
  return { epoch_ms, offset_min, offset };
}

/** The moment so many seconds later, with the same offset, to the whole second before it. */
export function laterBy(fn: string, from: BaseInstant, seconds: number): Instant {
  const wall_ms = Math.floor((from.epoch_ms + seconds * 1000) / 1000) * 1000 + from.offset_min * 60e3;
  if (!(wall_ms >= FIRST_MS && wall_ms <= LAST_MS))
    refuse(fn, 'too-large', [], 'over between the years 0 and 9999', seconds);
  return new Date(wall_ms).toISOString().slice(0, 19) + from.offset;
}
