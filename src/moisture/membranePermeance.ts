import { judge, type Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Caution } from '../core/caution.ts';
import { PERMEANCE } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Permeance, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { PermeanceUnit } from '../core/unitCodes.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

const F3010 = { source: 'astm-f3010', status: 'memory' } as const;

/** Input of {@link membranePermeance}. */
export interface MembranePermeanceInput<U extends PermeanceUnit = PermeanceUnit> extends Confidence {
  /** Permeance of the membrane at the thickness at which it is laid; 0 where a test found none. */
  readonly permeance: Permeance;
  /** What it may be off by, from the scatter of the test. */
  readonly permeanceError?: ReadingError<Permeance> | undefined;
  /** Highest permeance allowed: 0.1 perm by ASTM F3010, for the water method. */
  readonly limit: Quantity<U>;
}

/**
 * Whether a membrane against moisture is tight enough for what is asked of it.
 *
 * Tightness is one of several things: its bond is another, and what moisture it bears below it is `barrierDecision`.
 *
 * @formula
 * ```math
 * W + u \le W_{limit}
 * ```
 * @units permeances; answers permeance.
 * @validRange permeance and its error 0 or more, limit above 0.
 * @accuracy Exact. A permeance exactly on the limit meets it.
 * @source astm-f3010
 * @param input - Permeance, what it may be off by, and the limit.
 * @returns The verdict with permeance, gap and uncertainty in the unit of the limit.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const membrane = moisture.membranePermeance({
 *   permeance: { value: 5, unit: 'ng/s/m2/Pa' },
 *   limit: { value: 0.1, unit: 'perm' },
 * });
 * [membrane.verdict, membrane.measured.value.toFixed(3)]; // => ['meets', '0.087']
 * ```
 */
export function membranePermeance<U extends PermeanceUnit>(input: MembranePermeanceInput<U>): Assessment<U> {
  const fn = 'membranePermeance';
  const { permeance, permeanceError, limit } = fields(fn, input);
  const permeance_ng = read(fn, 'permeance', permeance, PERMEANCE, NOT_NEGATIVE);
  const coverage = readCoverage(fn, input);
  const error_ng = halfWidthOf(
    readError(fn, 'permeanceError', permeanceError, coverage, PERMEANCE, NOT_NEGATIVE),
    coverage,
  );
  const limit_ng = read(fn, 'limit', limit, PERMEANCE, POSITIVE);

  const gap_ng = limit_ng - permeance_ng;
  const verdict = judge(gap_ng, error_ng, limit_ng);
  const inLimitUnit = (ng: number) => write(fn, ng, PERMEANCE, limit.unit);
  const [measured, uncertainty] = [inLimitUnit(permeance_ng), inLimitUnit(error_ng)];
  const asked = echo(limit);
  const about = (code: Caution['code'], severity: Caution['severity']): Caution => ({
    code,
    severity,
    params: { measured, limit: asked, uncertainty },
    ...F3010,
  });
  return {
    verdict,
    measured,
    limit: asked,
    gap: inLimitUnit(gap_ng),
    ...(error_ng > 0 && { uncertainty }),
    cautions: [
      ...(verdict === 'meets' ? [] : [about('permeance-not-within-limit', 'caution')]),
      about('permeance-by-its-method', 'note'),
    ],
    basis: [
      basis('measured', `moisture.${fn}`, 'limit − permeance', F3010, {
        permeance,
        permeanceError,
        limit,
      }),
      ...uncertaintyBasis(`moisture.${fn}`, { permeanceError }, input),
    ],
  };
}
