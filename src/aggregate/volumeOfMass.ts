import { DENSITY, MASS, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Mass, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link volumeOfMass}. */
export interface VolumeOfMassInput<U extends VolumeUnit = VolumeUnit> {
  /** What it weighs. */
  readonly mass: Mass;
  /** Bulk or solid density, for the volume that is meant. */
  readonly density: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The room that a mass takes: with the bulk density that of the loose heap, with the solid density that of the grains
 * alone.
 *
 * @formula
 * ```math
 * V = \frac{m}{\rho}
 * ```
 * @units mass, density; answers volume.
 * @validRange mass and density above 0. The two volumes of one sand differ by half or more: name the one you mean.
 * @monotone mass +, density -
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source navedtra-14070
 * @param input - Mass, density and the unit wanted.
 * @returns The volume in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const mass = { value: 100, unit: 'lb' as const };
 * const ft3 = (value: number, unit: 'lb/ft3' = 'lb/ft3') => ({ value, unit });
 * aggregate.volumeOfMass({ mass, density: ft3(100), unit: 'ft3' }).value.toFixed(2); // => '1.00'
 * aggregate.volumeOfMass({ mass, density: ft3(165), unit: 'ft3' }).value.toFixed(2); // => '0.61'
 * ```
 */
export const volumeOfMass = /* @__PURE__ */ monotone(
  { mass: '+', density: '-' },
  <U extends VolumeUnit>(input: VolumeOfMassInput<U>): Quantity<U> => {
    const { mass, density, unit } = fields('volumeOfMass', input);
    const mass_kg = read('volumeOfMass', 'mass', mass, MASS, POSITIVE);
    const density_kgPerM3 = read('volumeOfMass', 'density', density, DENSITY, POSITIVE);
    return write('volumeOfMass', mass_kg / density_kgPerM3, VOLUME, unit);
  },
);
