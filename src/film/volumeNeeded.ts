import { AREA, LENGTH, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Length, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link volumeNeeded}. */
export interface VolumeNeededInput<U extends VolumeUnit = VolumeUnit> {
  /** Area to be coated. */
  readonly area: Area;
  /** Film to be laid above the peaks of the floor. */
  readonly wetThickness: Length;
  /** Share of what is mixed that stays in pails and cups. Nothing stays where it is not given. */
  readonly residue?: Share | undefined;
  /** Depth that the valleys and pores of the floor drink, as an average over the area. None where not given. */
  readonly textureDepth?: Length | undefined;
  /** Volume that rollers, squeegees and shoes hold back, all together. None where not given. */
  readonly toolLoad?: Volume | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much must be mixed for an area: the film, what the floor drinks, and what never leaves pails and tools.
 *
 * Each loss enters in its own way. Texture is drunk per area, residue is a share of what is mixed (so it divides),
 * and a tool takes its load once, however small the room.
 *
 * @formula
 * ```math
 * V = \frac{A \, (w + t)}{1 - r} + L
 * ```
 * @units area, lengths, share, volume; answers volume.
 * @validRange area above 0, wetThickness above 0; residue from 0 % to below 100 %; textureDepth and toolLoad 0 or more.
 * @monotone area +, wetThickness +, residue +, textureDepth +, toolLoad +
 * @accuracy Exact up to round-off: relative error below 1e-15 for a residue of up to a half, with fewer digits the nearer it
 * comes to the whole. As good as the losses that are put in.
 * @source pcrc-coverage-2003, definition
 * @param input - Area, film, losses and the unit wanted.
 * @returns The volume to be mixed in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * film.volumeNeeded({
 *   area: { value: 1000, unit: 'ft2' },
 *   wetThickness: { value: 16, unit: 'mil' },
 *   textureDepth: { value: 1, unit: 'mil' },
 *   residue: { value: 3, unit: '%' },
 *   toolLoad: { value: 0.25, unit: 'usgal' },
 *   unit: 'usgal',
 * }).value.toFixed(2); // => '11.18'
 * ```
 */
export const volumeNeeded = /* @__PURE__ */ monotone(
  { area: '+', wetThickness: '+', residue: '+', textureDepth: '+', toolLoad: '+' },
  <U extends VolumeUnit>(input: VolumeNeededInput<U>): Quantity<U> => {
    const { area, wetThickness, residue, textureDepth, toolLoad, unit } = fields('volumeNeeded', input);
    const area_m2 = read('volumeNeeded', 'area', area, AREA, POSITIVE);
    const film_m = read('volumeNeeded', 'wetThickness', wetThickness, LENGTH, POSITIVE);
    const residueShare = readOr(0, 'volumeNeeded', 'residue', residue, SHARE, PART);
    const texture_m = readOr(0, 'volumeNeeded', 'textureDepth', textureDepth, LENGTH, NOT_NEGATIVE);
    const tools_m3 = readOr(0, 'volumeNeeded', 'toolLoad', toolLoad, VOLUME, NOT_NEGATIVE);
    const volume_m3 = (area_m2 * (film_m + texture_m)) / (1 - residueShare) + tools_m3;
    return write('volumeNeeded', volume_m3, VOLUME, unit);
  },
);
