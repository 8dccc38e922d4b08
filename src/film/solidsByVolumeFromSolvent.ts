import { DENSITY, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link solidsByVolumeFromSolvent}. */
export interface SolidsByVolumeFromSolventInput<U extends ShareUnit = ShareUnit> {
  /** Mass of what leaves, in a volume of the material as mixed. */
  readonly solventContent: Density;
  /** Density of what leaves. */
  readonly solventDensity: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Solids by volume where a data sheet gives the solvent in a litre or gallon of the material.
 *
 * @formula
 * ```math
 * s_v = 1 - \frac{c}{\rho_l}
 * ```
 * @units densities; answers share.
 * @validRange solventContent 0 or more and below solventDensity. Water counts as what leaves, exempt solvents too.
 * @monotone solventContent -, solventDensity +
 * @accuracy Exact up to round-off: absolute error below 5e-16.
 * @source co-5ccr-1001-29
 * @param input - Solvent, its density and the unit wanted.
 * @returns The solids by volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the solvent would take up all of the
 * volume.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.solidsByVolumeFromSolvent({
 *   solventContent: { value: 2.8, unit: 'lb/usgal' },
 *   solventDensity: { value: 7.36, unit: 'lb/usgal' },
 *   unit: '%',
 * }).value.toFixed(2); // => '61.96'
 * ```
 */
export const solidsByVolumeFromSolvent = /* @__PURE__ */ monotone(
  { solventContent: '-', solventDensity: '+' },
  <U extends ShareUnit>(input: SolidsByVolumeFromSolventInput<U>): Quantity<U> => {
    const { solventContent, solventDensity, unit } = fields('solidsByVolumeFromSolvent', input);
    const content_kgPerM3 = read(
      'solidsByVolumeFromSolvent',
      'solventContent',
      solventContent,
      DENSITY,
      NOT_NEGATIVE,
    );
    const solvent_kgPerM3 = read(
      'solidsByVolumeFromSolvent',
      'solventDensity',
      solventDensity,
      DENSITY,
      POSITIVE,
    );
    if (content_kgPerM3 >= solvent_kgPerM3 * (1 - 1e-12)) {
      refuse(
        'solidsByVolumeFromSolvent',
        'conflict',
        ['solventContent'],
        'less than solventDensity',
        solventContent,
      );
    }
    return write('solidsByVolumeFromSolvent', 1 - content_kgPerM3 / solvent_kgPerM3, SHARE, unit);
  },
);
