import { basis } from '../core/basis.ts';
import { judge, type Assessment } from '../core/assessment.ts';
import { MASS, SHARE } from '../core/dimensions.ts';
import { inside } from '../core/inside.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Mass, Share } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import {
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { sandMoisture } from './sandMoisture.ts';

/** Input of {@link sandDryness}. */
export interface SandDrynessInput extends Confidence {
  /** Sample as it comes. */
  readonly wetMass: Mass;
  /** The same after drying until it loses no more. */
  readonly dryMass: Mass;
  /** Most moisture that the instructions of the resin allow, on dry mass. */
  readonly limit: Share;
  /** How far the scale may be off, either way, at each weighing. Exact where not given. */
  readonly scaleError?: ReadingError<Mass> | undefined;
}

/**
 * Whether a sand is dry enough for the resin it goes into. Water foams with isocyanates and keeps epoxies from their
 * bond: a third of a per cent in a floor's sand is a bucket of it.
 *
 * @formula
 * ```math
 * u = \frac{m_w - m_d}{m_d} \le u_\text{max} \qquad \Delta u = \frac{\Delta m \, (m_w + m_d)}{m_d \, (m_d \mp \Delta m)}
 * ```
 * @units masses, share; answers an assessment in the unit of the limit.
 * @validRange dryMass above 0, wetMass no less than dryMass; limit and scaleError 0 or more. The limit belongs to the
 * product; there is no usual one to fall back on.
 * @accuracy Absolute error below 1e-15. Both weighings are taken as off against each other at once, towards the limit, or
 * with `confidence` propagated by the GUM as independent of each other.
 * @source common-practice, definition
 * @param input - Masses, the limit, and the error of the scale.
 * @returns Moisture, limit, gap and verdict.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const sand = aggregate.sandDryness({
 *   wetMass: { value: 500, unit: 'g' },
 *   dryMass: { value: 498.2, unit: 'g' },
 *   limit: { value: 0.2, unit: '%' },
 * });
 * sand.verdict; // => 'fails'
 * ```
 */
export function sandDryness(input: SandDrynessInput): Assessment<ShareUnit> {
  const { wetMass, dryMass, limit, scaleError } = fields('sandDryness', input);
  const coverage = readCoverage('sandDryness', input);
  const most = read('sandDryness', 'limit', limit, SHARE, NOT_NEGATIVE);
  const { unit } = limit;
  const measured = inside('sandDryness', [], () => sandMoisture({ wetMass, dryMass, unit }));
  const wet_kg = read('sandDryness', 'wetMass', wetMass, MASS, NOT_NEGATIVE);
  const dry_kg = read('sandDryness', 'dryMass', dryMass, MASS, NOT_NEGATIVE);
  const error = readError('sandDryness', 'scaleError', scaleError, coverage, MASS, NOT_NEGATIVE);
  if (error.bound >= dry_kg * (1 - 1e-12)) {
    refuse('sandDryness', 'conflict', ['scaleError'], 'smaller than the dry mass', scaleError);
  }
  const moisture = read('sandDryness', 'wetMass', measured, SHARE, NOT_NEGATIVE);
  // Both weighings off against each other at once, towards the limit.
  const towards = moisture <= most ? error.bound : -error.bound;
  const uncertainty =
    coverage?.expanded([1 / dry_kg, error], [wet_kg / dry_kg ** 2, error]) ??
    (error.bound * (wet_kg + dry_kg)) / (dry_kg * (dry_kg - towards));
  const verdict = judge(most - moisture, uncertainty, 1);
  return {
    verdict,
    measured,
    limit: { value: limit.value + 0, unit },
    gap: write('sandDryness', most - moisture, SHARE, unit),
    ...(uncertainty > 0 && { uncertainty: write('sandDryness', uncertainty, SHARE, unit) }),
    cautions:
      verdict === 'meets'
        ? []
        : [
            {
              code: 'damp-sand',
              severity: 'caution',
              params: { moisture: measured },
              source: 'common-practice',
            },
          ],
    basis: [
      basis('measured', 'aggregate.sandMoisture', 'u = (mw − md) / md', 'definition', input),
      ...uncertaintyBasis('aggregate.sandDryness', { scaleError }, input),
    ],
  };
}
