import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { DENSITY, MASS, VOLUME } from '../core/dimensions.ts';
import { hazard } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Density, Quantity } from '../core/quantity.ts';
import { fields, readOptional, refuse, write } from '../core/read.ts';
import { readObject, readObjects } from '../core/readPlain.ts';
import type { DensityUnit, MassUnit, VolumeUnit } from '../core/unitCodes.ts';
import { solventInTheAir } from './solventInTheAir.ts';
import { readVocComponent, type VocComponent } from './vocComponent.ts';

/** Input of {@link vocContent}. */
export interface VocContentInput<
  D extends DensityUnit = DensityUnit,
  M extends MassUnit = MassUnit,
  V extends VolumeUnit = VolumeUnit,
> {
  /** Everything that goes into the mix as it is laid: parts, thinner, added water. */
  readonly components: readonly VocComponent[];
  /** Density of water. Rules use figures from 0.995 to 1 kg/l; due where water is given by mass. */
  readonly waterDensity?: Density | undefined;
  /** Units of the answer. */
  readonly units: { readonly density: D; readonly mass: M; readonly volume: V };
}

/** Answer of {@link vocContent}. */
export interface VocContent<
  D extends DensityUnit = DensityUnit,
  M extends MassUnit = MassUnit,
  V extends VolumeUnit = VolumeUnit,
> {
  /** Solvent in a volume of the mix, water and exempt solvent counted into that volume: what the air gets. */
  readonly actual: Quantity<D>;
  /** Solvent in a volume of the mix less water and exempt solvent: what most limits are written for. */
  readonly regulatory: Quantity<D>;
  /** Solvent for a volume of solids, where every component names its solids. */
  readonly perSolids?: Quantity<D> | undefined;
  /** Solvent in the whole mix. */
  readonly emitted: Quantity<M>;
  /** Volume of the whole mix. */
  readonly volume: Quantity<V>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The solvent (volatile organic compounds) in a mix of any parts, as the air gets it and as limits count it.
 *
 * Masses and volumes are summed first and divided last. Figures less water must never be averaged over the parts.
 *
 * @formula
 * ```math
 * C = \frac{\sum W_s - W_w - W_{ec}}{V} \qquad C' = \frac{\sum W_s - W_w - W_{ec}}{V - V_w - V_{ec}}
 * ```
 * @units volumes, masses, densities, shares; answers densities, a mass and a volume.
 * @validRange of each component two of volume, mass and density, or its volume alone where nothing is by mass; one of
 * voc and volatiles, no more solvent than mass; shares from 0 % to 100 %, solids with water and exempt solvent no more
 * than that. Water and exempt solvent together less than the mix.
 * @accuracy Exact up to round-off; volumes are taken to add. An upper estimate for parts that react with each other
 * before they can evaporate.
 * @source 40-cfr-59, epa-method-24, metal-finishing-2012, metal-finishing-2013, pcrc-voc-2004, florida-62-296-500
 * @param input - The components and the units wanted.
 * @returns Both figures, the solvent for a volume of solids, the mass of it all, and the cautions.
 * @throws An `InputError` that names the field; `conflict` where water and exempt solvent fill the can.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * // A water-borne part A, a part B without water, and half a litre of water stirred in.
 * const mix = safety.vocContent({
 *   components: [
 *     {
 *       name: 'A',
 *       volume: { value: 3, unit: 'l' },
 *       density: { value: 1.3, unit: 'kg/l' },
 *       volatiles: { value: 45, unit: '%' },
 *       waterByMass: { value: 40, unit: '%' },
 *     },
 *     { name: 'B', volume: { value: 1, unit: 'l' }, voc: { value: 22, unit: 'g/l' } },
 *     {
 *       name: 'water',
 *       volume: { value: 0.5, unit: 'l' },
 *       voc: { value: 0, unit: 'g/l' },
 *       waterByVolume: { value: 100, unit: '%' },
 *     },
 *   ],
 *   waterDensity: { value: 0.9982, unit: 'kg/l' },
 *   units: { density: 'g/l', mass: 'g', volume: 'l' },
 * });
 * [mix.actual.value.toFixed(1), mix.regulatory.value.toFixed(1)]; // => ['48.2', '89.0']
 * ```
 */
export function vocContent<D extends DensityUnit, M extends MassUnit, V extends VolumeUnit>(
  input: VocContentInput<D, M, V>,
): VocContent<D, M, V> {
  const fn = 'vocContent';
  const given = fields(fn, input);
  const { components, waterDensity } = given;
  const units = readObject(fn, 'units', given.units);
  const water_kgPerM3 = readOptional(fn, 'waterDensity', waterDensity, DENSITY, POSITIVE);
  const parts = readObjects(fn, 'components', components, 1).map((component, i) =>
    readVocComponent(fn, component, water_kgPerM3, ['components', i]),
  );
  const total = (of: (part: (typeof parts)[number]) => number) => parts.reduce((sum, p) => sum + of(p), 0);
  const volume_m3 = total((part) => part.volume_m3);
  const voc_kg = total((part) => part.voc_kg);
  const excluded_m3 = total((part) => part.excluded_m3);
  const solids_m3 = total((part) => part.solids_m3 ?? NaN);
  const rest_m3 = volume_m3 - excluded_m3;
  if (rest_m3 <= 1e-12 * volume_m3) {
    refuse(fn, 'conflict', ['components'], 'more than water and exempt solvent', components);
  }

  const densityOf = (kgPerM3: number) => write(fn, kgPerM3, DENSITY, units.density, ['units', 'density']);
  const volumeOf = (m3: number) => write(fn, m3, VOLUME, units.volume, ['units', 'volume']);
  const exempt = volumeOf(total((part) => part.exempt_m3));
  const emitted = write(fn, voc_kg, MASS, units.mass, ['units', 'mass']);
  const inputs = { components, waterDensity };
  return {
    actual: densityOf(voc_kg / volume_m3),
    regulatory: densityOf(voc_kg / rest_m3),
    ...(solids_m3 > 0 && { perSolids: densityOf(voc_kg / solids_m3) }),
    emitted,
    volume: volumeOf(volume_m3),
    cautions: [
      ...(voc_kg > 0 ? [solventInTheAir(emitted)] : []),
      ...(exempt.value > 0 ? [hazard('exempt-solvent-ignites', 'common-practice', { exempt })] : []),
      ...(parts.length > 1 ? [BEFORE_REACTION] : []),
    ],
    basis: [
      basis('actual', 'safety.vocContent', 'solvent mass / volume', '40-cfr-59', inputs),
      basis(
        'regulatory',
        'safety.vocContent',
        'solvent mass / (volume − water − exempt solvent)',
        '40-cfr-59',
        inputs,
        'the equation of the rule is printed as a picture; its list of variables was read, its shape is that of two state rules',
      ),
    ],
  };
}

const BEFORE_REACTION: Caution = {
  code: 'voc-before-reaction',
  severity: 'note',
  params: {},
  source: 'epa-method-24',
  status: 'memory',
};
