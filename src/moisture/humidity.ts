/** What the two tests by relative humidity share: a closed place, read once the humidity in it has come to rest. */
import { basis } from '../core/basis.ts';
import type { Caution, CautionCode, Cited } from '../core/caution.ts';
import { SHARE, TIME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import type { InputPath } from '../core/InputError.ts';
import { PART_OR_WHOLE, POSITIVE, type Limits } from '../core/limits.ts';
import type { Quantity, Share, Time } from '../core/quantity.ts';
import { read, write } from '../core/read.ts';
import { readList, readObject } from '../core/readPlain.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { judgeWorst, worstAssessment, type Reading, type WorstAssessment } from './worst.ts';

/** A place that was closed and read. */
interface ClosedPlace {
  readonly relativeHumidity: Share;
  readonly closedFor: Time;
}

/** What is given of a test, whatever the place. */
interface HumidityTest<P extends ClosedPlace, U extends ShareUnit> extends Confidence {
  readonly equilibration: Time;
  readonly tests: readonly P[];
  readonly limit: Quantity<U>;
  readonly relativeHumidityError?: ReadingError<Share> | undefined;
}

/** What makes a method of it. */
interface HumidityMethod<P> {
  /** The method in the register of sources. */
  readonly method: Cited;
  readonly assumption?: string;
  /** What else went in. */
  readonly inputs?: object;
  readonly testsNeeded?: number;
  /** Cautions of the method itself. */
  readonly always: readonly Caution[];
  /** What makes a place read low. */
  readonly readsLow?: (place: P, path: InputPath) => readonly CautionCode[];
}

/** What a probe may be off by. */
const PROBE_ERROR: Limits = { above: -5e-324, below: 0.5000000001, words: ' from 0 % to 50 %' };

/** Judges humidities against the limit of the system: the highest governs, and one read too early decides nothing. */
export function assessHumidity<P extends ClosedPlace, U extends ShareUnit>(
  fn: string,
  given: HumidityTest<P, U>,
  { method, assumption, inputs, testsNeeded, always, readsLow }: HumidityMethod<P>,
): WorstAssessment<U> {
  const { equilibration, tests, limit, relativeHumidityError } = given;
  const longEnough_s = read(fn, 'equilibration', equilibration, TIME, POSITIVE) * (1 - 1e-12);
  const limitShare = read(fn, 'limit', limit, SHARE, PART_OR_WHOLE);
  const coverage = readCoverage(fn, given);
  const error = halfWidthOf(
    readError(fn, 'relativeHumidityError', relativeHumidityError, coverage, SHARE, PROBE_ERROR),
    coverage,
  );
  const readings = readList(fn, 'tests', tests, 1).map((test, i): Reading => {
    const path = ['tests', i];
    const place = readObject(fn, i, test, ['tests']);
    const value = read(fn, 'relativeHumidity', place.relativeHumidity, SHARE, PART_OR_WHOLE, path);
    const tooEarly = read(fn, 'closedFor', place.closedFor, TIME, POSITIVE, path) < longEnough_s;
    return {
      value,
      low: value - error,
      high: value + error,
      doubts: [
        ...(tooEarly ? (['equilibration-too-short'] as const) : []),
        ...(readsLow?.(place, path) ?? []),
      ],
      readsLow: !tooEarly,
    };
  });
  return worstAssessment({
    worst: judgeWorst(readings, limitShare, 1, testsNeeded ?? 1),
    readings,
    testsNeeded,
    limit: echo(limit),
    answer: (share) => write(fn, share, SHARE, limit.unit),
    base: limitShare,
    always,
    basis: [
      basis(
        'measured',
        `moisture.${fn}`,
        'highest relativeHumidity',
        method,
        { tests: readings.length, ...inputs, equilibration, limit, relativeHumidityError },
        assumption,
      ),
      ...uncertaintyBasis(`moisture.${fn}`, { relativeHumidityError }, given),
    ],
    method,
  });
}
