import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { FLOW, SHARE, TIME, VOLUME } from '../core/dimensions.ts';
import { hazard } from '../core/hazards.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Flow, Quantity, Share, Time, Volume } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { readMixingFactor, WITHIN } from './limits.ts';

/** Input of {@link vapourBuildUp}. */
export interface VapourBuildUpInput<U extends ShareUnit = ShareUnit> {
  /** Volume of the room. */
  readonly room: Volume;
  /** Fresh air that goes through it; 0 in a closed room. */
  readonly airflow: Flow;
  /** How many times the air of perfect mixing the room takes: 1 is perfect, 3 to 10 are common. */
  readonly mixingFactor: number;
  /** Vapour that is set free: the answer of `vapourVolume`. */
  readonly vapour: Volume;
  /** Time in which the solvent evaporates. */
  readonly evaporationTime: Time;
  /** Time since it began, at which the air is asked for. */
  readonly elapsed: Time;
  /** Lower explosive limit of the solvent; given to hear how near the vapour comes to it. */
  readonly lowerExplosiveLimit?: Share | undefined;
  /** Unit of the answers. */
  readonly unit: U;
}

/** Answer of {@link vapourBuildUp}. */
export interface VapourBuildUp<U extends ShareUnit = ShareUnit> {
  /** Vapour in the air at that time, by volume. */
  readonly concentration: Quantity<U>;
  /** The most that is ever in it: when the last of the solvent has evaporated. */
  readonly highest: Quantity<U>;
  /** That as a share of the lower explosive limit, where one was given. Over 100 % the room can explode. */
  readonly ofExplosiveLimit?: Quantity<'%'> | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How much solvent vapour gathers in a room while it evaporates, and what is left of it after.
 *
 * @formula
 * ```math
 * C = \frac{V_v}{t_e} \cdot \frac{K}{Q} \left(1 - e^{-Q t / (K V)}\right)
 * ```
 * @units volumes, flow, times, share, a plain number; answers shares.
 * @validRange room, vapour and evaporationTime above 0; airflow and elapsed 0 or more; mixingFactor 1 or more; explosive
 * limit above 0 % and below 100 %; no more vapour than air.
 * @accuracy Exact up to round-off for a mixed room, given off evenly. Vapours are heavier than air: pits and corners hold
 * more than the mean. No published figure was found worked out: the equation was read, the rows are computed with it.
 * @source abih-equations
 * @param input - Room, air, vapour, times and the unit wanted.
 * @returns The concentration then and at its highest in `input.unit`, not rounded, and the cautions.
 * @throws An `InputError` that names the field; `conflict` where there would be more vapour than air.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const room = safety.vapourBuildUp({
 *   room: { value: 10000, unit: 'ft3' },
 *   airflow: { value: 1000, unit: 'ft3/min' },
 *   mixingFactor: 1,
 *   vapour: { value: 15, unit: 'ft3' },
 *   evaporationTime: { value: 30, unit: 'min' },
 *   elapsed: { value: 15, unit: 'min' },
 *   lowerExplosiveLimit: { value: 1.1, unit: '%' },
 *   unit: 'ppm',
 * });
 * [room.concentration.value.toFixed(0), room.ofExplosiveLimit?.value.toFixed(1)]; // => ['388', '4.3']
 * ```
 */
export function vapourBuildUp<U extends ShareUnit>(input: VapourBuildUpInput<U>): VapourBuildUp<U> {
  const fn = 'vapourBuildUp';
  const { room, airflow, mixingFactor, vapour, evaporationTime, elapsed, lowerExplosiveLimit, unit } = fields(
    fn,
    input,
  );
  const room_m3 = read(fn, 'room', room, VOLUME, POSITIVE);
  const airflow_m3PerS = read(fn, 'airflow', airflow, FLOW, NOT_NEGATIVE);
  const factor = readMixingFactor(fn, mixingFactor);
  const vapour_m3 = read(fn, 'vapour', vapour, VOLUME, POSITIVE);
  const evaporation_s = read(fn, 'evaporationTime', evaporationTime, TIME, POSITIVE);
  const elapsed_s = read(fn, 'elapsed', elapsed, TIME, NOT_NEGATIVE);
  const lel = readOptional(fn, 'lowerExplosiveLimit', lowerExplosiveLimit, SHARE, WITHIN);

  const renewed_perS = airflow_m3PerS / (factor * room_m3);
  const filled_perS = vapour_m3 / evaporation_s / room_m3;
  const after = (time_s: number) => filled_perS * time_s * meanDecay(renewed_perS * time_s);
  const top = after(evaporation_s);
  if (top > 1) refuse(fn, 'conflict', ['vapour'], 'less vapour than air in the room', vapour);
  const then =
    elapsed_s <= evaporation_s
      ? after(elapsed_s)
      : top * Math.exp(-renewed_perS * (elapsed_s - evaporation_s));

  const highest = write(fn, top, SHARE, unit);
  const ofExplosiveLimit = lel === undefined ? undefined : write(fn, top / lel, SHARE, '%');
  const named = ofExplosiveLimit ? { highest, ofExplosiveLimit } : { highest };
  const code = ofExplosiveLimit ? 'vapour-near-explosive-limit' : 'vapour-builds-up';
  return {
    concentration: write(fn, then, SHARE, unit),
    highest,
    ...(ofExplosiveLimit && { ofExplosiveLimit }),
    cautions: [hazard(code, 'abih-equations', named)],
    basis: [
      basis(
        'concentration',
        'safety.vapourBuildUp',
        'vapour / evaporationTime · mixingFactor / airflow · (1 − exp(−airflow · elapsed / (mixingFactor · room)))',
        'abih-equations',
        { room, airflow, mixingFactor, vapour, evaporationTime, elapsed, lowerExplosiveLimit },
        'vapour evenly mixed, given off evenly',
      ),
    ],
  };
}

/** Mean of exp(−x) from 0 to x: 1 where nothing decays. */
function meanDecay(x: number): number {
  return x === 0 ? 1 : -Math.expm1(-x) / x;
}
