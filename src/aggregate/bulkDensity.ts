import { DENSITY, MASS, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Mass, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { DensityUnit } from '../core/unitCodes.ts';

/** Input of {@link bulkDensity}. */
export interface BulkDensityInput<U extends DensityUnit = DensityUnit> {
  /** The measure, filled and struck off. */
  readonly fullMass: Mass;
  /** The measure alone. */
  readonly emptyMass: Mass;
  /** What the measure holds. */
  readonly volume: Volume;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much a measure of loose or rodded sand weighs for its volume, the air between the grains included.
 *
 * @formula
 * ```math
 * \rho_b = \frac{m_1 - m_0}{V}
 * ```
 * @units masses, volume; answers density.
 * @validRange emptyMass 0 or more and below fullMass, volume above 0.
 * @monotone fullMass +, emptyMass -, volume -
 * @accuracy Exact up to round-off: relative error below 6e-16 of the full mass over the volume.
 * @source astm-c29
 * @param input - Masses, volume and the unit wanted.
 * @returns The bulk density in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the empty measure is not the lighter one.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.bulkDensity({
 *   fullMass: { value: 69.6, unit: 'lb' },
 *   emptyMass: { value: 20.3, unit: 'lb' },
 *   volume: { value: 0.5, unit: 'ft3' },
 *   unit: 'lb/ft3',
 * }).value.toFixed(1); // => '98.6'
 * ```
 */
export const bulkDensity = /* @__PURE__ */ monotone(
  { fullMass: '+', emptyMass: '-', volume: '-' },
  <U extends DensityUnit>(input: BulkDensityInput<U>): Quantity<U> => {
    const { fullMass, emptyMass, volume, unit } = fields('bulkDensity', input);
    const full_kg = read('bulkDensity', 'fullMass', fullMass, MASS, POSITIVE);
    const empty_kg = read('bulkDensity', 'emptyMass', emptyMass, MASS, NOT_NEGATIVE);
    const volume_m3 = read('bulkDensity', 'volume', volume, VOLUME, POSITIVE);
    if (empty_kg >= full_kg * (1 - 1e-12))
      refuse('bulkDensity', 'conflict', ['emptyMass'], 'less than fullMass', emptyMass);
    return write('bulkDensity', (full_kg - empty_kg) / volume_m3, DENSITY, unit);
  },
);
