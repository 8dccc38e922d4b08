import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import { DENSITY } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Density } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readVolumeParts, type VolumePart, type WeightPart } from './parts.ts';

/** One part of a ratio by volume, with the density that turns it into one by weight. */
export interface DenseVolumePart extends VolumePart {
  /** Density of the part, from the instructions. */
  readonly density: Density;
}

/** Input of {@link weightRatio}. */
export interface WeightRatioInput {
  /** The ratio by volume with the density of each part. */
  readonly parts: readonly DenseVolumePart[];
}

/** Answer of {@link weightRatio}. */
export interface WeightRatio {
  /** The same ratio by weight, to 100 of the first part. */
  readonly parts: readonly WeightPart[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The ratio to put on the scale for a mix whose ratio is stated by volume.
 *
 * @formula
 * ```math
 * w_i = 100 \, \frac{r_i \, \rho_i}{r_1 \, \rho_1}
 * ```
 * @units numbers of parts, densities; answers numbers of parts.
 * @validRange every part and every density above 0.
 * @accuracy Exact up to round-off; as good as the densities. No published figure was found worked out.
 * @source definition
 * @param input - The ratio by volume with densities.
 * @returns The ratio by weight, the first part being 100.
 * @throws An `InputError` that names the field; `missing` for a part without density.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.weightRatio({
 *   parts: [
 *     { name: 'A', parts: 3, density: { value: 1.1, unit: 'kg/l' } },
 *     { name: 'B', parts: 1, density: { value: 0.99, unit: 'kg/l' } },
 *   ],
 * }).parts.map(({ weightParts }) => weightParts.toFixed(1)); // => ['100.0', '30.0']
 * ```
 */
export function weightRatio(input: WeightRatioInput): WeightRatio {
  const { parts } = fields('weightRatio', input);
  const { names, weights, given } = readVolumeParts('weightRatio', parts);
  const masses = parts.map(
    ({ density }, i) =>
      (weights[i]?.toNumber() ?? 0) *
      read('weightRatio', 'density', density, DENSITY, POSITIVE, ['parts', i]),
  );
  const scaled = scaleTo('weightRatio', masses, 100 / (masses[0] ?? 1));
  return {
    parts: names.map((name, i) => ({ name, weightParts: scaled[i] ?? 0 })),
    basis: [
      basis('parts', 'mix.weightRatio', 'parts · density, to 100 of the first', 'definition', {
        parts: given.map((part, i) => ({ ...part, density: parts[i]?.density })),
      }),
    ],
  };
}

/** The numbers of a ratio times a factor; refused where a double cannot hold them. */
export function scaleTo(fn: string, numbers: readonly number[], factor: number): readonly number[] {
  const scaled = numbers.map((number) => number * factor);
  if (!scaled.every((number) => Number.isFinite(number) && number > 0)) {
    refuse(fn, 'too-large', ['parts'], 'a ratio that a number can hold', scaled.join(' : '));
  }
  return scaled;
}
