import { judge, type Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import { LENGTH, TIME, WORK_RATE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Length, Quantity, Time, WorkRate } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { LengthUnit, TimeUnit, WorkRateUnit } from '../core/unitCodes.ts';
import {
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** Input of {@link wetEdge}. */
export interface WetEdgeInput<
  T extends TimeUnit = TimeUnit,
  L extends LengthUnit = LengthUnit,
  R extends WorkRateUnit = WorkRateUnit,
> extends Confidence {
  /** Width of the front along which strip is laid beside strip. */
  readonly frontWidth: Length;
  /** Depth of one strip. */
  readonly stripDepth: Length;
  /** Area that is laid in a time. */
  readonly rate: WorkRate;
  /** What that may be off by, from strips timed before. Taken as exact where not given. */
  readonly rateError?: ReadingError<WorkRate> | undefined;
  /** How long the edge stays open at the temperature of the floor. */
  readonly openTime: Time;
  /** Time before the end of it by which the last tool must be through. None where not given. */
  readonly margin?: Time | undefined;
  /** Units of the answer. */
  readonly units: { readonly time: T; readonly length: L; readonly rate: R };
}

/** A wet edge judged, with what would keep it alive. */
export interface WetEdge<
  T extends TimeUnit = TimeUnit,
  L extends LengthUnit = LengthUnit,
  R extends WorkRateUnit = WorkRateUnit,
> extends Assessment<T> {
  /** Widest front that keeps its edge at this rate: a joint, or a taped line, may make it so. */
  readonly widestFront: Quantity<L>;
  /** Rate that keeps the edge of this front; `mixersNeeded` and hands follow from it. */
  readonly rateNeeded: Quantity<R>;
}

/**
 * Whether a strip is laid along the whole front before the strip beside it has closed, or leaves a lap mark.
 *
 * @formula
 * ```math
 * t = \frac{b \, d}{\dot A} \le t_o - t_r
 * ```
 * @units lengths, work rate, times; answers times, a length and a work rate.
 * @validRange lengths, rate and openTime above 0; margin 0 or more and below openTime; rateError 0 or more, as a bound
 * below the rate.
 * @accuracy Exact up to round-off; as good as the pace. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Front, strip, rate, open time and the units wanted.
 * @returns The verdict on the time along the front, the widest front and the rate needed.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const edge = batch.wetEdge({
 *   frontWidth: { value: 9, unit: 'm' },
 *   stripDepth: { value: 1, unit: 'm' },
 *   rate: { value: 1.5, unit: 'm2/min' },
 *   openTime: { value: 7, unit: 'min' },
 *   margin: { value: 2, unit: 'min' },
 *   units: { time: 'min', length: 'm', rate: 'm2/min' },
 * });
 * [edge.verdict, edge.measured.value, edge.widestFront.value]; // => ['fails', 6, 7.5]
 * ```
 */
export function wetEdge<T extends TimeUnit, L extends LengthUnit, R extends WorkRateUnit>(
  input: WetEdgeInput<T, L, R>,
): WetEdge<T, L, R> {
  const fn = 'wetEdge';
  const given = fields(fn, input);
  const { frontWidth, stripDepth, rate, rateError, openTime, margin } = given;
  const units = readObject(fn, 'units', given.units);
  const width_m = read(fn, 'frontWidth', frontWidth, LENGTH, POSITIVE);
  const depth_m = read(fn, 'stripDepth', stripDepth, LENGTH, POSITIVE);
  const rate_m2PerS = read(fn, 'rate', rate, WORK_RATE, POSITIVE);
  const open_s = read(fn, 'openTime', openTime, TIME, POSITIVE);
  const limit_s = open_s - readOr(0, fn, 'margin', margin, TIME, NOT_NEGATIVE);
  if (!(limit_s > 0)) refuse(fn, 'conflict', ['margin'], 'shorter than openTime', margin);
  const strip_s = (width_m * depth_m) / rate_m2PerS;
  const time = (seconds: number) => write(fn, seconds, TIME, units.time, ['units', 'time']);
  const coverage = readCoverage(fn, given);
  const rateOff = readError(fn, 'rateError', rateError, coverage, WORK_RATE, NOT_NEGATIVE);
  if (rateOff.bound >= rate_m2PerS) refuse(fn, 'conflict', ['rateError'], 'smaller than the rate', rateError);
  // A slower crew counts against a strip that is in time, a faster one for a strip that is not.
  const towards = strip_s <= limit_s ? -rateOff.bound : rateOff.bound;
  const off_s =
    coverage?.expanded([strip_s / rate_m2PerS, rateOff]) ??
    Math.abs((width_m * depth_m) / (rate_m2PerS + towards) - strip_s);
  const verdict = judge(limit_s - strip_s, off_s, limit_s);
  const strip = time(strip_s);
  const limit = time(limit_s);
  const widest_m = (limit_s * rate_m2PerS) / depth_m;
  const widestFront = write(fn, widest_m, LENGTH, units.length, ['units', 'length']);
  const rateNeeded = write(fn, (width_m * depth_m) / limit_s, WORK_RATE, units.rate, ['units', 'rate']);
  const params = { strip, limit, widestFront, rateNeeded };
  return {
    verdict,
    measured: strip,
    limit,
    gap: time(limit_s - strip_s),
    ...(off_s > 0 && { uncertainty: time(off_s) }),
    widestFront,
    rateNeeded,
    cautions:
      verdict === 'meets'
        ? []
        : [{ code: 'wet-edge-closes', severity: 'caution', params, source: 'common-practice' }],
    basis: [
      basis('measured', 'batch.wetEdge', 'frontWidth · stripDepth / rate', 'common-practice', {
        frontWidth,
        stripDepth,
        rate,
        openTime,
        margin,
      }),
      ...uncertaintyBasis('batch.wetEdge', { rateError }, given),
    ],
  };
}
