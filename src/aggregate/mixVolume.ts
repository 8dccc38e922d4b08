import { DENSITY, MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Mass, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link mixVolume}. */
export interface MixVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Mixed resin. */
  readonly binder: Volume;
  /** Sand or filler. */
  readonly sand: Mass;
  /** Density of its grains. */
  readonly solidDensity: Density;
  /** Share of the finished volume that is air, 5 to 15 % in a trowelled mortar. None where not given. */
  readonly air?: Share | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What a slurry or a mortar yields: resin and grains take their own room, and the air that stays in takes some too.
 *
 * @formula
 * ```math
 * V = \frac{V_r + m / \rho_s}{1 - a}
 * ```
 * @units volume, mass, density, share; answers volume.
 * @validRange binder, sand and solidDensity above 0, air from 0 % to below 100 %. Without air only where the resin
 * fills all voids, see `mortarYield`.
 * @monotone binder +, sand +, solidDensity -, air +
 * @accuracy Exact up to round-off: relative error below 1e-15 for air of up to a half, with fewer digits beyond. Never
 * from the loose volume of the sand: that promises about a third too much. No published figure: handbooks work the same
 * sum for concrete only.
 * @source navedtra-14070
 * @param input - Resin, sand, air and the unit wanted.
 * @returns The yield in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.mixVolume({
 *   binder: { value: 1, unit: 'usgal' },
 *   sand: { value: 40, unit: 'lb' },
 *   solidDensity: { value: 2.65, unit: 'kg/l' },
 *   air: { value: 8, unit: '%' },
 *   unit: 'ft3',
 * }).value.toFixed(4); // => '0.4081'
 * ```
 */
export const mixVolume = /* @__PURE__ */ monotone(
  { binder: '+', sand: '+', solidDensity: '-', air: '+' },
  <U extends VolumeUnit>(input: MixVolumeInput<U>): Quantity<U> => {
    const { binder, sand, solidDensity, air, unit } = fields('mixVolume', input);
    const binder_m3 = read('mixVolume', 'binder', binder, VOLUME, POSITIVE);
    const sand_kg = read('mixVolume', 'sand', sand, MASS, POSITIVE);
    const solid_kgPerM3 = read('mixVolume', 'solidDensity', solidDensity, DENSITY, POSITIVE);
    const airShare = readOr(0, 'mixVolume', 'air', air, SHARE, PART);
    return write('mixVolume', (binder_m3 + sand_kg / solid_kgPerM3) / (1 - airShare), VOLUME, unit);
  },
);
