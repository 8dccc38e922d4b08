import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { SAND_DUST } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Density, Mass, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readDensities } from './densities.ts';

/** Input of {@link mortarYield}. */
export interface MortarYieldInput<U extends VolumeUnit = VolumeUnit> {
  /** Mixed resin. */
  readonly binder: Volume;
  /** Sand in the mix. */
  readonly sand: Mass;
  /** Density of the sand as it lies in the mix, voids included. */
  readonly bulkDensity: Density;
  /** Density of its grains. */
  readonly solidDensity: Density;
  /** Unit of the volumes in the answer. */
  readonly unit: U;
}

/** What a mix of resin and sand makes. */
export interface MortarYield<U extends VolumeUnit = VolumeUnit> {
  /** What it lays: the larger of the two below. */
  readonly volume: Quantity<U>;
  /** Resin and grains alone; what a mix compacts towards. */
  readonly voidFree: Quantity<U>;
  /** The sand as it lies, which carries the mix where the resin does not fill it. */
  readonly bulkSand: Quantity<U>;
  /** Air that stays in. */
  readonly air: Quantity<U>;
  /** Resin that is missing to fill the voids; nothing where they are full. */
  readonly missingBinder: Quantity<U>;
  /** Share of resin in the volume without air. */
  readonly binderShare: Quantity<'%'>;
  /** Whether the resin fills the voids between the grains, or the grains carry the mix. */
  readonly state: 'filled' | 'short-of-binder';
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * What a mortar or a slurry yields, whichever carries it: where resin fills the voids, resin and grains take their own
 * room; where it does not, the grains stand on each other and the mix stays open.
 *
 * @formula
 * ```math
 * V = \max\left( V_r + \frac{m}{\rho_s}, \; \frac{m}{\rho_b} \right)
 * ```
 * @units volume, mass, densities; answers volumes and a share.
 * @validRange every input above 0, bulkDensity no more than solidDensity.
 * @accuracy Exact up to round-off: relative error below 1e-15. An ideal: a graded or compacted mix lies between
 * `voidFree` and `volume`, and a trial batch settles it.
 * @source navedtra-14070, common-practice
 * @param input - Resin, sand, densities and the unit wanted.
 * @returns Yield, void-free volume, air and missing resin.
 * @throws An `InputError` that names the field, or `conflict` where the heap is denser than its grains.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const mortar = aggregate.mortarYield({
 *   binder: { value: 1, unit: 'usgal' },
 *   sand: { value: 40, unit: 'lb' },
 *   bulkDensity: { value: 100, unit: 'lb/ft3' },
 *   solidDensity: { value: 2.65, unit: 'kg/l' },
 *   unit: 'ft3',
 * });
 * mortar.volume.value.toFixed(3); // => '0.400'
 * mortar.state; // => 'short-of-binder'
 * ```
 */
export function mortarYield<U extends VolumeUnit>(input: MortarYieldInput<U>): MortarYield<U> {
  const { binder, sand, bulkDensity, solidDensity, unit } = fields('mortarYield', input);
  const binder_m3 = read('mortarYield', 'binder', binder, VOLUME, POSITIVE);
  const sand_kg = read('mortarYield', 'sand', sand, MASS, POSITIVE);
  const [bulk_kgPerM3, solid_kgPerM3] = readDensities('mortarYield', input);

  const bulk_m3 = sand_kg / bulk_kgPerM3;
  const voidFree_m3 = binder_m3 + sand_kg / solid_kgPerM3;
  const missing_m3 = Math.max(bulk_m3 - voidFree_m3, 0);
  // Round-off of a mix that just fills its voids is not a want of resin.
  const isShort = missing_m3 > 1e-12 * bulk_m3;
  const volume = (base: number) => write('mortarYield', base, VOLUME, unit);
  const missingBinder = volume(missing_m3);
  return {
    volume: volume(voidFree_m3 + missing_m3),
    voidFree: volume(voidFree_m3),
    bulkSand: volume(bulk_m3),
    air: missingBinder,
    missingBinder,
    binderShare: write('mortarYield', binder_m3 / voidFree_m3, SHARE, '%'),
    state: isShort ? 'short-of-binder' : 'filled',
    cautions: [...(isShort ? [staysOpen(missingBinder)] : []), SAND_DUST],
    basis: [
      basis(
        'volume',
        'aggregate.mortarYield',
        'V = max(Vr + m / ρs, m / ρb)',
        'common-practice',
        { binder, sand, bulkDensity, solidDensity },
        'the sand lies in the mix as it lies in the measure',
      ),
    ],
  };
}

function staysOpen(missing: Volume): Caution {
  return { code: 'mortar-stays-open', severity: 'caution', params: { missing }, source: 'common-practice' };
}
