import { DENSITY, MASS } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Mass, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { DensityUnit } from '../core/unitCodes.ts';

/** Input of {@link voidFreeDensity}. */
export interface VoidFreeDensityInput<U extends DensityUnit = DensityUnit> {
  /** Mixed resin. */
  readonly binder: Mass;
  /** Its density. */
  readonly binderDensity: Density;
  /** Sand or filler. */
  readonly sand: Mass;
  /** Density of its grains. */
  readonly solidDensity: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What a mix of resin and sand weighs when there is no air in it: nothing made of the two can be denser.
 *
 * @formula
 * ```math
 * \rho_0 = \frac{m_r + m_s}{m_r / \rho_r + m_s / \rho_s}
 * ```
 * @units masses, densities; answers density.
 * @validRange every input above 0.
 * @monotone binder none, binderDensity +, sand none, solidDensity +
 * @accuracy Exact up to round-off: relative error below 1e-15.
 * @source definition
 * @param input - Masses, densities and the unit wanted.
 * @returns The void-free density in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.voidFreeDensity({
 *   binder: { value: 1, unit: 'lb' },
 *   binderDensity: { value: 1.1, unit: 'g/ml' },
 *   sand: { value: 5, unit: 'lb' },
 *   solidDensity: { value: 2.65, unit: 'g/ml' },
 *   unit: 'g/ml',
 * }).value.toFixed(3); // => '2.146'
 * ```
 */
export const voidFreeDensity = /* @__PURE__ */ monotone(
  { binder: 'none', binderDensity: '+', sand: 'none', solidDensity: '+' },
  <U extends DensityUnit>(input: VoidFreeDensityInput<U>): Quantity<U> => {
    const { binder, binderDensity, sand, solidDensity, unit } = fields('voidFreeDensity', input);
    const binder_kg = read('voidFreeDensity', 'binder', binder, MASS, POSITIVE);
    const binder_kgPerM3 = read('voidFreeDensity', 'binderDensity', binderDensity, DENSITY, POSITIVE);
    const sand_kg = read('voidFreeDensity', 'sand', sand, MASS, POSITIVE);
    const solid_kgPerM3 = read('voidFreeDensity', 'solidDensity', solidDensity, DENSITY, POSITIVE);
    const volume_m3 = binder_kg / binder_kgPerM3 + sand_kg / solid_kgPerM3;
    return write('voidFreeDensity', (binder_kg + sand_kg) / volume_m3, DENSITY, unit);
  },
);
