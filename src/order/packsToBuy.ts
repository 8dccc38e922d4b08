import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { counted } from '../core/decimal.ts';
import { SHARE, VOLUME } from '../core/dimensions.ts';
import { echoIn } from '../core/echo.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Quantity, Share, Volume } from '../core/quantity.ts';
import { readRange, type Range, type Ranged } from '../core/range.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import { readCount, readName } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link packsToBuy}. */
export interface PacksToBuyInput<U extends VolumeUnit = VolumeUnit> {
  /** Name of the material, for the cautions. */
  readonly name: string;
  /** Volume to be mixed, as one figure or as a range. */
  readonly need: Ranged<Volume>;
  /** Mixed volume of one pack: what is in it, not what is printed large on it. */
  readonly pack: Volume;
  /** Share of the need to be bought on top as a spare. None where not given. */
  readonly spare?: Share | undefined;
  /** Packs are sold in multiples of this many. Singly where not given. */
  readonly multiple?: number | undefined;
  /** Unit of the volumes in the answer. */
  readonly unit: U;
}

/** Answer of {@link packsToBuy}. */
export interface PacksToBuy<U extends VolumeUnit = VolumeUnit> {
  /** Packs that the lowest, the likely and the highest need take. */
  readonly packs: { readonly low: number; readonly likely?: number | undefined; readonly high: number };
  /** Packs to buy: enough for the highest need and the spare, in whole multiples. */
  readonly buy: number;
  /** Volume in them. */
  readonly bought: Quantity<U>;
  /** What will be left of it, between the highest and the lowest need. */
  readonly leftover: Range<U>;
  /** What belongs with the purchase. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How many packs to buy, so that the floor does not end before the wall.
 *
 * @formula
 * ```math
 * n = \left\lceil \frac{V\,(1 + s)}{p} \right\rceil
 * ```
 * @units volumes, share; answers a count and volumes.
 * @validRange need and pack above 0; spare of 0 % or more; multiple a whole number of 1 or more.
 * @accuracy Counted in decimals from 12 significant digits: a need that is a whole number of packs never takes one more.
 * @source definition
 * @param input - Need, pack, and how packs are sold.
 * @returns Packs for the low, likely and high need, the number to buy, its volume and what will be left.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 * import * as order from 'coating-math/order';
 *
 * const need = film.volumeNeeded({
 *   area: { value: 9625, unit: 'ft2' },
 *   wetThickness: { value: 1, unit: 'mil' },
 *   unit: 'usgal',
 * });
 * order.packsToBuy({ name: 'primer', need, pack: { value: 1, unit: 'usgal' }, unit: 'usgal' }).buy; // => 6
 * ```
 */
export function packsToBuy<U extends VolumeUnit>(input: PacksToBuyInput<U>): PacksToBuy<U> {
  const { name, need, pack, spare, multiple, unit } = fields('packsToBuy', input);
  const material = readName('packsToBuy', 'name', name);
  const need_m3 = readRange('packsToBuy', 'need', need, VOLUME, POSITIVE);
  const pack_m3 = read('packsToBuy', 'pack', pack, VOLUME, POSITIVE);
  const spareShare = readOr(0, 'packsToBuy', 'spare', spare, SHARE, NOT_NEGATIVE);
  const lot = multiple === undefined ? 1 : readCount('packsToBuy', 'multiple', multiple);

  const packsFor = (volume_m3: number): number =>
    counted(volume_m3 / pack_m3)
      .ceil()
      .toNumber();
  const lots = counted((need_m3.high * (1 + spareShare)) / pack_m3)
    .div(lot)
    .ceil();
  const count = lots.times(lot);
  const buy = count.toNumber();
  const bought_m3 = buy * pack_m3;
  const inPacks = { value: count.times(pack.value).toNumber(), unit: pack.unit };
  const bought = echoIn('packsToBuy', inPacks, bought_m3, VOLUME, unit);
  /** What is no more than round-off is nothing. */
  const left = (volume_m3: number) => {
    const rest_m3 = bought_m3 - volume_m3;
    return write('packsToBuy', rest_m3 > 1e-12 * bought_m3 ? rest_m3 : 0, VOLUME, unit);
  };
  const leftover = {
    low: left(need_m3.high),
    ...(need_m3.likely !== undefined && { likely: left(need_m3.likely) }),
    high: left(need_m3.low),
  };
  return {
    packs: {
      low: packsFor(need_m3.low),
      ...(need_m3.likely !== undefined && { likely: packsFor(need_m3.likely) }),
      high: packsFor(need_m3.high),
    },
    buy,
    bought,
    leftover,
    cautions:
      leftover.high.value > 0
        ? [
            {
              code: 'leftover-material',
              severity: 'caution',
              params: { name: material, leftover: leftover.high },
              source: 'common-practice',
            },
          ]
        : [],
    basis: [
      basis('buy', 'order.packsToBuy', 'n = ⌈V (1 + s) / p⌉', 'definition', { need, pack, spare, multiple }),
    ],
  };
}
