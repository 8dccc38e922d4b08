import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { DENSITY, SHARE } from '../core/dimensions.ts';
import { THINNER_IGNITES } from '../core/hazards.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import type { Density, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { DensityUnit, ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link thinnedMix}. */
export interface ThinnedMixInput<S extends ShareUnit = ShareUnit, D extends DensityUnit = DensityUnit> {
  /** Solids by volume of the mix before it is thinned. */
  readonly solidsByVolume: Share;
  /** Volume of thinner for the volume of the mix: 5 parts to 100 are 5 %. */
  readonly thinner: Share;
  /** Density of the thinner. */
  readonly thinnerDensity: Density;
  /** Solvent that the mix gives off before it is thinned, as mass in its volume. None where not given. */
  readonly voc?: Density | undefined;
  /** Units of the answer. */
  readonly units: { readonly share: S; readonly density: D };
}

/** Answer of {@link thinnedMix}. */
export interface ThinnedMix<S extends ShareUnit = ShareUnit, D extends DensityUnit = DensityUnit> {
  /** Solids by volume of the thinned mix. */
  readonly solidsByVolume: Quantity<S>;
  /** Mass of thinner in a volume of the thinned mix: what it adds to the solvent given off. */
  readonly vocAdded: Quantity<D>;
  /** All the solvent that the thinned mix gives off, as mass in its volume. */
  readonly voc: Quantity<D>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * What thinner does to a mix: fewer solids in the same volume, and solvent into the air.
 *
 * @formula
 * ```math
 * s' = \frac{s}{1 + t} \qquad C' = \frac{C + t \, \rho_t}{1 + t}
 * ```
 * @units shares, densities; answers a share and densities.
 * @validRange solidsByVolume above 0 % and up to 100 %; thinner and voc 0 or more; thinnerDensity above 0.
 * @accuracy Exact up to round-off; volumes are taken to add. For a mix without water and exempt solvent.
 * No published figure was found worked out.
 * @source definition, common-practice
 * @param input - Solids, thinner and the units wanted.
 * @returns Solids by volume, solvent added and in all, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.thinnedMix({
 *   solidsByVolume: { value: 84, unit: '%' },
 *   thinner: { value: 5, unit: '%' },
 *   thinnerDensity: { value: 0.84, unit: 'kg/l' },
 *   voc: { value: 126, unit: 'g/l' },
 *   units: { share: '%', density: 'g/l' },
 * });
 * [answer.solidsByVolume, answer.voc].map(({ value }) => value.toFixed(1)); // => ['80.0', '160.0']
 * ```
 */
export function thinnedMix<S extends ShareUnit, D extends DensityUnit>(
  input: ThinnedMixInput<S, D>,
): ThinnedMix<S, D> {
  const fn = 'thinnedMix';
  const given = fields(fn, input);
  const { solidsByVolume, thinner, thinnerDensity, voc } = given;
  const units = readObject(fn, 'units', given.units);
  const solids = read(fn, 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
  const thinnerShare = read(fn, 'thinner', thinner, SHARE, NOT_NEGATIVE);
  const thinner_kgPerM3 = read(fn, 'thinnerDensity', thinnerDensity, DENSITY, POSITIVE);
  const voc_kgPerM3 = readOr(0, fn, 'voc', voc, DENSITY, NOT_NEGATIVE);

  const diluted = 1 + thinnerShare;
  const added_kgPerM3 = (thinnerShare * thinner_kgPerM3) / diluted;
  const densityOf = (kgPerM3: number) => write(fn, kgPerM3, DENSITY, units.density, ['units', 'density']);
  const solidsThinned = write(fn, solids / diluted, SHARE, units.share, ['units', 'share']);
  const vocAdded = densityOf(added_kgPerM3);
  const params = { solidsByVolume: write(fn, solids / diluted, SHARE, '%'), vocAdded };
  const cautions: readonly Caution[] = [
    { ...THINNER_IGNITES, params: { vocAdded, ...THINNER_IGNITES.params } },
    { code: 'thinner-thins-film', severity: 'caution', params, source: 'common-practice' },
  ];
  return {
    solidsByVolume: solidsThinned,
    vocAdded,
    voc: densityOf(voc_kgPerM3 / diluted + added_kgPerM3),
    cautions: thinnerShare > 0 ? cautions : [],
    basis: [
      basis('solidsByVolume', 'mix.thinnedMix', 'solidsByVolume / (1 + thinner)', 'definition', {
        solidsByVolume,
        thinner,
        thinnerDensity,
        voc,
      }),
    ],
  };
}
