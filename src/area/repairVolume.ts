import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, LENGTH, VOLUME } from '../core/dimensions.ts';
import { inside } from '../core/inside.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readChoice, readObjects } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { crackVolume, type CrackVolumeInput } from './crackVolume.ts';
import { spallVolume, type SpallVolumeInput } from './spallVolume.ts';

/**
 * How a crack is treated: `hairline` filled as it is, `chased` cut out and filled, `moving` filled with something that
 * gives, and carried through the floor as a joint.
 */
export type CrackClass = 'hairline' | 'chased' | 'moving';

/** Cracks of one class and size. */
export interface Cracks extends Omit<CrackVolumeInput, 'unit' | 'slabThickness'> {
  /** How they are treated. */
  readonly class: CrackClass;
}

/** Spalls of one size, counted on the whole floor or on a sample of it. */
export interface Spalls extends Omit<SpallVolumeInput, 'unit' | 'slabThickness'> {
  /** Area on which they were counted; goes with `floorArea`. The whole floor where not given. */
  readonly sampleArea?: Area | undefined;
  /** Area of the floor that the sample stands for. */
  readonly floorArea?: Area | undefined;
}

/** Input of {@link repairVolume}. */
export interface RepairVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Cracks by class and size. None where not given. */
  readonly cracks?: readonly Cracks[] | undefined;
  /** Spalls by size. None where not given. */
  readonly spalls?: readonly Spalls[] | undefined;
  /** Thickness of the slab: nothing is deeper. */
  readonly slabThickness: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/** What the repairs of a slab take. */
export interface RepairVolume<U extends VolumeUnit = VolumeUnit> {
  /** Hairline cracks. */
  readonly hairline: Quantity<U>;
  /** Cracks cut out to a groove. */
  readonly chased: Quantity<U>;
  /** Cracks that move. */
  readonly moving: Quantity<U>;
  /** Spalls. */
  readonly spalls: Quantity<U>;
  /** All that is filled hard: hairline and chased cracks, and spalls. */
  readonly rigid: Quantity<U>;
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * What fills the cracks and spalls of a slab before it is coated, by class, without waste.
 *
 * @formula
 * ```math
 * V = \sum_\text{cracks} k \, l \, w \, d + \sum_\text{spalls} n \, \frac{A}{A_s} \, k \, l \, b \, d
 * ```
 * @units lengths, counts, shares, areas; answers volumes.
 * @validRange as `crackVolume` and `spallVolume`; a sample no larger than the floor it stands for.
 * @accuracy Exact up to round-off: relative error below 2e-15. Counted repairs are good for about 30 %.
 * @source common-practice
 * @param input - Cracks, spalls, the slab and the unit wanted.
 * @returns Volumes by class and what is filled hard, in `input.unit`.
 * @throws An `InputError` that names the field, or `conflict` for what is deeper than the slab.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * const inch = (value: number) => ({ value, unit: 'in' as const });
 * const repairs = area.repairVolume({
 *   cracks: [
 *     { class: 'chased', length: { value: 130, unit: 'ft' }, width: inch(0.25), depth: inch(0.5), section: 'box' },
 *   ],
 *   spalls: [
 *     { count: 14, length: inch(5), width: inch(4), depth: inch(0.5), fullness: { value: 60, unit: '%' } },
 *   ],
 *   slabThickness: inch(6),
 *   unit: 'in3',
 * });
 * repairs.rigid.value.toFixed(1); // => '279.0'
 * ```
 */
export function repairVolume<U extends VolumeUnit>(input: RepairVolumeInput<U>): RepairVolume<U> {
  const { cracks = [], spalls = [], slabThickness, unit } = fields('repairVolume', input);
  read('repairVolume', 'slabThickness', slabThickness, LENGTH, POSITIVE);
  const sums = { hairline: 0, chased: 0, moving: 0, spalls: 0 };
  readObjects('repairVolume', 'cracks', cracks, 0).forEach((crack, i) => {
    const path = ['cracks', i];
    const volume = inside('repairVolume', path, () => crackVolume({ ...crack, slabThickness, unit: 'm3' }));
    sums[readChoice('repairVolume', 'class', crack.class, CLASSES, path)] += volume.value;
  });
  readObjects('repairVolume', 'spalls', spalls, 0).forEach((group, i) => {
    const path = ['spalls', i];
    const volume = inside('repairVolume', path, () => spallVolume({ ...group, slabThickness, unit: 'm3' }));
    sums.spalls += volume.value * floorPerSample(group, path);
  });

  const volume = (base: number) => write('repairVolume', base, VOLUME, unit);
  const answer = {
    hairline: volume(sums.hairline),
    chased: volume(sums.chased),
    moving: volume(sums.moving),
    spalls: volume(sums.spalls),
    rigid: volume(sums.hairline + sums.chased + sums.spalls),
  };
  return {
    ...answer,
    cautions:
      sums.moving > 0
        ? [
            {
              code: 'moving-crack',
              severity: 'caution',
              params: { volume: answer.moving },
              source: 'common-practice',
            },
          ]
        : [],
    basis: [
      basis('rigid', 'area.repairVolume', 'rigid = hairline + chased + spalls', 'common-practice', {
        cracks,
        spalls,
        slabThickness,
      }),
    ],
  };
}

const CLASSES: readonly CrackClass[] = ['hairline', 'chased', 'moving'];

/** How many times the sample goes into the floor. */
function floorPerSample({ sampleArea, floorArea }: Spalls, path: (string | number)[]): number {
  if (sampleArea === undefined && floorArea === undefined) return 1;
  const sample_m2 = read('repairVolume', 'sampleArea', sampleArea, AREA, POSITIVE, path);
  const floor_m2 = read('repairVolume', 'floorArea', floorArea, AREA, POSITIVE, path);
  if (sample_m2 > floor_m2 * (1 + 1e-12)) {
    refuse('repairVolume', 'conflict', [...path, 'sampleArea'], 'no larger than floorArea', sampleArea);
  }
  return floor_m2 / sample_m2;
}
