/** A series of readings or forecast hours, read into columns of numbers. */
import { TIME } from '../core/dimensions.ts';
import { readInstant, type Instant } from '../core/instant.ts';
import type { Share, Temperature, Time } from '../core/quantity.ts';
import { read, readOptional, refuse } from '../core/read.ts';
import { readList, readObject } from '../core/readPlain.ts';
import { readCondition, roomTo, type BaseLimit } from './conditions.ts';
import { halfWidths, type BaseErrors } from './instruments.ts';
import { SENSITIVE_TIME } from './limits.ts';
import { MARGIN_SCALE, marginOf } from './margin.ts';
import { joined, notBelowZero, type Interval, type Span } from './spans.ts';

/** The climate at a time, read or forecast. */
export interface ClimateReading {
  /** When. */
  readonly at: Instant;
  /** Air temperature close to the floor. */
  readonly air: Temperature;
  /** Relative humidity of that air. */
  readonly relativeHumidity: Share;
  /** Temperature of the floor. */
  readonly surface: Temperature;
  /** Temperature of the material, where the product has a limit for it. */
  readonly material?: Temperature | undefined;
  /** How long a film stays sensitive to dew at the floor temperature of this reading. */
  readonly sensitiveFor?: Time | undefined;
}

/** Something that must hold, at every reading: the room to its limit, and how far that may be off either way. */
export interface Column {
  readonly room: Float64Array;
  readonly down: Float64Array;
  readonly up: Float64Array;
  /** Size of the numbers that were subtracted, for the round-off. */
  readonly scale: number;
}

/** A series in columns. */
export interface Series {
  readonly at: readonly Instant[];
  readonly ms: Float64Array;
  readonly offset_min: Float64Array;
  readonly surface_C: Float64Array;
  /** The margin over the dew point, in K. */
  readonly margin: Column;
  /** The room to each limit of the product, in their order. */
  readonly limits: readonly Column[];
  /** How many times the sensitive time has passed since the first reading. */
  readonly cured: Float64Array;
}

/** Reads a series. Readings that are not in order of time are refused. */
export function readSeries(
  fn: string,
  given: readonly ClimateReading[] | undefined,
  limits: readonly BaseLimit[],
  errors: BaseErrors,
  sensitiveFor: Time | undefined,
): Series {
  const readings = readList(fn, 'readings', given, 2);
  const n = readings.length;
  const column = (scale: number): Column => ({
    room: new Float64Array(n),
    down: new Float64Array(n),
    up: new Float64Array(n),
    scale,
  });
  const series = {
    at: new Array<Instant>(n),
    ms: new Float64Array(n),
    offset_min: new Float64Array(n),
    surface_C: new Float64Array(n),
    margin: column(MARGIN_SCALE),
    limits: limits.map((limit) => column(limit.scale)),
    cured: new Float64Array(n),
  };
  const { at, ms, offset_min, surface_C, margin, cured } = series;
  const always_s = readOptional(fn, 'sensitiveFor', sensitiveFor, TIME, SENSITIVE_TIME);
  const half = halfWidths(errors);
  let speedBefore = 0;
  for (let i = 0; i < n; i++) {
    const reading = readObject(fn, i, readings[i], ['readings']);
    const path = ['readings', i];
    const instant = readInstant(fn, 'at', reading.at, path);
    const before_ms = i > 0 ? (ms[i - 1] as number) : -Infinity;
    if (instant.ms <= before_ms) {
      refuse(fn, 'conflict', [...path, 'at'], 'after the reading before it', reading.at);
    }
    at[i] = reading.at;
    ms[i] = instant.ms;
    offset_min[i] = instant.offset_min;

    const air_C = readCondition(fn, 'air', reading, path);
    const humidity = readCondition(fn, 'relativeHumidity', reading, path);
    const floor_C = readCondition(fn, 'surface', reading, path);
    surface_C[i] = floor_C;
    const { margin_K, down_K, up_K } = marginOf(fn, air_C, humidity, floor_C, errors, path);
    margin.room[i] = margin_K;
    margin.down[i] = down_K;
    margin.up[i] = up_K;
    limits.forEach((limit, k) => {
      const column = series.limits[k] as Column;
      column.room[i] = roomTo(limit, readCondition(fn, limit.of, reading, path));
      column.down[i] = half[limit.of];
      column.up[i] = half[limit.of];
    });

    const own_s =
      always_s !== undefined && reading.sensitiveFor === undefined
        ? always_s
        : read(fn, 'sensitiveFor', reading.sensitiveFor, TIME, SENSITIVE_TIME, path);
    const speed = 1 / (own_s * 1000);
    if (i > 0) {
      cured[i] = (cured[i - 1] as number) + (instant.ms - before_ms) * ((speedBefore + speed) / 2);
    }
    speedBefore = speed;
  }
  return series;
}

/** Where there is at least this much room, with the instruments off against the floor. */
export function spansOf(
  intervals: readonly Interval[],
  { room, down, scale }: Column,
  least: number,
): Span[] {
  const worst = (i: number) => {
    const left = (room[i] as number) - (down[i] as number) - least;
    return Math.abs(left) <= 1e-12 * scale ? 0 : left;
  };
  return joined(intervals, (interval, i) => notBelowZero(interval, worst(i), worst(i + 1)));
}
