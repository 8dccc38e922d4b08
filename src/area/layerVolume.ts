import { AREA, LENGTH, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link layerVolume}. */
export interface LayerVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Area of the layer. */
  readonly area: Area;
  /** Its mean depth. */
  readonly depth: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What a layer of one depth takes on an area: the fill of a texture, of low spots by their mean gap, of a screed.
 *
 * @formula
 * ```math
 * V = A \, d
 * ```
 * @units area, length; answers volume.
 * @validRange area above 0, depth 0 or more, as an average over the area. 1 mm on 1 m² is 1 litre.
 * @monotone area +, depth +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source astm-e965
 * @param input - Area, depth and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.layerVolume({ area: { value: 100, unit: 'ft2' }, depth: { value: 0.25, unit: 'mm' }, unit: 'usgal' }).value.toFixed(3);
 * // => '0.614'
 * ```
 */
export const layerVolume = /* @__PURE__ */ monotone(
  { area: '+', depth: '+' },
  <U extends VolumeUnit>(input: LayerVolumeInput<U>): Quantity<U> => {
    const { area, depth, unit } = fields('layerVolume', input);
    const area_m2 = read('layerVolume', 'area', area, AREA, POSITIVE);
    const depth_m = read('layerVolume', 'depth', depth, LENGTH, NOT_NEGATIVE);
    return write('layerVolume', area_m2 * depth_m, VOLUME, unit);
  },
);
