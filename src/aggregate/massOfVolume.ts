import { DENSITY, MASS, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { MassUnit } from '../core/unitCodes.ts';

/** Input of {@link massOfVolume}. */
export interface MassOfVolumeInput<U extends MassUnit = MassUnit> {
  /** The room it takes. */
  readonly volume: Volume;
  /** Bulk or solid density, for the volume that is meant. */
  readonly density: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What a volume weighs: with the bulk density a loose heap, with the solid density grains without air.
 *
 * @formula
 * ```math
 * m = V \, \rho
 * ```
 * @units volume, density; answers mass.
 * @validRange volume and density above 0.
 * @monotone volume +, density +
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source navedtra-14070
 * @param input - Volume, density and the unit wanted.
 * @returns The mass in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.massOfVolume({
 *   volume: { value: 17.01, unit: 'ft3' },
 *   density: { value: 102, unit: 'lb/ft3' },
 *   unit: 'lb',
 * }).value.toFixed(2); // => '1735.02'
 * ```
 */
export const massOfVolume = /* @__PURE__ */ monotone(
  { volume: '+', density: '+' },
  <U extends MassUnit>(input: MassOfVolumeInput<U>): Quantity<U> => {
    const { volume, density, unit } = fields('massOfVolume', input);
    const volume_m3 = read('massOfVolume', 'volume', volume, VOLUME, POSITIVE);
    const density_kgPerM3 = read('massOfVolume', 'density', density, DENSITY, POSITIVE);
    return write('massOfVolume', volume_m3 * density_kgPerM3, MASS, unit);
  },
);
