import { judge, worstOf, type Assessment, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { SHARE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import { writeTemperature } from '../core/temperature.ts';
import type { ShareUnit, TemperatureUnit } from '../core/unitCodes.ts';
import {
  readCondition,
  readConditions,
  readLimits,
  roomTo,
  type BaseLimit,
  type LayingCondition,
  type LayingConditions,
  type LayingLimits,
} from './conditions.ts';
import { errorsBasis, halfWidths, readErrors, type InstrumentErrors } from './instruments.ts';

/** Input of {@link ambientLimits}. */
export interface AmbientLimitsInput extends InstrumentErrors {
  /** What was read; what has a limit must be there. */
  readonly readings: LayingConditions;
  /** The limits in the instructions of the product. */
  readonly limits: LayingLimits;
}

/** One reading judged against one end of its limits. A gap of temperatures is a temperature difference. */
export interface LimitFinding extends Assessment {
  /** What was read. */
  readonly of: LayingCondition;
  /** Which end of the limits. */
  readonly end: 'least' | 'most';
}

/** Every reading judged against the limits of the product. */
export interface AmbientLimits {
  /** `fails` where one fails, `undecided` where none fails and one is undecided. */
  readonly verdict: Verdict;
  /** One for each limit that was given. */
  readonly findings: readonly LimitFinding[];
  /** All cautions of the findings. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const CODE: Readonly<Record<LayingCondition, CautionCode>> = {
  air: 'air-not-within-limit',
  relativeHumidity: 'humidity-not-within-limit',
  surface: 'floor-not-within-limit',
  material: 'material-not-within-limit',
};

/**
 * Whether air, humidity, floor and material are within what the instructions of the product ask for.
 *
 * @formula
 * ```math
 * x_{least} + u \le x \le x_{most} - u
 * ```
 * @units temperatures, shares, temperature differences; answers assessments.
 * @validRange temperatures from −100 to 100 °C, humidity above 0 and up to 100 %; at least one limit.
 * @accuracy Exact. A reading exactly on a limit meets it.
 * @source ufc-3-190-06, common-practice
 * @param input - Readings, limits, and what the instruments may be off by.
 * @returns A finding for each limit and the verdict over all; a gap is in the unit of its limit.
 * @throws An `InputError` that names the field: a reading that has a limit must be there.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * const morning = climate.ambientLimits({
 *   readings: { air: { value: 58, unit: 'degF' }, relativeHumidity: { value: 84, unit: '%' } },
 *   limits: {
 *     air: { least: { value: 50, unit: 'degF' }, most: { value: 90, unit: 'degF' } },
 *     relativeHumidity: { most: { value: 85, unit: '%' } },
 *   },
 *   relativeHumidityError: { value: 3, unit: '%' },
 * });
 * morning.findings.map((finding) => finding.verdict); // => ['meets', 'meets', 'undecided']
 * morning.verdict; // => 'undecided'
 * ```
 */
export function ambientLimits(input: AmbientLimitsInput): AmbientLimits {
  const fn = 'ambientLimits';
  const { readings, limits } = fields(fn, input);
  const given = readObject(fn, 'readings', readings);
  const read = readConditions(fn, given, ['readings']);
  const half = halfWidths(readErrors(fn, input));
  const findings = readLimits(fn, limits).map((limit): LimitFinding => {
    const { of, end } = limit;
    const reading = read.get(of) ?? readCondition(fn, of, given, ['readings']);
    const room = roomTo(limit, reading);
    const verdict = judge(room, half[of], limit.scale);
    const measured = inUnitOf(limit, given[of] as Quantity, reading);
    const uncertainty = half[of] > 0 ? difference(limit, half[of]) : undefined;
    const params = { measured, limit: echo(limit.given), ...(uncertainty && { uncertainty }) };
    return {
      of,
      end,
      verdict,
      measured,
      limit: echo(limit.given),
      gap: difference(limit, room),
      ...(uncertainty && { uncertainty }),
      cautions:
        verdict === 'meets'
          ? []
          : [{ code: CODE[of], severity: 'caution', params, source: 'common-practice' }],
      basis: [
        basis(
          `${of}.${end}`,
          `climate.${fn}`,
          end === 'least' ? 'reading − limit' : 'limit − reading',
          'common-practice',
          { reading: given[of], limit: limit.given },
        ),
      ],
    };
  });
  return {
    verdict: worstOf(findings.map((finding) => finding.verdict)),
    findings,
    cautions: findings.flatMap((finding) => finding.cautions),
    basis: [...findings.flatMap((finding) => finding.basis), ...errorsBasis(fn, input)],
  };

  /** A reading in the unit of its limit; one that is in it already stays untouched. */
  function inUnitOf({ of, given }: BaseLimit, reading: Quantity, base: number): Quantity {
    if (reading.unit === given.unit) return echo(reading);
    return of === 'relativeHumidity'
      ? write(fn, base, SHARE, given.unit as ShareUnit)
      : writeTemperature(fn, base, given.unit as TemperatureUnit);
  }

  /** A difference to a limit: of temperatures in the step of its scale. */
  function difference({ of, given }: BaseLimit, base: number): Quantity {
    return of === 'relativeHumidity'
      ? write(fn, base, SHARE, given.unit as ShareUnit)
      : write(fn, base, TEMPERATURE_DIFFERENCE, given.unit === 'degF' ? 'deltaF' : 'deltaC');
  }
}
