import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { DENSITY, LENGTH, MASS_PER_AREA, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Density, Length, MassPerArea, Quantity } from '../core/quantity.ts';
import { readRange, type BaseRange, type Range, type Ranged } from '../core/range.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import { readObjects, readTextOr } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** One layer of a floor: film, or sand in it, or both. */
export interface BuildUpLayer {
  /** What it is called. */
  readonly name?: string | undefined;
  /** Film that is left when it has cured. None where not given. */
  readonly dryThickness?: Ranged<Length> | undefined;
  /** Sand that the floor keeps; goes with `solidDensity`. None where not given. */
  readonly retained?: Ranged<MassPerArea> | undefined;
  /** Density of its grains. */
  readonly solidDensity?: Density | undefined;
}

/** Input of {@link buildUp}. */
export interface BuildUpInput<U extends LengthUnit = LengthUnit> {
  /** Layers from the slab up; those that only fill pores and texture add nothing and are left out. */
  readonly layers: readonly BuildUpLayer[];
  /** Thickness that was promised, to compare with. */
  readonly nominal?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** How thick a floor gets. */
export interface BuildUp<U extends LengthUnit = LengthUnit> {
  /** All layers; `likely` where every layer has one. */
  readonly thickness: Range<U>;
  /** Layer by layer, in the order in which they came. */
  readonly layers: readonly { readonly name: string; readonly thickness: Range<U> }[];
  /** Share of the nominal thickness that is reached, likely or else at least. */
  readonly shareOfNominal?: Quantity<'%'> | undefined;
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How thick a floor of several layers gets: films and the room of the sand in them, never the height of a loose pile.
 *
 * @formula
 * ```math
 * d = \sum_i \left( d_i + \frac{m_i}{\rho_i} \right)
 * ```
 * @units lengths, masses per area, densities; answers lengths and a share.
 * @validRange at least one layer, each with a film of 0 or more, or sand and its density,
 * both above 0. Voids between the grains are
 * filled by the resin of some layer.
 * @accuracy Exact up to round-off: relative error below 1e-15 for each layer.
 * @source definition
 * @param input - Layers, the nominal thickness and the unit wanted.
 * @returns Thickness of the floor and of each layer as ranges, and the share of the nominal one.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const floor = aggregate.buildUp({
 *   layers: [
 *     {
 *       name: 'body',
 *       dryThickness: { value: 16, unit: 'mil' },
 *       retained: { value: 0.4, unit: 'lb/ft2' },
 *       solidDensity: { value: 2.65, unit: 'g/ml' },
 *     },
 *     { name: 'seal', dryThickness: { value: 16, unit: 'mil' } },
 *   ],
 *   nominal: { value: 62.5, unit: 'mil' },
 *   unit: 'mil',
 * });
 * floor.thickness.likely?.value.toFixed(1); // => '61.0'
 * floor.shareOfNominal?.value.toFixed(1); // => '97.6'
 * ```
 */
export function buildUp<U extends LengthUnit>(input: BuildUpInput<U>): BuildUp<U> {
  const { layers, nominal, unit } = fields('buildUp', input);
  const read_m = readObjects('buildUp', 'layers', layers, 0).map(readLayer);
  if (read_m.length === 0) refuse('buildUp', 'out-of-range', ['layers'], 'at least one layer', layers);
  const total_m = read_m.map(({ thickness_m }) => thickness_m).reduce(plus);

  const length = (base: number) => write('buildUp', base, LENGTH, unit);
  const range = ({ low, likely, high }: BaseRange): Range<U> => ({
    low: length(low),
    ...(likely !== undefined && { likely: length(likely) }),
    high: length(high),
  });
  const thickness = range(total_m);
  const nominal_m = readOptional('buildUp', 'nominal', nominal, LENGTH, POSITIVE);
  const reached = nominal_m && (total_m.likely ?? total_m.low) / nominal_m;
  return {
    thickness,
    layers: read_m.map(({ name, thickness_m }) => ({ name, thickness: range(thickness_m) })),
    ...(reached !== undefined && { shareOfNominal: write('buildUp', reached, SHARE, '%') }),
    cautions:
      reached !== undefined && reached < 1 - 1e-12
        ? [
            {
              code: 'below-nominal',
              severity: 'note',
              params: { reached: write('buildUp', reached, SHARE, '%') },
              source: 'common-practice',
            },
          ]
        : [],
    basis: [
      basis('thickness', 'aggregate.buildUp', 'd = Σ (di + mi / ρi)', 'definition', { layers, nominal }),
    ],
  };
}

function plus(one: BaseRange, other: BaseRange): BaseRange {
  const isKnown = one.likely !== undefined && other.likely !== undefined;
  return {
    low: one.low + other.low,
    likely: isKnown ? one.likely + other.likely : undefined,
    high: one.high + other.high,
  };
}

/** One layer in metres. */
function readLayer(layer: BuildUpLayer, i: number): { name: string; thickness_m: BaseRange } {
  const path = ['layers', i];
  const { name, dryThickness, retained, solidDensity } = layer;
  const none: BaseRange = { low: 0, likely: 0, high: 0 };
  if (dryThickness === undefined && retained === undefined) {
    refuse(
      'buildUp',
      'missing',
      [...path, 'dryThickness'],
      'a length, or retained in its place',
      dryThickness,
    );
  }
  const film_m =
    dryThickness === undefined
      ? none
      : readRange('buildUp', 'dryThickness', dryThickness, LENGTH, NOT_NEGATIVE, path);
  if (retained === undefined) {
    if (solidDensity !== undefined) {
      refuse('buildUp', 'conflict', [...path, 'solidDensity'], 'nothing without retained', solidDensity);
    }
    return { name: readTextOr('', 'buildUp', 'name', name, path), thickness_m: film_m };
  }
  const sand = readRange('buildUp', 'retained', retained, MASS_PER_AREA, POSITIVE, path);
  const solid_kgPerM3 = read('buildUp', 'solidDensity', solidDensity, DENSITY, POSITIVE, path);
  const sand_m = {
    low: sand.low / solid_kgPerM3,
    likely: sand.likely === undefined ? undefined : sand.likely / solid_kgPerM3,
    high: sand.high / solid_kgPerM3,
  };
  return { name: readTextOr('', 'buildUp', 'name', name, path), thickness_m: plus(film_m, sand_m) };
}
