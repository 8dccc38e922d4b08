import { AREA, LENGTH, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Length, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { filmAbovePeaks } from './filmAbovePeaks.ts';

/** Input of {@link appliedThickness}. */
export interface AppliedThicknessInput<U extends LengthUnit = LengthUnit> {
  /** Mixed and used on the bay. */
  readonly volume: Volume;
  /** Area of the bay. */
  readonly area: Area;
  /** Share of what is mixed that stays in pails and cups. Nothing stays where it is not given. */
  readonly residue?: Share | undefined;
  /** Depth that the valleys and pores drink, as an average over the area. None where not given. */
  readonly textureDepth?: Length | undefined;
  /** Volume that rollers, squeegees and shoes hold back. None where not given. */
  readonly toolLoad?: Volume | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What film was laid on a bay, from what was poured on it.
 *
 * @formula
 * ```math
 * w = \frac{(V - L)(1 - r)}{A} - t
 * ```
 * @units volumes, area, share, length; answers length.
 * @validRange volume and area above 0; residue from 0 % to below 100 %; textureDepth and toolLoad 0 or more;
 * something is left above the peaks. A mean over the bay: a bare spot does not show in it.
 * @monotone volume +, area -, residue -, textureDepth -, toolLoad -
 * @accuracy Absolute error below 1e-15 of the film with its texture; a reading of the pail is worth more than that:
 * see the range of it with `across`.
 * @source common-practice
 * @param input - Volume, area, losses and the unit wanted.
 * @returns The wet film above the peaks in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where nothing is left above the peaks.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.appliedThickness({
 *   volume: { value: 2.7, unit: 'usgal' },
 *   area: { value: 225, unit: 'ft2' },
 *   residue: { value: 2, unit: '%' },
 *   textureDepth: { value: 1, unit: 'mil' },
 *   unit: 'mil',
 * }).value.toFixed(3); // => '17.865'
 * ```
 */
export const appliedThickness = /* @__PURE__ */ monotone(
  { volume: '+', area: '-', residue: '-', textureDepth: '-', toolLoad: '-' },
  <U extends LengthUnit>(input: AppliedThicknessInput<U>): Quantity<U> => {
    const { volume, area, residue, textureDepth, toolLoad, unit } = fields('appliedThickness', input);
    const volume_m3 = read('appliedThickness', 'volume', volume, VOLUME, POSITIVE);
    const area_m2 = read('appliedThickness', 'area', area, AREA, POSITIVE);
    const residueShare = readOr(0, 'appliedThickness', 'residue', residue, SHARE, PART);
    const texture_m = readOr(0, 'appliedThickness', 'textureDepth', textureDepth, LENGTH, NOT_NEGATIVE);
    const tools_m3 = readOr(0, 'appliedThickness', 'toolLoad', toolLoad, VOLUME, NOT_NEGATIVE);
    const film_m = filmAbovePeaks(volume_m3 - tools_m3, area_m2, residueShare, texture_m);
    // Round-off of nothing is no film.
    if (!(film_m > 1e-12 * (texture_m + tools_m3 / area_m2))) {
      refuse('appliedThickness', 'conflict', ['volume'], 'more than texture and tools take', volume);
    }
    return write('appliedThickness', film_m, LENGTH, unit);
  },
);
