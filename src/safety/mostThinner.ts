import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { DENSITY, VOLUME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { THINNER_IGNITES } from '../core/hazards.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Density, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link mostThinner}. */
export interface MostThinnerInput<U extends VolumeUnit = VolumeUnit> {
  /** Volume of the mix before it is thinned. */
  readonly volume: Volume;
  /** Water and exempt solvent in it, where `voc` and `limit` are figures less these. None where not given. */
  readonly excluded?: Volume | undefined;
  /** Solvent in a volume of the mix before it is thinned, counted as the limit counts it. */
  readonly voc: Density;
  /** Solvent in a volume of the thinner; its density where it is all solvent. */
  readonly thinnerVoc: Density;
  /** Highest figure allowed for the mix as laid. It is the law of the place, so it is yours to give. */
  readonly limit: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link mostThinner}. */
export interface MostThinner<U extends VolumeUnit = VolumeUnit> {
  /** Most thinner that keeps the mix within the limit. Missing where the limit sets no bound. */
  readonly thinner?: Quantity<U> | undefined;
  /** Whether the limit leaves room, leaves none, or sets no bound, as the thinner is within it itself. */
  readonly room: 'some' | 'none' | 'no bound';
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * The most thinner that a limit on solvent leaves room for. What the product's instructions allow may be less.
 *
 * @formula
 * ```math
 * y = \frac{(V - V_x)(L - C)}{C_t - L}
 * ```
 * @units volumes, densities; answers volume.
 * @validRange volume, thinnerVoc and limit above 0; voc 0 or more; excluded less than volume.
 * @accuracy Exact up to round-off; volumes are taken to add.
 * @source metal-finishing-2013
 * @param input - Mix, thinner, limit and the unit wanted.
 * @returns The volume of thinner in `input.unit`, not rounded, and the cautions.
 * @throws An `InputError` that names the field; `conflict` where water and exempt solvent fill the can.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * safety
 *   .mostThinner({
 *     volume: { value: 5, unit: 'usgal' },
 *     voc: { value: 3.18, unit: 'lb/usgal' },
 *     thinnerVoc: { value: 6.4, unit: 'lb/usgal' },
 *     limit: { value: 3.5, unit: 'lb/usgal' },
 *     unit: 'usgal',
 *   })
 *   .thinner?.value.toFixed(2); // => '0.55'
 * ```
 */
export function mostThinner<U extends VolumeUnit>(input: MostThinnerInput<U>): MostThinner<U> {
  const fn = 'mostThinner';
  const { volume, excluded, voc, thinnerVoc, limit, unit } = fields(fn, input);
  const volume_m3 = read(fn, 'volume', volume, VOLUME, POSITIVE);
  const excluded_m3 = readOr(0, fn, 'excluded', excluded, VOLUME, NOT_NEGATIVE);
  const voc_kgPerM3 = read(fn, 'voc', voc, DENSITY, NOT_NEGATIVE);
  const thinner_kgPerM3 = read(fn, 'thinnerVoc', thinnerVoc, DENSITY, POSITIVE);
  const limit_kgPerM3 = read(fn, 'limit', limit, DENSITY, POSITIVE);
  const counted_m3 = volume_m3 - excluded_m3;
  if (counted_m3 <= 1e-12 * volume_m3) {
    refuse(fn, 'conflict', ['excluded'], 'less than the volume of the mix', excluded);
  }

  const slack = 1e-12 * limit_kgPerM3;
  const over = voc_kgPerM3 > limit_kgPerM3 + slack;
  const room = Math.max(0, limit_kgPerM3 - voc_kgPerM3);
  const bound = thinner_kgPerM3 > limit_kgPerM3 + slack;
  const most_m3 = bound ? (counted_m3 * room) / (thinner_kgPerM3 - limit_kgPerM3) : 0;
  const thinner = write(fn, most_m3, VOLUME, unit);
  const params = { voc: echo(voc), limit: echo(limit) };
  const about = (code: Caution['code']): Caution => ({
    code,
    severity: 'caution',
    params,
    source: 'metal-finishing-2013',
  });
  return {
    ...((over || bound) && { thinner }),
    room: over || (bound && most_m3 === 0) ? 'none' : bound ? 'some' : 'no bound',
    cautions: [
      ...(over ? [about('voc-over-limit')] : []),
      ...(over || bound ? [] : [about('thinner-without-bound')]),
      THINNER_IGNITES,
    ],
    basis: [
      basis(
        'thinner',
        'safety.mostThinner',
        '(volume − excluded) · (limit − voc) / (thinnerVoc − limit)',
        'metal-finishing-2013',
        { volume, excluded, voc, thinnerVoc, limit },
      ),
    ],
  };
}
