/** What the two tests by relative humidity share: reading them, and answering in the unit of the limit. */
import { SHARE } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import type { InputPath } from '../core/InputError.ts';
import { PART_OR_WHOLE, type Limits } from '../core/limits.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { read, readOr, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { judgeWorst, worstAssessment, type Reading, type WorstAssessment, type WorstWords } from './worst.ts';

/** What a probe may be off by. */
const PROBE_ERROR: Limits = { least: 0, most: 0.5000000001, words: ' from 0 % to 50 %' };

/** Reads what the probes may be off by. */
export function readProbeError(fn: string, error: Share | undefined): number {
  return readOr(0, fn, 'relativeHumidityError', error, SHARE, PROBE_ERROR);
}

/** Reads the limit of the system. */
export function readLimit(fn: string, limit: Quantity<ShareUnit>): number {
  return read(fn, 'limit', limit, SHARE, PART_OR_WHOLE);
}

/** Reads a humidity with its error. */
export function readHumidity(fn: string, humidity: Share, error: number, path: InputPath): Reading {
  const value = read(fn, 'relativeHumidity', humidity, SHARE, PART_OR_WHOLE, path);
  return { value, low: value - error, high: value + error, doubts: [] };
}

/** Judges humidities against the limit of the system. */
export function assessHumidity<U extends ShareUnit>(
  fn: string,
  limit: Quantity<U>,
  limitShare: number,
  readings: readonly Reading[],
  more: Pick<WorstWords<U>, 'testsNeeded' | 'always' | 'basis' | 'method'>,
): WorstAssessment<U> {
  const worst = judgeWorst(readings, limitShare, 1, more.testsNeeded ?? 1);
  return worstAssessment({
    ...more,
    worst,
    readings,
    limit: echo(limit),
    answer: (value) => write(fn, value, SHARE, limit.unit),
    base: limitShare,
  });
}
