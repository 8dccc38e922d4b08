import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import type { Limits } from '../core/limits.ts';
import { fields, refuse } from '../core/read.ts';
import { readKey, readNumber, readObjects } from '../core/readPlain.ts';
import {
  judgeScale,
  readPlaces,
  readScaleError,
  type BasePlace,
  type ScaleFinding,
  type ScalePlace,
} from './scale.ts';
import { SLIP_METHODS, type SlipMethod } from './slipMethods.ts';
import {
  readCoverage,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** A place with its method: a figure of grip without its method says nothing. */
export interface SlipPlace extends ScalePlace {
  /** How it was measured there. */
  readonly method: SlipMethod;
}

/** Input of {@link slipCheck}. */
export interface SlipCheckInput extends Confidence {
  /** The method that the limit is for. */
  readonly method: SlipMethod;
  /** All places, measured by that method. */
  readonly places: readonly SlipPlace[];
  /** Least value that the specification asks for, on the scale of the method. */
  readonly limit: number;
  /** What a reading may be off by. Taken as exact where not given. */
  readonly readingError?: ReadingError<number> | undefined;
}

/** The grip of a floor against its limit, on the scale of the method. */
export interface SlipResult {
  /** What can be said. */
  readonly verdict: Verdict;
  /** What was measured at the worst place. */
  readonly measured: number;
  /** What it was judged against. */
  readonly limit: number;
  /** Room to the limit; below 0 below it. */
  readonly gap: number;
  /** Half the width in which the true value lies, where the error was given. */
  readonly uncertainty?: number | undefined;
  /** The worst place. */
  readonly place: string;
  /** Mean of each place. */
  readonly places: readonly { readonly name: string; readonly measured: number }[];
  /** What belongs with the verdict; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const ERROR: Limits = { above: -5e-324, below: 150.0000000001, words: ' of 0 or more' };

/**
 * Whether every place of a floor has the grip that was asked for, by the method that was asked for.
 *
 * The worst place governs, never the mean of all: people slip where it is smoothest. Places measured by another method
 * than that of the limit are refused.
 *
 * @formula
 * ```math
 * \min_i \mu_i \ge \mu_{limit}
 * ```
 * @units scales without unit; answers the same scale.
 * @validRange coefficients of friction above 0 and up to 2, pendulum values from 0 to 150.
 * @accuracy Exact. A reading exactly on the limit meets it.
 * @source ansi-a326-3, hse-pendulum, astm-d2047
 * @param input - Method, places, limit and what a reading may be off by.
 * @returns The verdict with the worst place.
 * @throws An `InputError` that names the field, or `conflict` for a place by another method.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const method = 'ANSI A326.3 wet' as const;
 * const floor = inspect.slipCheck({
 *   method,
 *   places: [
 *     { name: 'aisle', method, readings: [0.55, 0.53, 0.56, 0.54] },
 *     { name: 'sink', method, readings: [0.38, 0.41, 0.4, 0.39] },
 *   ],
 *   limit: 0.42,
 * });
 * [floor.verdict, floor.place, floor.measured.toFixed(3)]; // => ['fails', 'sink', '0.395']
 * ```
 */
export function slipCheck(input: SlipCheckInput): SlipResult {
  const fn = 'slipCheck';
  const { method, places, limit, readingError } = fields(fn, input);
  const { limits, cited } = SLIP_METHODS[readKey(fn, 'method', method, SLIP_METHODS)];
  readObjects(fn, 'places', places, 1).forEach((place, i) => {
    if (readKey(fn, 'method', place.method, SLIP_METHODS, ['places', i]) === method) return;
    refuse(fn, 'conflict', ['places', i, 'method'], `${method}, the method of the limit`, place.method);
  });
  const measured = readPlaces(fn, places, limits);
  const least = readNumber(fn, 'limit', limit, limits);
  const coverage = readCoverage(fn, input);
  const error = readScaleError(fn, 'readingError', readingError, coverage, ERROR);
  const [worst] = judgeScale(measured, { 'each-least': least }, error) as [ScaleFinding];
  const { verdict, gap, uncertainty } = worst;
  const place = worst.place ?? (measured[0] as BasePlace).name;
  const params = { place, measured: worst.measured, limit: least, method };
  const about = (code: CautionCode, severity: Caution['severity']): Caution => ({
    code,
    severity,
    params,
    ...cited,
  });
  return {
    verdict,
    measured: worst.measured,
    limit: least,
    gap,
    ...(uncertainty !== undefined && { uncertainty }),
    place,
    places: measured.map(({ name, value }) => ({ name, measured: value })),
    cautions: [
      ...(verdict === 'fails' ? [about('slippery-place', 'danger')] : []),
      ...(verdict === 'undecided' ? [about('slip-undecided', 'danger')] : []),
      about('slip-of-that-day', 'note'),
    ],
    basis: [
      basis('measured', `inspect.${fn}`, 'least mean of the readings at a place', cited, {
        method,
        places: measured.length,
        limit: least,
        readingError,
      }),
      ...uncertaintyBasis(`inspect.${fn}`, { readingError }, input),
    ],
  };
}
