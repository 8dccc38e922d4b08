import { basis, fromMemory } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { FLOW, SHARE, TIME, VOLUME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { hazard } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity, Share, Time, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { FlowUnit, VolumeUnit } from '../core/unitCodes.ts';
import { WITHIN } from './limits.ts';

/** Input of {@link dilutionAirForExplosiveLimit}. */
export interface DilutionAirForExplosiveLimitInput<
  V extends VolumeUnit = VolumeUnit,
  F extends FlowUnit = FlowUnit,
> {
  /** Vapour that is set free: the answer of `vapourVolume`. */
  readonly vapour: Volume;
  /** Lower explosive limit (LEL) of the solvent, by volume in air. */
  readonly lowerExplosiveLimit: Share;
  /** Share of the LEL to stay below: 25 % in the US rule for spray booths. From 10 % air is hazardous to enter, to breathe far below. */
  readonly keepBelow: Share;
  /** Time in which the solvent evaporates. */
  readonly evaporationTime: Time;
  /** Units of the answer. */
  readonly units: { readonly volume: V; readonly flow: F };
}

/** Answer of {@link dilutionAirForExplosiveLimit}. */
export interface DilutionAirForExplosiveLimit<
  V extends VolumeUnit = VolumeUnit,
  F extends FlowUnit = FlowUnit,
> {
  /** Air that all the vapour takes. */
  readonly air: Quantity<V>;
  /** The same as a flow, over the time in which the solvent evaporates. */
  readonly airflow: Quantity<F>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The air that keeps solvent vapour below a share of what could explode.
 *
 * It is the least air, evenly mixed and evenly given off, and keeps off fire alone: to breathe takes far more, see
 * `dilutionAirForExposureLimit`. A share of 25 % is the factor 4 of the US rule.
 *
 * @formula
 * ```math
 * V_a = \frac{(1 - L) \, V_v}{L \, s} \qquad Q = \frac{V_a}{t}
 * ```
 * @units volume, shares, time; answers a volume and a flow.
 * @validRange vapour and evaporationTime above 0; lowerExplosiveLimit and keepBelow above 0 % and below 100 %.
 * @accuracy Exact up to round-off; no better than the explosive limit, on which tables differ by a quarter.
 * @source osha-1910-94, niosh-npg-toluene
 * @param input - Vapour, its explosive limit, how far to stay below it, and the units wanted.
 * @returns The air and its flow, not rounded, and the caution.
 * @throws An `InputError` that names the field; an explosive limit of 0 is refused.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * // A gallon of toluene in twenty minutes.
 * const toluene = safety.dilutionAirForExplosiveLimit({
 *   vapour: { value: 30.4, unit: 'ft3' },
 *   lowerExplosiveLimit: { value: 1.1, unit: '%' },
 *   keepBelow: { value: 25, unit: '%' },
 *   evaporationTime: { value: 20, unit: 'min' },
 *   units: { volume: 'ft3', flow: 'ft3/min' },
 * });
 * [toluene.air.value.toFixed(0), toluene.airflow.value.toFixed(0)]; // => ['10933', '547']
 * ```
 */
export function dilutionAirForExplosiveLimit<V extends VolumeUnit, F extends FlowUnit>(
  input: DilutionAirForExplosiveLimitInput<V, F>,
): DilutionAirForExplosiveLimit<V, F> {
  const fn = 'dilutionAirForExplosiveLimit';
  const given = fields(fn, input);
  const { vapour, lowerExplosiveLimit, keepBelow, evaporationTime } = given;
  const units = readObject(fn, 'units', given.units);
  const vapour_m3 = read(fn, 'vapour', vapour, VOLUME, POSITIVE);
  const lel = read(fn, 'lowerExplosiveLimit', lowerExplosiveLimit, SHARE, WITHIN);
  const share = read(fn, 'keepBelow', keepBelow, SHARE, WITHIN);
  const time_s = read(fn, 'evaporationTime', evaporationTime, TIME, POSITIVE);
  const air_m3 = ((1 - lel) * vapour_m3) / (lel * share);
  const air = write(fn, air_m3, VOLUME, units.volume, ['units', 'volume']);
  const airflow = write(fn, air_m3 / time_s, FLOW, units.flow, ['units', 'flow']);
  const params = {
    vapour: echo(vapour),
    lowerExplosiveLimit: echo(lowerExplosiveLimit),
    keepBelow: echo(keepBelow),
    airflow,
  };
  return {
    air,
    airflow,
    cautions: [fromMemory(hazard('explosive-vapour', 'osha-1910-94', params))],
    basis: [
      fromMemory(
        basis(
          'air',
          'safety.dilutionAirForExplosiveLimit',
          '(1 − lowerExplosiveLimit) · vapour / (lowerExplosiveLimit · keepBelow)',
          'osha-1910-94',
          { vapour, lowerExplosiveLimit, keepBelow, evaporationTime },
          'vapour and air evenly mixed, given off evenly',
        ),
      ),
    ],
  };
}
