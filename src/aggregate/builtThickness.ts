import { DENSITY, LENGTH, MASS_PER_AREA } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, MassPerArea, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** Input of {@link builtThickness}. */
export interface BuiltThicknessInput<U extends LengthUnit = LengthUnit> {
  /** What lies on the floor. */
  readonly massPerArea: MassPerArea;
  /** Density that goes with the thickness meant. */
  readonly density: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How thick a layer is that a mass makes on an area: of retained sand by the density of its grains, of a mortar by
 * its density as laid.
 *
 * @formula
 * ```math
 * d = \frac{m_A}{\rho}
 * ```
 * @units mass per area, density; answers length.
 * @validRange both above 0. With the solid density it is what the grains add to a layer whose voids are filled; with
 * the bulk density the height of the loose pile, which is no thickness.
 * @monotone massPerArea +, density -
 * @accuracy Exact up to round-off: relative error below 6e-16.
 * @source definition
 * @param input - Mass per area, density and the unit wanted.
 * @returns The thickness in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.builtThickness({
 *   massPerArea: { value: 0.4, unit: 'lb/ft2' },
 *   density: { value: 2.65, unit: 'g/ml' },
 *   unit: 'mil',
 * }).value.toFixed(1); // => '29.0'
 * ```
 */
export const builtThickness = /* @__PURE__ */ monotone(
  { massPerArea: '+', density: '-' },
  <U extends LengthUnit>(input: BuiltThicknessInput<U>): Quantity<U> => {
    const { massPerArea, density, unit } = fields('builtThickness', input);
    const mass_kgPerM2 = read('builtThickness', 'massPerArea', massPerArea, MASS_PER_AREA, POSITIVE);
    const density_kgPerM3 = read('builtThickness', 'density', density, DENSITY, POSITIVE);
    return write('builtThickness', mass_kgPerM2 / density_kgPerM3, LENGTH, unit);
  },
);
