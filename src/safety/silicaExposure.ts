import { judge, type Assessment, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Caution } from '../core/caution.ts';
import { DENSITY, SHARE, TIME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { hazard, SILICA_DUST } from '../core/hazards.ts';
import { NOT_NEGATIVE, PART, POSITIVE } from '../core/limits.ts';
import type { Density, Quantity, Share, Time } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import { readName, readObjects } from '../core/readPlain.ts';
import type { DensityUnit } from '../core/unitCodes.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { DAY_S } from './limits.ts';

/** A stretch of a shift with its dust. */
export interface DustyTask {
  /** What was done. */
  readonly name: string;
  /** Respirable crystalline silica in the air breathed, outside the respirator. */
  readonly concentration: Density;
  /** How long. */
  readonly duration: Time;
}

/** Input of {@link silicaExposure}. */
export interface SilicaExposureInput<U extends DensityUnit = DensityUnit> extends Confidence {
  /** Every task of the shift with dust; the rest of the day counts as clean air. */
  readonly tasks: readonly DustyTask[];
  /** Limit for a mean of eight hours: that of the law of the place, see `exposureLimits`. */
  readonly limit: Quantity<U>;
  /** Level from which the law asks for measures such as medical examinations. */
  readonly actionLevel?: Density | undefined;
  /** What sampling and laboratory may be off by, as a share of what they read. */
  readonly measurementError?: ReadingError<Share> | undefined;
}

/** Answer of {@link silicaExposure}. */
export interface SilicaExposure<U extends DensityUnit = DensityUnit> extends Assessment<U> {
  /** The same exposure against the action level, where one was given: reaching it fails. */
  readonly actionLevel?:
    { readonly verdict: Verdict; readonly level: Quantity<U>; readonly gap: Quantity<U> } | undefined;
}

/** The mean is one of eight hours, however long the shift. */
const SHIFT_S = 28_800;

/**
 * Whether the silica that a worker breathes in a shift, as a mean of eight hours, is within the limit.
 *
 * The sum is divided by eight hours and not by the hours worked, so that a long day counts in full.
 *
 * @formula
 * ```math
 * E = \frac{\sum_i C_i \, T_i}{8\,\mathrm{h}} \le E_{limit}
 * ```
 * @units densities, times, share; answers density.
 * @validRange concentrations 0 or more; durations above 0 and together no more than 24 h; limits above 0.
 * @accuracy Exact up to round-off. A mean exactly on the limit meets it; one at the action level has reached it.
 * @source osha-1910-1053, osha-1926-1153, jcgm-100-2008
 * @param input - The tasks, the limits and what the measurement may be off by.
 * @returns The verdict with mean, limit, gap and uncertainty in the unit of the limit, and the cautions.
 * @throws An `InputError` that names the field; `conflict` where the tasks take more than 24 hours.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const grinding = safety.silicaExposure({
 *   tasks: [
 *     {
 *       name: 'edges',
 *       concentration: { value: 90, unit: 'ug/m3' },
 *       duration: { value: 3, unit: 'h' },
 *     },
 *     {
 *       name: 'field',
 *       concentration: { value: 20, unit: 'ug/m3' },
 *       duration: { value: 6, unit: 'h' },
 *     },
 *   ],
 *   limit: { value: 50, unit: 'ug/m3' },
 *   actionLevel: { value: 25, unit: 'ug/m3' },
 * });
 * [grinding.measured.value, grinding.verdict, grinding.actionLevel?.verdict]; // => [48.75, 'meets', 'fails']
 * ```
 */
export function silicaExposure<U extends DensityUnit>(input: SilicaExposureInput<U>): SilicaExposure<U> {
  const fn = 'silicaExposure';
  const { tasks, limit, actionLevel, measurementError } = fields(fn, input);
  const stretches = readObjects(fn, 'tasks', tasks, 1).map(({ name, concentration, duration }, i) => {
    const path = ['tasks', i];
    readName(fn, 'name', name, path);
    return {
      kgPerM3: read(fn, 'concentration', concentration, DENSITY, NOT_NEGATIVE, path),
      time_s: read(fn, 'duration', duration, TIME, POSITIVE, path),
    };
  });
  const limit_kgPerM3 = read(fn, 'limit', limit, DENSITY, POSITIVE);
  const action_kgPerM3 = readOptional(fn, 'actionLevel', actionLevel, DENSITY, POSITIVE);
  const coverage = readCoverage(fn, input);
  const error = readError(fn, 'measurementError', measurementError, coverage, SHARE, PART);
  if (stretches.reduce((sum, { time_s }) => sum + time_s, 0) > DAY_S) {
    refuse(fn, 'conflict', ['tasks'], 'no more than 24 hours of tasks in a day', tasks);
  }

  const mean_kgPerM3 = stretches.reduce((sum, task) => sum + task.kgPerM3 * task.time_s, 0) / SHIFT_S;
  const off_kgPerM3 = halfWidthOf(error, coverage) * mean_kgPerM3;
  const gap = limit_kgPerM3 - mean_kgPerM3;
  const verdict = judge(gap, off_kgPerM3, limit_kgPerM3);
  const inLimitUnit = (kgPerM3: number) => write(fn, kgPerM3, DENSITY, limit.unit, ['limit', 'unit']);
  const measured = inLimitUnit(mean_kgPerM3);
  const asked = echo(limit);
  const about = (code: Caution['code']) =>
    hazard(code, 'osha-1910-1053', { exposure: measured, limit: asked });

  const action = action_kgPerM3 && {
    verdict: againstActionLevel(action_kgPerM3, mean_kgPerM3, off_kgPerM3),
    level: inLimitUnit(action_kgPerM3),
    gap: inLimitUnit(action_kgPerM3 - mean_kgPerM3),
  };
  return {
    verdict,
    measured,
    limit: asked,
    gap: inLimitUnit(gap),
    ...(off_kgPerM3 > 0 && { uncertainty: inLimitUnit(off_kgPerM3) }),
    ...(action && { actionLevel: action }),
    cautions: [
      ...(verdict === 'fails' ? [about('silica-over-limit')] : []),
      ...(verdict === 'undecided' ? [about('silica-undecided')] : []),
      ...(action && action.verdict !== 'meets'
        ? [
            hazard('silica-over-action-level', 'osha-1910-1053', {
              exposure: measured,
              actionLevel: action.level,
            }),
          ]
        : []),
      SILICA_DUST,
    ],
    basis: [
      basis('measured', 'safety.silicaExposure', 'sum of concentration · duration / 8 h', 'osha-1910-1053', {
        tasks,
        limit,
        actionLevel,
        measurementError,
      }),
      ...uncertaintyBasis(`safety.${fn}`, { measurementError }, input),
    ],
  };
}

/** At the action level itself the law has begun to apply, so that reaching it fails. */
function againstActionLevel(level: number, mean: number, off: number): Verdict {
  const reached = off === 0 && Math.abs(level - mean) <= 1e-12 * level;
  return reached ? 'fails' : judge(level - mean, off, level);
}
