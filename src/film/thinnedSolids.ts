import { SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART, PART_OR_WHOLE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link thinnedSolids}. */
export interface ThinnedSolidsInput<U extends ShareUnit = ShareUnit> {
  /** Solids as supplied; by volume, never by weight. */
  readonly solidsByVolume: Share;
  /** Thinner as a share of the paint as supplied, by volume: 10 % is a tenth of a gallon to each gallon. */
  readonly thinnerOfPaint?: Share | undefined;
  /** Thinner as a share of the finished mix, by volume. */
  readonly thinnerOfMix?: Share | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Solids by volume of a material to which thinner was added. Ten per cent of the paint and ten per cent of the mix
 * are two different amounts.
 *
 * @formula
 * ```math
 * s' = \frac{s}{1 + t_\text{paint}} \qquad s' = s \, (1 - t_\text{mix})
 * ```
 * @units shares; answers share.
 * @validRange solidsByVolume above 0 % and up to 100 %; one of thinnerOfPaint, 0 or more, and thinnerOfMix, from 0 %
 * to below 100 %. Volumes add: what the two take up into each other is not in it.
 * @monotone solidsByVolume +, thinnerOfPaint -, thinnerOfMix -
 * @accuracy Exact up to round-off: relative error below 6e-16 for thinner of up to half the mix, with fewer digits the nearer it
 * comes to all of it.
 * @source pcrc-film-2003
 * @param input - Solids, thinner and the unit wanted.
 * @returns The solids of the mix in `input.unit`, not rounded.
 * @throws An `InputError` that names the field: `missing` without thinner, `conflict` where both were given.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * const solidsByVolume = { value: 65, unit: '%' as const };
 * const tenth = { value: 10, unit: '%' as const };
 * film.thinnedSolids({ solidsByVolume, thinnerOfPaint: tenth, unit: '%' }).value.toFixed(2); // => '59.09'
 * film.thinnedSolids({ solidsByVolume, thinnerOfMix: tenth, unit: '%' }).value.toFixed(2); // => '58.50'
 * ```
 */
export const thinnedSolids = /* @__PURE__ */ monotone(
  { solidsByVolume: '+', thinnerOfPaint: '-', thinnerOfMix: '-' },
  <U extends ShareUnit>(input: ThinnedSolidsInput<U>): Quantity<U> => {
    const { solidsByVolume, thinnerOfPaint, thinnerOfMix, unit } = fields('thinnedSolids', input);
    const solids = read('thinnedSolids', 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
    if (thinnerOfMix !== undefined) {
      if (thinnerOfPaint !== undefined) {
        refuse('thinnedSolids', 'conflict', ['thinnerOfMix'], 'nothing beside thinnerOfPaint', thinnerOfMix);
      }
      const ofMix = read('thinnedSolids', 'thinnerOfMix', thinnerOfMix, SHARE, PART);
      return write('thinnedSolids', solids * (1 - ofMix), SHARE, unit);
    }
    const ofPaint = read('thinnedSolids', 'thinnerOfPaint', thinnerOfPaint, SHARE, NOT_NEGATIVE);
    return write('thinnedSolids', solids / (1 + ofPaint), SHARE, unit);
  },
);
