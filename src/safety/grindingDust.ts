import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { countedSteps } from '../core/decimal.ts';
import { AREA, DENSITY, LENGTH, MASS } from '../core/dimensions.ts';
import { hazard, SILICA_DUST } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Density, Length, Mass, Quantity } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import type { MassUnit } from '../core/unitCodes.ts';

/** Input of {@link grindingDust}. */
export interface GrindingDustInput<U extends MassUnit = MassUnit> {
  /** Area that is ground, milled or blasted. */
  readonly area: Area;
  /** Mean depth that is taken off. */
  readonly depth: Length;
  /** Density of what is taken off: about 145 lb/ft³ for common concrete. */
  readonly density: Density;
  /** What one bag of the collector may hold. */
  readonly bag?: Mass | undefined;
  /** Unit of the mass. */
  readonly unit: U;
}

/** Answer of {@link grindingDust}. */
export interface GrindingDust<U extends MassUnit = MassUnit> {
  /** Dust to be caught, carried and disposed of. */
  readonly dust: Quantity<U>;
  /** Bags that it takes, where their size was given. */
  readonly bags?: number | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The dust that comes off a floor: all that is ground away has to be caught.
 *
 * @formula
 * ```math
 * m = A \, d \, \rho
 * ```
 * @units area, length, density, mass; answers mass and a count.
 * @validRange every input above 0.
 * @accuracy Exact up to round-off; no better than the mean depth. The whole of it, not the part fine enough to breathe.
 * @source definition, osha-1910-1053
 * @param input - Area, depth, density and the unit wanted.
 * @returns The mass in `input.unit`, not rounded, bags, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const hall = safety.grindingDust({
 *   area: { value: 1000, unit: 'ft2' },
 *   depth: { value: 1 / 64, unit: 'in' },
 *   density: { value: 145, unit: 'lb/ft3' },
 *   bag: { value: 45, unit: 'lb' },
 *   unit: 'lb',
 * });
 * [hall.dust.value.toFixed(1), hall.bags]; // => ['188.8', 5]
 * ```
 */
export function grindingDust<U extends MassUnit>(input: GrindingDustInput<U>): GrindingDust<U> {
  const fn = 'grindingDust';
  const { area, depth, density, bag, unit } = fields(fn, input);
  const area_m2 = read(fn, 'area', area, AREA, POSITIVE);
  const depth_m = read(fn, 'depth', depth, LENGTH, POSITIVE);
  const density_kgPerM3 = read(fn, 'density', density, DENSITY, POSITIVE);
  const bag_kg = readOptional(fn, 'bag', bag, MASS, POSITIVE);
  const dust_kg = area_m2 * depth_m * density_kgPerM3;
  const dust = write(fn, dust_kg, MASS, unit);
  const bags = bag_kg && countedSteps(dust_kg, bag_kg).ceil().toNumber();
  if (bags && !Number.isSafeInteger(bags)) refuse(fn, 'too-large', ['bag'], 'bags that can be counted', bag);
  return {
    dust,
    ...(bags !== undefined && { bags }),
    cautions: [hazard('dust-removed', 'osha-1910-1053', { dust, ...SILICA_DUST.params })],
    basis: [
      basis('dust', 'safety.grindingDust', 'area · depth · density', 'definition', {
        area,
        depth,
        density,
        bag,
      }),
    ],
  };
}
