import { judge, type Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Caution } from '../core/caution.ts';
import { SHARE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE } from '../core/limits.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readTemperature, writeTemperature } from '../core/temperature.ts';
import type { TemperatureDifferenceUnit } from '../core/unitCodes.ts';
import { errorsBasis, readErrors, type InstrumentErrors } from './instruments.ts';
import { CLIMATE } from './limits.ts';
import { MARGIN_SCALE, marginOf } from './margin.ts';

/** Input of {@link dewPointMargin}. */
export interface DewPointMarginInput<
  U extends TemperatureDifferenceUnit = TemperatureDifferenceUnit,
> extends Omit<InstrumentErrors, 'materialError'> {
  /** Air temperature close to the floor. */
  readonly air: Temperature;
  /** Relative humidity of that air. */
  readonly relativeHumidity: Share;
  /** Temperature of the floor itself, at its coldest place. */
  readonly surface: Temperature;
  /** How far the floor must be above the dew point: 3 deltaC in ISO practice, 5 deltaF in US practice. */
  readonly limit: Quantity<U>;
}

/**
 * Whether the floor is far enough above the dew point, now and at this place.
 *
 * The margin is a difference, judged in the unit of its limit: 5 °F of it are 2.8 °C. The errors of the instruments
 * are taken as all against the floor at once, or with `confidence` propagated by the GUM; where that reaches over
 * the limit the verdict is undecided. The dew point is that of `dewPoint`: over water, by Murphy and Koop below
 * −0.0088 °C.
 *
 * @formula
 * ```math
 * m = t_{surface} - t_d(t, \varphi)
 * ```
 * @units temperatures, shares, temperature differences; answers temperature difference.
 * @validRange temperatures from −100 to 100 °C, humidity above 0 and up to 100 %; limit 0 or more; errors up to 20 K
 * and 50 % of humidity, below the humidity itself.
 * @accuracy That of `dewPoint`: within 0.002 K. A reading exactly on the limit meets it.
 * @source iso-8502-4, ufc-3-190-06, iapws-r7-97, murphy-koop-2005, jcgm-100-2008
 * @param input - Air, humidity, surface, the limit, and what the instruments may be off by.
 * @returns The verdict with margin, limit, gap and uncertainty in the unit of the limit.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * const reading = {
 *   air: { value: 20, unit: 'degC' },
 *   relativeHumidity: { value: 70, unit: '%' },
 *   surface: { value: 17.2, unit: 'degC' },
 * } as const;
 * const iso = climate.dewPointMargin({ ...reading, limit: { value: 3, unit: 'deltaC' } });
 * iso.verdict; // => 'fails'
 * iso.measured.value.toFixed(2); // => '2.83'
 * climate.dewPointMargin({ ...reading, limit: { value: 5, unit: 'deltaF' } }).verdict; // => 'meets'
 * ```
 */
export function dewPointMargin<U extends TemperatureDifferenceUnit>(
  input: DewPointMarginInput<U>,
): Assessment<U> {
  const fn = 'dewPointMargin';
  const { air, relativeHumidity, surface, limit } = fields(fn, input);
  const air_C = readTemperature(fn, 'air', air, CLIMATE);
  const humidity = read(fn, 'relativeHumidity', relativeHumidity, SHARE, PART_OR_WHOLE);
  const surface_C = readTemperature(fn, 'surface', surface, CLIMATE);
  const limit_K = read(fn, 'limit', limit, TEMPERATURE_DIFFERENCE, NOT_NEGATIVE);
  const errors = readErrors(fn, input);

  const { dewPoint_C, margin_K, down_K, up_K } = marginOf(fn, air_C, humidity, surface_C, errors);
  const gap_K = margin_K - limit_K;
  const uncertainty_K = gap_K < 0 ? up_K : down_K;
  const verdict = judge(gap_K, uncertainty_K, MARGIN_SCALE);

  const inLimitUnit = (difference_K: number) => write(fn, difference_K, TEMPERATURE_DIFFERENCE, limit.unit);
  const measured = inLimitUnit(margin_K);
  const uncertainty = inLimitUnit(uncertainty_K);
  const dewPoint = writeTemperature(fn, dewPoint_C, surface.unit);
  const asked = echo(limit);
  const params = { margin: measured, limit: asked, uncertainty, surface: echo(surface), dewPoint };
  const about = (code: Caution['code'], severity: Caution['severity']): Caution => ({
    code,
    severity,
    params,
    source: 'ufc-3-190-06',
  });
  return {
    verdict,
    measured,
    limit: asked,
    gap: inLimitUnit(gap_K),
    cautions: [
      ...(verdict === 'fails' ? [about('condensation', 'caution')] : []),
      ...(verdict === 'undecided' ? [about('dew-margin-undecided', 'caution')] : []),
      about('dew-margin-now-only', 'note'),
    ],
    basis: [
      basis(
        'dewPoint',
        'climate.dewPoint',
        'p_s(dewPoint) = relativeHumidity · p_s(air), by Murphy and Koop below −0.0088 °C',
        'iapws-r7-97',
        { air, relativeHumidity },
      ),
      basis('measured', `climate.${fn}`, 'surface − dewPoint, to be at least the limit', 'ufc-3-190-06', {
        surface,
        dewPoint,
        limit,
      }),
      ...errorsBasis(fn, input),
    ],
    ...(uncertainty_K > 0 && { uncertainty }),
  };
}
