import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { counted, shareOut } from '../core/decimal.ts';
import { VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readVolumeParts, type PartVolume, type VolumePart } from './parts.ts';

/** Input of {@link splitByVolume}. */
export interface SplitByVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** What is to be mixed, all parts together. */
  readonly total: Volume;
  /** The ratio by volume, in pouring order. */
  readonly parts: readonly VolumePart[];
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link splitByVolume}. */
export interface VolumeSplit<U extends VolumeUnit = VolumeUnit> {
  /** What is shared out, to 12 digits. */
  readonly total: Quantity<U>;
  /** How much of each part, in the order given. They add up to the total exactly. */
  readonly parts: readonly PartVolume<U>[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How much of each part goes into a mix whose ratio is stated by volume.
 *
 * @formula
 * ```math
 * V_i = V \, \frac{r_i}{\sum_j r_j}
 * ```
 * @units volume, numbers of parts; answers volumes.
 * @validRange total above 0; one part or more, each above 0.
 * @accuracy Worked out in decimals to 14 digits; the last part takes what is left, so that the parts add up exactly.
 * @source definition, ufc-3-190-06
 * @param input - Total, ratio and the unit wanted.
 * @returns The volume of each part in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const parts = [{ name: 'A', parts: 2 }, { name: 'B', parts: 1 }];
 * mix.splitByVolume({ total: { value: 2.4, unit: 'usgal' }, parts, unit: 'usgal' }).parts;
 * // => [
 * //   { name: 'A', volume: { value: 1.6, unit: 'usgal' } },
 * //   { name: 'B', volume: { value: 0.8, unit: 'usgal' } },
 * // ]
 * ```
 */
export function splitByVolume<U extends VolumeUnit>(input: SplitByVolumeInput<U>): VolumeSplit<U> {
  const { total, parts, unit } = fields('splitByVolume', input);
  const total_m3 = read('splitByVolume', 'total', total, VOLUME, POSITIVE);
  const { names, weights, given } = readVolumeParts('splitByVolume', parts);
  const whole = counted(write('splitByVolume', total_m3, VOLUME, unit).value);
  const volumes = shareOut(whole, weights);
  return {
    total: { value: whole.toNumber(), unit },
    parts: names.map((name, i) => ({ name, volume: { value: volumes[i]?.toNumber() ?? 0, unit } })),
    cautions: [RATIO_BY_VOLUME],
    basis: [
      basis('parts', 'mix.splitByVolume', 'total · parts / sum of parts', 'definition', {
        total,
        parts: given,
      }),
    ],
  };
}

/** The commonest slip at the table: the figure is poured onto a scale. */
export const RATIO_BY_VOLUME: Caution = {
  code: 'ratio-by-volume',
  severity: 'caution',
  params: {},
  source: 'common-practice',
};
