import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { inside } from '../core/inside.ts';
import type { Density, Mass, Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { binderForVoids } from './binderForVoids.ts';
import { voids } from './voids.ts';
import { volumeOfMass } from './volumeOfMass.ts';

/** Input of {@link aggregateVolumes}. */
export interface AggregateVolumesInput<U extends VolumeUnit = VolumeUnit> {
  /** What the sand weighs. */
  readonly mass: Mass;
  /** Density as it lies, voids included. */
  readonly bulkDensity: Density;
  /** Density of its grains. */
  readonly solidDensity: Density;
  /** Unit of the volumes in the answer. */
  readonly unit: U;
}

/** The volumes of one sand, each for its own use. */
export interface AggregateVolumes<U extends VolumeUnit = VolumeUnit> {
  /** The room of the loose heap: for bags, bins and measures. */
  readonly bulk: Quantity<U>;
  /** The room of the grains alone: for yields and thicknesses. */
  readonly solid: Quantity<U>;
  /** What lies between the grains: for the resin that fills it. */
  readonly voids: Quantity<U>;
  /** The same as a share of the loose heap. */
  readonly voidShare: Quantity<'%'>;
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The two volumes of one sand and what lies between: the loose heap takes half as much room again as its grains or more,
 * and counted into a mix it promises about a third too much.
 *
 * @formula
 * ```math
 * V_b = \frac{m}{\rho_b} \qquad V_s = \frac{m}{\rho_s} \qquad V_v = V_b - V_s
 * ```
 * @units mass, densities; answers volumes and a share.
 * @validRange every input above 0, bulkDensity no more than solidDensity.
 * @accuracy Exact up to round-off: absolute error below 1e-15 of the bulk volume.
 * @source astm-c29, navedtra-14070
 * @param input - Sand, densities and the unit wanted.
 * @returns Bulk, solid and void volume, and the share of voids.
 * @throws An `InputError` that names the field, or `conflict` where the heap is denser than its grains.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const sand = aggregate.aggregateVolumes({
 *   mass: { value: 40, unit: 'lb' },
 *   bulkDensity: { value: 100, unit: 'lb/ft3' },
 *   solidDensity: { value: 2.65, unit: 'kg/l' },
 *   unit: 'ft3',
 * });
 * [sand.bulk, sand.solid, sand.voids].map(({ value }) => value.toFixed(3)); // => ['0.400', '0.242', '0.158']
 * ```
 */
export function aggregateVolumes<U extends VolumeUnit>(input: AggregateVolumesInput<U>): AggregateVolumes<U> {
  const { mass, bulkDensity, solidDensity, unit } = fields('aggregateVolumes', input);
  return inside('aggregateVolumes', [], () => ({
    voidShare: voids({ bulkDensity, solidDensity, unit: '%' }),
    bulk: volumeOfMass({ mass, density: bulkDensity, unit }),
    solid: volumeOfMass({ mass, density: solidDensity, unit }),
    voids: binderForVoids({ mass, bulkDensity, solidDensity, unit }),
    cautions: [],
    basis: [
      basis('solid', 'aggregate.volumeOfMass', 'V = m / ρ', 'navedtra-14070', {
        mass,
        bulkDensity,
        solidDensity,
      }),
    ],
  }));
}
