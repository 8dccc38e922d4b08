import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode, Cited } from '../core/caution.ts';
import type { Limits } from '../core/limits.ts';
import { fields, refuse } from '../core/read.ts';
import { readKey, readNumber, readObject } from '../core/readPlain.ts';
import { meanOf } from '../statistics/readings.ts';
import { CLARITY, GLOSS } from './glossScale.ts';
import {
  judgeScale,
  readPlaces,
  readScaleError,
  type ScaleCriterion,
  type ScaleFinding,
  type ScalePlace,
} from './scale.ts';
import { worstFinding } from './worstFinding.ts';
import {
  readCoverage,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** What was measured of the look of a floor. */
export type AppearanceScale = 'gloss 20°' | 'gloss 60°' | 'gloss 85°' | 'haze' | 'image clarity';

/** What the specification asks for, on the scale that was measured; at least one. */
export interface AppearanceLimits {
  /** Least value of each place. */
  readonly eachLeast?: number | undefined;
  /** Greatest value of each place. */
  readonly eachMost?: number | undefined;
  /** Least mean of all places. */
  readonly meanLeast?: number | undefined;
  /** Greatest mean of all places. */
  readonly meanMost?: number | undefined;
}

/** Input of {@link appearanceCheck}. */
export interface AppearanceCheckInput extends Confidence {
  /** What was measured. */
  readonly scale: AppearanceScale;
  /** All places. */
  readonly places: readonly ScalePlace[];
  /** What the specification asks for. */
  readonly limits: AppearanceLimits;
  /** What a reading may be off by. Taken as exact where not given. */
  readonly readingError?: ReadingError<number> | undefined;
}

/** The look of a floor against its limits. The figures are those of the finding that governs. */
export interface AppearanceResult extends ScaleFinding {
  /** One for each limit that was given. */
  readonly findings: readonly ScaleFinding[];
  /** Mean of all places. */
  readonly mean: number;
  /** What belongs with the verdict. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const SCALES: Readonly<Record<AppearanceScale, { readonly limits: Limits; readonly cited: Cited }>> = {
  'gloss 20°': { limits: GLOSS, cited: { source: 'astm-d523' } },
  'gloss 60°': { limits: GLOSS, cited: { source: 'astm-d523' } },
  'gloss 85°': { limits: GLOSS, cited: { source: 'astm-d523' } },
  haze: { limits: GLOSS, cited: { source: 'astm-d4039', status: 'memory' } },
  'image clarity': { limits: CLARITY, cited: { source: 'astm-d5767', status: 'memory' } },
};
const KEYS: Readonly<Record<keyof AppearanceLimits, ScaleCriterion>> = {
  eachLeast: 'each-least',
  eachMost: 'each-most',
  meanLeast: 'mean-least',
  meanMost: 'mean-most',
};
const CODES: Readonly<Record<Exclude<Verdict, 'meets'>, CautionCode>> = {
  fails: 'appearance-not-within-limit',
  undecided: 'appearance-undecided',
};

/**
 * Whether gloss, haze or image clarity of a floor are what was asked for: each place, the mean of all places, or both.
 *
 * @formula
 * ```math
 * G_{least} \le G_i, \bar G \le G_{most}
 * ```
 * @units scales of the instruments without unit; answers the same scale.
 * @validRange gloss and haze from 0 to 2000, image clarity from 0 to 100; at least one limit, the least ones at or below
 * the greatest.
 * @accuracy Exact, the means within 1e-15. A reading exactly on a limit meets it. No published figure: the limits are those of
 * the specification.
 * @source astm-d523, astm-d4039, astm-d5767
 * @param input - Scale, places, limits and what a reading may be off by.
 * @returns The verdict with the governing place or mean, and a finding for each limit.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const floor = inspect.appearanceCheck({
 *   scale: 'gloss 60°',
 *   places: [
 *     { name: 'entrance', readings: [54, 56] },
 *     { name: 'till', readings: [41, 43] },
 *   ],
 *   limits: { meanLeast: 45, eachLeast: 40 },
 *   readingError: 1,
 * });
 * [floor.verdict, floor.mean]; // => ['meets', 48.5]
 * ```
 */
export function appearanceCheck(input: AppearanceCheckInput): AppearanceResult {
  const fn = 'appearanceCheck';
  const { scale, places, limits, readingError } = fields(fn, input);
  const { limits: ends, cited } = SCALES[readKey(fn, 'scale', scale, SCALES)];
  const measured = readPlaces(fn, places, ends);
  const given = readObject(fn, 'limits', limits);
  const keys = (Object.keys(KEYS) as (keyof AppearanceLimits)[]).filter((key) => given[key] !== undefined);
  if (keys.length === 0) refuse(fn, 'missing', ['limits'], 'at least one limit, such as eachLeast', limits);
  const asked = Object.fromEntries(
    keys.map((key) => [KEYS[key], readNumber(fn, key, given[key], ends, ['limits'])]),
  ) as Partial<Record<ScaleCriterion, number>>;
  for (const of of ['each', 'mean'] as const) {
    if ((asked[`${of}-least`] ?? 0) > (asked[`${of}-most`] ?? Infinity)) {
      refuse(fn, 'conflict', ['limits', `${of}Least`], `at or below ${of}Most`, given[`${of}Least`]);
    }
  }
  const coverage = readCoverage(fn, input);
  const error = readScaleError(fn, 'readingError', readingError, coverage, ends);
  const findings = judgeScale(measured, asked, error);
  const governing = worstFinding(findings) as ScaleFinding;
  return {
    findings,
    mean: meanOf(measured.map(({ value }) => value)),
    cautions: findings.flatMap((finding): Caution[] => {
      if (finding.verdict === 'meets') return [];
      const { measured: value, limit, place = 'the mean of all places' } = finding;
      const params = { scale, place, measured: value, limit };
      return [{ code: CODES[finding.verdict], severity: 'caution', params, ...cited }];
    }),
    basis: [
      basis('measured', `inspect.${fn}`, 'worst place and mean of the places against their limits', cited, {
        scale,
        places: measured.length,
        limits,
        readingError,
      }),
      ...uncertaintyBasis(`inspect.${fn}`, { readingError }, input),
    ],
    ...governing,
  };
}
