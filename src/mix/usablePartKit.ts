import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { counted, toShare } from '../core/decimal.ts';
import { VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readNames, readObjects } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readVolumeParts, type PartVolume, type VolumePart } from './parts.ts';

/** Input of {@link usablePartKit}. */
export interface UsablePartKitInput<U extends VolumeUnit = VolumeUnit> {
  /** What is left of each part; 0 where a can is empty. */
  readonly onHand: readonly PartVolume[];
  /** The ratio by volume. */
  readonly parts: readonly VolumePart[];
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link usablePartKit}. */
export interface UsablePartKit<U extends VolumeUnit = VolumeUnit> {
  /** What can be mixed in ratio, all parts together. */
  readonly mixable: Quantity<U>;
  /** The part that runs out first. */
  readonly shortSide: string;
  /** How much of each part goes in. */
  readonly used: readonly PartVolume<U>[];
  /** How much of each part is left. */
  readonly left: readonly PartVolume<U>[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** What two volumes in ratio may differ by, each cut to 12 digits. */
const ROUND_OFF = 1e-11;

/**
 * What opened cans really make: the part that is short decides, and the rest of the others stays over.
 *
 * @formula
 * ```math
 * V = \left( \min_i \frac{V_i}{r_i} \right) \sum_j r_j
 * ```
 * @units volumes, numbers of parts; answers volumes.
 * @validRange volumes 0 or more, parts above 0; every part of the ratio on hand under the same name.
 * @accuracy Worked out in decimals; used and left add up to what is on hand.
 * No published figure: it is the definition of a ratio.
 * @source definition, common-practice
 * @param input - What is on hand, ratio and the unit wanted.
 * @returns What can be mixed, what goes in, what is left, and the cautions.
 * @throws An `InputError` that names the field; `missing` where a part of the ratio is not on hand.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const kit = mix.usablePartKit({
 *   onHand: [
 *     { name: 'A', volume: { value: 1.4, unit: 'usgal' } },
 *     { name: 'B', volume: { value: 0.9, unit: 'usgal' } },
 *   ],
 *   parts: [{ name: 'A', parts: 2 }, { name: 'B', parts: 1 }],
 *   unit: 'usgal',
 * });
 * [kit.mixable.value, kit.shortSide, kit.left[1]?.volume.value]; // => [2.1, 'A', 0.2]
 * ```
 */
export function usablePartKit<U extends VolumeUnit>(input: UsablePartKitInput<U>): UsablePartKit<U> {
  const fn = 'usablePartKit';
  const { onHand, parts, unit } = fields(fn, input);
  const list = readObjects(fn, 'onHand', onHand, 1);
  const stock = readNames(fn, list, ['onHand']).map((name, i) => {
    const volume_m3 = read(fn, 'volume', list[i]?.volume, VOLUME, NOT_NEGATIVE, ['onHand', i]);
    return { name, volume: counted(write(fn, volume_m3, VOLUME, unit).value) };
  });
  const ratio = readVolumeParts(fn, parts);
  const matched = ratio.names.map((name, i) => {
    const found = stock.find((one) => one.name === name);
    const weight = ratio.weights[i];
    if (!found || !weight) return refuse(fn, 'missing', ['onHand'], `a list with ${name} in it`, onHand);
    return { ...found, weight, sets: found.volume.div(weight) };
  });
  const short = matched.reduce((least, next) => (next.sets.lt(least.sets) ? next : least));
  const used = matched.map(({ weight, volume }) => {
    const taken = toShare(short.sets.times(weight));
    return volume.minus(taken).gt(volume.times(ROUND_OFF)) ? taken : volume;
  });
  const left = matched.map(({ name, volume }, i) => ({
    name,
    volume: { value: volume.minus(used[i] ?? 0).toNumber(), unit },
  }));
  const leftover = left.flatMap(({ name, volume }): Caution[] =>
    volume.value > 0
      ? [
          {
            code: 'never-pool-leftovers',
            severity: 'danger',
            params: { name, left: volume },
            source: 'common-practice',
          },
        ]
      : [],
  );
  return {
    mixable: { value: used.reduce((sum, one) => sum.plus(one)).toNumber(), unit },
    shortSide: short.name,
    used: matched.map(({ name }, i) => ({ name, volume: { value: used[i]?.toNumber() ?? 0, unit } })),
    left,
    cautions: leftover,
    basis: [
      basis('mixable', 'mix.usablePartKit', 'least of on hand / parts · sum of parts', 'definition', {
        onHand: list.map(({ name, volume }) => ({ name, volume })),
        parts: ratio.given,
      }),
    ],
  };
}
