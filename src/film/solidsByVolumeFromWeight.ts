import { DENSITY, SHARE } from '../core/dimensions.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Quantity, Share } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link solidsByVolumeFromWeight}. */
export interface SolidsByVolumeFromWeightInput<U extends ShareUnit = ShareUnit> {
  /** Share of the weight that stays when it has cured. */
  readonly solidsByWeight: Share;
  /** Density of the material as mixed. */
  readonly density: Density;
  /** Density of what leaves. */
  readonly solventDensity: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Solids by volume where a data sheet gives them by weight: what leaves is light, so the two differ.
 *
 * @formula
 * ```math
 * s_v = 1 - (1 - s_w) \, \frac{\rho}{\rho_l}
 * ```
 * @units share, densities; answers share.
 * @validRange solidsByWeight above 0 % and up to 100 %, densities above 0; what leaves must not take up more than the
 * whole. One solvent, or the mean density of several.
 * @monotone solidsByWeight +, density -, solventDensity +
 * @accuracy Exact up to round-off: absolute error below 1e-15; as good as the two densities, whose error it magnifies
 * where little solid is left.
 * @source definition
 * @param input - Solids by weight, densities and the unit wanted.
 * @returns The solids by volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the solvent would take up all of the
 * volume.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.solidsByVolumeFromWeight({
 *   solidsByWeight: { value: 70, unit: '%' },
 *   density: { value: 1.2, unit: 'kg/l' },
 *   solventDensity: { value: 0.88, unit: 'kg/l' },
 *   unit: '%',
 * }).value.toFixed(2); // => '59.09'
 * ```
 */
export const solidsByVolumeFromWeight = /* @__PURE__ */ monotone(
  { solidsByWeight: '+', density: '-', solventDensity: '+' },
  <U extends ShareUnit>(input: SolidsByVolumeFromWeightInput<U>): Quantity<U> => {
    const { solidsByWeight, density, solventDensity, unit } = fields('solidsByVolumeFromWeight', input);
    const byWeight = read('solidsByVolumeFromWeight', 'solidsByWeight', solidsByWeight, SHARE, PART_OR_WHOLE);
    const density_kgPerM3 = read('solidsByVolumeFromWeight', 'density', density, DENSITY, POSITIVE);
    const solvent_kgPerM3 = read(
      'solidsByVolumeFromWeight',
      'solventDensity',
      solventDensity,
      DENSITY,
      POSITIVE,
    );
    const byVolume = 1 - (Math.max(1 - byWeight, 0) * density_kgPerM3) / solvent_kgPerM3;
    if (!(byVolume > 1e-12)) {
      refuse(
        'solidsByVolumeFromWeight',
        'conflict',
        ['solventDensity'],
        'such that some volume is left',
        solventDensity,
      );
    }
    return write('solidsByVolumeFromWeight', byVolume, SHARE, unit);
  },
);
