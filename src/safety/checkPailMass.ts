import { judge, type Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import { MASS } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { hazard, MIXED_RESIN_HEATS } from '../core/hazards.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Mass, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { MassUnit } from '../core/unitCodes.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** Input of {@link checkPailMass}. */
export interface CheckPailMassInput<U extends MassUnit = MassUnit> extends Confidence {
  /** Mixed resin that stands together in the pail. */
  readonly mass: Mass;
  /** Mass for which the instructions state the pot life. */
  readonly limit: Quantity<U>;
  /** What the scale may be off by. */
  readonly massError?: ReadingError<Mass> | undefined;
}

/**
 * Whether the resin in a pail is no more than the mass for which its pot life is stated.
 *
 * A larger mass keeps more of its heat: it gels sooner than stated, smokes and can burn. No formula stretches a pot life
 * to a larger mass.
 *
 * @formula
 * ```math
 * m \le m_0
 * ```
 * @units masses; answers mass.
 * @validRange mass and limit above 0; massError 0 or more.
 * @accuracy Exact. A mass exactly on the limit meets it.
 * @source ufc-3-190-06, astm-d2471, udel-epoxy-smoke, jcgm-100-2008
 * @param input - Mass in the pail, the mass of the instructions, and what the scale may be off by.
 * @returns The verdict with mass, limit, gap and uncertainty in the unit of the limit, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * safety.checkPailMass({ mass: { value: 9, unit: 'kg' }, limit: { value: 1, unit: 'kg' } }).verdict; // => 'fails'
 * ```
 */
export function checkPailMass<U extends MassUnit>(input: CheckPailMassInput<U>): Assessment<U> {
  const fn = 'checkPailMass';
  const { mass, limit, massError } = fields(fn, input);
  const mass_kg = read(fn, 'mass', mass, MASS, POSITIVE);
  const limit_kg = read(fn, 'limit', limit, MASS, POSITIVE);
  const coverage = readCoverage(fn, input);
  const off_kg = halfWidthOf(readError(fn, 'massError', massError, coverage, MASS, NOT_NEGATIVE), coverage);
  const verdict = judge(limit_kg - mass_kg, off_kg, limit_kg);
  const inLimitUnit = (kg: number) => write(fn, kg, MASS, limit.unit, ['limit', 'unit']);
  const measured = inLimitUnit(mass_kg);
  const asked = echo(limit);
  const params = { mass: measured, limit: asked };
  return {
    verdict,
    measured,
    limit: asked,
    gap: inLimitUnit(limit_kg - mass_kg),
    ...(off_kg > 0 && { uncertainty: inLimitUnit(off_kg) }),
    cautions: [
      ...(verdict === 'fails' ? [hazard('pail-over-stated-mass', 'ufc-3-190-06', params)] : []),
      ...(verdict === 'undecided' ? [hazard('pail-mass-undecided', 'ufc-3-190-06', params)] : []),
      MIXED_RESIN_HEATS,
    ],
    basis: [
      basis('measured', 'safety.checkPailMass', 'mass, to be no more than the limit', 'ufc-3-190-06', {
        mass,
        limit,
        massError,
      }),
      ...uncertaintyBasis(`safety.${fn}`, { massError }, input),
    ],
  };
}
