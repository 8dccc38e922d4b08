import { MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Mass, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readDensities } from './densities.ts';

/** Input of {@link binderForVoids}. */
export interface BinderForVoidsInput<U extends VolumeUnit = VolumeUnit> {
  /** Sand in the mix. */
  readonly mass: Mass;
  /** Density of the sand as it lies in the mix, voids included. */
  readonly bulkDensity: Density;
  /** Density of its grains. */
  readonly solidDensity: Density;
  /** Resin beyond the voids, as a share of them. None where not given. */
  readonly excess?: Share | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much resin it takes to fill the voids of a sand, so that a mortar is tight.
 *
 * @formula
 * ```math
 * V = \left( \frac{m}{\rho_b} - \frac{m}{\rho_s} \right) (1 + e)
 * ```
 * @units mass, densities, share; answers volume.
 * @validRange mass and densities above 0, bulkDensity no more than solidDensity; excess 0 or more.
 * @monotone mass +, bulkDensity -, solidDensity +, excess +
 * @accuracy Absolute error below 1e-15 of the bulk volume. As the sand lies in the measure; worked in, it lies closer
 * and takes less.
 * @source navedtra-14070
 * @param input - Sand, densities and the unit wanted.
 * @returns The resin in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where it would be denser than what it is made of.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.binderForVoids({
 *   mass: { value: 40, unit: 'lb' },
 *   bulkDensity: { value: 100, unit: 'lb/ft3' },
 *   solidDensity: { value: 165, unit: 'lb/ft3' },
 *   unit: 'usgal',
 * }).value.toFixed(3); // => '1.179'
 * ```
 */
export const binderForVoids = /* @__PURE__ */ monotone(
  { mass: '+', bulkDensity: '-', solidDensity: '+', excess: '+' },
  <U extends VolumeUnit>(input: BinderForVoidsInput<U>): Quantity<U> => {
    const { mass, excess, unit } = fields('binderForVoids', input);
    const mass_kg = read('binderForVoids', 'mass', mass, MASS, POSITIVE);
    const [bulk_kgPerM3, solid_kgPerM3] = readDensities('binderForVoids', input);
    const excessShare = readOr(0, 'binderForVoids', 'excess', excess, SHARE, NOT_NEGATIVE);
    const voids_m3 = Math.max(mass_kg / bulk_kgPerM3 - mass_kg / solid_kgPerM3, 0);
    return write('binderForVoids', voids_m3 * (1 + excessShare), VOLUME, unit);
  },
);
