import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { DENSITY } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Density } from '../core/quantity.ts';
import { fields, read } from '../core/read.ts';
import { readWeightParts, type VolumePart, type WeightPart } from './parts.ts';
import { RATIO_BY_VOLUME } from './splitByVolume.ts';
import { scaleTo } from './weightRatio.ts';

/** One part of a ratio by weight, with the density that turns it into one by volume. */
export interface DenseWeightPart extends WeightPart {
  /** Density of the part, from the instructions. */
  readonly density: Density;
}

/** Input of {@link volumeRatio}. */
export interface VolumeRatioInput {
  /** The ratio by weight with the density of each part. */
  readonly parts: readonly DenseWeightPart[];
}

/** Answer of {@link volumeRatio}. */
export interface VolumeRatio {
  /** The same ratio by volume, to 1 of the smallest part. */
  readonly parts: readonly VolumePart[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The ratio to pour to marks for a mix whose ratio is stated by weight.
 *
 * @formula
 * ```math
 * r_i = \frac{w_i / \rho_i}{\min_j w_j / \rho_j}
 * ```
 * @units numbers of parts, densities; answers numbers of parts.
 * @validRange every part and every density above 0.
 * @accuracy Exact up to round-off; as good as the densities. No published figure was found worked out.
 * @source definition
 * @param input - The ratio by weight with densities.
 * @returns The ratio by volume, the smallest part being 1, and the cautions.
 * @throws An `InputError` that names the field; `missing` for a part without density.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.volumeRatio({
 *   parts: [
 *     { name: 'A', weightParts: 100, density: { value: 1.13, unit: 'kg/l' } },
 *     { name: 'B', weightParts: 50, density: { value: 1, unit: 'kg/l' } },
 *   ],
 * }).parts.map(({ parts }) => parts.toFixed(2)); // => ['1.77', '1.00']
 * ```
 */
export function volumeRatio(input: VolumeRatioInput): VolumeRatio {
  const { parts } = fields('volumeRatio', input);
  const { names, weights, given } = readWeightParts('volumeRatio', parts);
  const volumes = parts.map(
    ({ density }, i) =>
      (weights[i]?.toNumber() ?? 0) /
      read('volumeRatio', 'density', density, DENSITY, POSITIVE, ['parts', i]),
  );
  const scaled = scaleTo('volumeRatio', volumes, 1 / Math.min(...volumes));
  return {
    parts: names.map((name, i) => ({ name, parts: scaled[i] ?? 0 })),
    cautions: [RATIO_BY_VOLUME],
    basis: [
      basis('parts', 'mix.volumeRatio', 'parts / density, to 1 of the smallest', 'definition', {
        parts: given.map((part, i) => ({ ...part, density: parts[i]?.density })),
      }),
    ],
  };
}
