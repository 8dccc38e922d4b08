import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { FLOW, SHARE, TIME, VOLUME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { hazard } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity, Share, Time, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { FlowUnit } from '../core/unitCodes.ts';
import { readMixingFactor, WITHIN } from './limits.ts';

/** Input of {@link dilutionAirForExposureLimit}. */
export interface DilutionAirForExposureLimitInput<U extends FlowUnit = FlowUnit> {
  /** Vapour that is set free: the answer of `vapourVolume`. */
  readonly vapour: Volume;
  /** Time in which the solvent evaporates. */
  readonly evaporationTime: Time;
  /** Concentration allowed at the place of work, by volume in air: that of the law of the place. */
  readonly exposureLimit: Share;
  /** How many times the air of perfect mixing the room takes: 1 is perfect, 3 to 10 are common. */
  readonly mixingFactor: number;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link dilutionAirForExposureLimit}. */
export interface DilutionAirForExposureLimit<U extends FlowUnit = FlowUnit> {
  /** Fresh air, all the time in which the solvent evaporates. */
  readonly airflow: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * The fresh air that keeps solvent vapour at what people may breathe: far more than keeps it from exploding.
 *
 * @formula
 * ```math
 * Q = \frac{V_v}{t} \cdot \frac{K}{C}
 * ```
 * @units volume, time, share, a plain number; answers flow.
 * @validRange vapour and evaporationTime above 0; exposureLimit above 0 % and below 100 %; mixingFactor 1 or more.
 * @accuracy Exact up to round-off; no better than the mixing factor, which nobody measures. Limits in mg/m³ hold for
 * another quantity and are not read. No published figure was found worked out: the equation was read.
 * @source nrc-dilution, abih-equations
 * @param input - Vapour, the limit, the mixing factor and the unit wanted.
 * @returns The flow in `input.unit`, not rounded, and the caution.
 * @throws An `InputError` that names the field; a mixing factor below 1 is refused.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * // Half a quart of toluene in an hour, at a limit of 100 ppm.
 * safety
 *   .dilutionAirForExposureLimit({
 *     vapour: { value: 3.8, unit: 'ft3' },
 *     evaporationTime: { value: 60, unit: 'min' },
 *     exposureLimit: { value: 100, unit: 'ppm' },
 *     mixingFactor: 5,
 *     unit: 'ft3/min',
 *   })
 *   .airflow.value.toFixed(0); // => '3167'
 * ```
 */
export function dilutionAirForExposureLimit<U extends FlowUnit>(
  input: DilutionAirForExposureLimitInput<U>,
): DilutionAirForExposureLimit<U> {
  const fn = 'dilutionAirForExposureLimit';
  const { vapour, evaporationTime, exposureLimit, mixingFactor, unit } = fields(fn, input);
  const vapour_m3 = read(fn, 'vapour', vapour, VOLUME, POSITIVE);
  const time_s = read(fn, 'evaporationTime', evaporationTime, TIME, POSITIVE);
  const limit = read(fn, 'exposureLimit', exposureLimit, SHARE, WITHIN);
  const factor = readMixingFactor(fn, mixingFactor);
  const airflow = write(fn, ((vapour_m3 / time_s) * factor) / limit, FLOW, unit);
  const params = { vapour: echo(vapour), exposureLimit: echo(exposureLimit), airflow };
  return {
    airflow,
    cautions: [hazard('harmful-vapour', 'nrc-dilution', params)],
    basis: [
      basis(
        'airflow',
        'safety.dilutionAirForExposureLimit',
        'vapour / evaporationTime · mixingFactor / exposureLimit',
        'nrc-dilution',
        { vapour, evaporationTime, exposureLimit, mixingFactor },
      ),
    ],
  };
}
