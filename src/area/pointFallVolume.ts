import { AREA, LENGTH, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Length, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link pointFallVolume}. */
export interface PointFallVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Area in plan that falls to the drain. */
  readonly area: Area;
  /** Depth along the edges. */
  readonly depth: Length;
  /** Depth at the drain; nothing where not given. */
  readonly drainDepth?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What it takes to build falls from all edges of a floor towards one point drain, wherever it sits.
 *
 * @formula
 * ```math
 * V = A \, \frac{2 \, d + d_0}{3}
 * ```
 * @units area, lengths; answers volume.
 * @validRange area above 0, depth above 0 and the same along all edges, drainDepth 0 or more; the floor runs straight
 * from the edges to the drain.
 * @monotone area +, depth +, drainDepth +
 * @accuracy Exact up to round-off: relative error below 8e-16.
 * @source definition
 * @param input - Area, depths and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.pointFallVolume({
 *   area: { value: 9, unit: 'm2' },
 *   depth: { value: 30, unit: 'mm' },
 *   unit: 'l',
 * }).value.toFixed(1); // => '180.0'
 * ```
 */
export const pointFallVolume = /* @__PURE__ */ monotone(
  { area: '+', depth: '+', drainDepth: '+' },
  <U extends VolumeUnit>(input: PointFallVolumeInput<U>): Quantity<U> => {
    const { area, depth, drainDepth, unit } = fields('pointFallVolume', input);
    const area_m2 = read('pointFallVolume', 'area', area, AREA, POSITIVE);
    const depth_m = read('pointFallVolume', 'depth', depth, LENGTH, POSITIVE);
    const drain_m = readOr(0, 'pointFallVolume', 'drainDepth', drainDepth, LENGTH, NOT_NEGATIVE);
    return write('pointFallVolume', (area_m2 * (2 * depth_m + drain_m)) / 3, VOLUME, unit);
  },
);
