import { LENGTH, MASS_PER_AREA } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Length, MassPerArea, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { readDensities } from './densities.ts';

/** Input of {@link sealThickness}. */
export interface SealThicknessInput<U extends LengthUnit = LengthUnit> {
  /** Sand that the floor kept. */
  readonly retained: MassPerArea;
  /** Density of the sand as it lies, voids included. */
  readonly bulkDensity: Density;
  /** Density of its grains. */
  readonly solidDensity: Density;
  /** Film into which it was thrown, which has filled the voids from below. */
  readonly resinThickness: Length;
  /** Film wanted above the grains. None where not given. */
  readonly filmAbove?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Which wet film seals a broadcast: what the voids between the retained grains still drink, and the film above them.
 *
 * @formula
 * ```math
 * w = \max\left( m_A \left( \frac{1}{\rho_b} - \frac{1}{\rho_s} \right) - w_0,\; 0 \right) + f
 * ```
 * @units mass per area, densities, lengths; answers length.
 * @validRange retained and densities above 0, bulkDensity no more than solidDensity; resinThickness and filmAbove 0
 * or more. Resins without solvent.
 * @monotone retained +, bulkDensity -, solidDensity +, resinThickness -, filmAbove +
 * @accuracy Absolute error below 1e-15 of the height of the sand. Grains that stick out drink less than a levelled
 * heap: a test square tells.
 * @source common-practice
 * @param input - Sand, densities, films and the unit wanted.
 * @returns The wet film of the seal in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where it would be denser than what it is made of.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.sealThickness({
 *   retained: { value: 2, unit: 'kg/m2' },
 *   bulkDensity: { value: 1600, unit: 'kg/m3' },
 *   solidDensity: { value: 2650, unit: 'kg/m3' },
 *   resinThickness: { value: 300, unit: 'um' },
 *   filmAbove: { value: 100, unit: 'um' },
 *   unit: 'um',
 * }).value.toFixed(0); // => '295'
 * ```
 */
export const sealThickness = /* @__PURE__ */ monotone(
  { retained: '+', bulkDensity: '-', solidDensity: '+', resinThickness: '-', filmAbove: '+' },
  <U extends LengthUnit>(input: SealThicknessInput<U>): Quantity<U> => {
    const { retained, resinThickness, filmAbove, unit } = fields('sealThickness', input);
    const retained_kgPerM2 = read('sealThickness', 'retained', retained, MASS_PER_AREA, POSITIVE);
    const [bulk_kgPerM3, solid_kgPerM3] = readDensities('sealThickness', input);
    const resin_m = read('sealThickness', 'resinThickness', resinThickness, LENGTH, NOT_NEGATIVE);
    const above_m = readOr(0, 'sealThickness', 'filmAbove', filmAbove, LENGTH, NOT_NEGATIVE);
    const voids_m = retained_kgPerM2 / bulk_kgPerM3 - retained_kgPerM2 / solid_kgPerM3;
    return write('sealThickness', Math.max(voids_m - resin_m, 0) + above_m, LENGTH, unit);
  },
);
