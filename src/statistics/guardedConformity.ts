import { judge, type Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Caution, CautionCode } from '../core/caution.ts';
import type { Unit } from '../core/dimensionOf.ts';
import { SHARE } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { writeAny } from '../core/readAny.ts';
import { readConfidence } from './confidence.ts';
import {
  chanceWithin,
  readSpecification,
  type BaseEnd,
  type BaseSpecification,
  type Specification,
} from './specification.ts';
import { studentPoint } from './student.ts';
import { exactlyOne, stepUnitOf, type StepUnit } from './uncertain.ts';

const GUIDE = { source: 'jcgm-106-2012', status: 'memory' } as const;

/** Input of {@link guardedConformity}. */
export interface GuardedConformityInput<U extends Unit = Unit> extends Specification<U> {
  /** How sure a verdict is to be right where it meets or fails; either this or `guardBand`. */
  readonly confidence?: Share | undefined;
  /** The width that the contract keeps from every limit, 0 for none; either this or `confidence`. */
  readonly guardBand?: Quantity<StepUnit<NoInfer<U>>> | undefined;
}

/** A value judged with guard bands. `uncertainty` is the width of the guard band. */
export interface GuardedConformity<U extends string = string> extends Assessment<U> {
  /** The limit with the least room. */
  readonly end: 'least' | 'most';
  /** What a measured value must be at or beyond, or at or below, to be accepted. */
  readonly acceptance: { readonly least?: Quantity<U> | undefined; readonly most?: Quantity<U> | undefined };
  /** How likely the true value is within the limits. */
  readonly conformanceProbability: Quantity<'%'>;
}

/**
 * Whether a measured value is far enough inside its limits to be accepted, or far enough outside to be rejected: by a
 * guard band on both sides of each limit. What lies in it is undecided.
 *
 * Most contracts ask for simple acceptance instead, where the measured value counts as it stands: that is a guard band
 * of 0. Nothing here adds one unasked.
 *
 * @formula
 * ```math
 * T_L + g \le y \le T_U - g, \quad g = t_p(\nu)\, u
 * ```
 * @units any kind, share; answers the same kind, gap and guard band of temperatures as temperature differences.
 * @validRange one limit or both, in order; confidence above 50 % and below 100 %, one-sided; guardBand of 0 or more.
 * @accuracy As `coverageFactor`. A value exactly on the edge of the guard band is accepted.
 * @source jcgm-106-2012
 * @param input - Measured value, limits, and the level of confidence or the guard band.
 * @returns The verdict at the limit with the least room.
 * @throws An `InputError` that names the field; `conflict` where confidence and guard band are both given.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const film = statistics.guardedConformity({
 *   measured: { value: 20.5, unit: 'mil', standardUncertainty: { value: 0.5, unit: 'mil' } },
 *   least: { value: 20, unit: 'mil' },
 *   confidence: { value: 95, unit: '%' },
 * });
 * [film.verdict, film.acceptance.least?.value.toFixed(2)]; // => ['undecided', '20.82']
 * ```
 */
export function guardedConformity<U extends Unit>(input: GuardedConformityInput<U>): GuardedConformity {
  const fn = 'guardedConformity';
  const given = fields(fn, input) as unknown as GuardedConformityInput;
  const specification = readSpecification(fn, given);
  const { base, dimension, step } = specification;
  const band = bandOf(fn, given, specification);
  const worst = specification.ends.reduce((least, next) => (next.room < least.room ? next : least));
  const verdict = judge(worst.room, band, worst.scale);

  const { given: limit } = worst;
  const { unit } = limit;
  const measured = given.measured.unit === unit ? echoPlain(given.measured) : written(base, unit);
  const inSteps = (difference: number) => write(fn, difference, step, stepUnitOf(unit, dimension));
  const probability = write(fn, chanceWithin(specification), SHARE, '%');
  const params = { measured, limit: echo(limit), guardBand: inSteps(band), probability };
  const about = (code: CautionCode): Caution => ({
    code,
    severity: 'caution',
    params,
    ...GUIDE,
  });
  const acceptance: Partial<Record<BaseEnd['end'], Quantity>> = {};
  for (const { end, given: own, base: at } of specification.ends) {
    acceptance[end] = written(end === 'least' ? at + band : at - band, own.unit);
  }
  return {
    verdict,
    end: worst.end,
    measured,
    limit: echo(limit),
    gap: inSteps(worst.room),
    acceptance,
    conformanceProbability: probability,
    cautions: [
      ...(verdict === 'fails' ? [about('beyond-limit')] : []),
      ...(verdict === 'undecided' ? [about('inside-guard-band')] : []),
    ],
    basis: [basis('verdict', `statistics.${fn}`, 'room to the limit against guard band', GUIDE, given)],
    ...(band > 0 && { uncertainty: params.guardBand }),
  };

  function written(value: number, own: string): Quantity {
    return writeAny(fn, { base: value, dimension }, own);
  }
}

/** A measured value without its uncertainty. */
function echoPlain({ value, unit }: Quantity): Quantity {
  return echo({ value, unit });
}

/** The width of the guard band, in base units of a difference. */
function bandOf(fn: string, given: GuardedConformityInput, { step, uncertainty }: BaseSpecification): number {
  exactlyOne(fn, given, 'confidence', 'guardBand');
  if (given.confidence === undefined) {
    return read<string>(fn, 'guardBand', given.guardBand, step, NOT_NEGATIVE);
  }
  const confidence = readConfidence(fn, given.confidence, true);
  return studentPoint(1 - confidence, uncertainty.freedom) * uncertainty.base;
}
