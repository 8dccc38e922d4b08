import { acrossLikely, MIDDLE_TAKEN, withMiddles, type Values } from '../core/acrossLikely.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, DENSITY, LENGTH, MASS, MASS_PER_AREA, SHARE } from '../core/dimensions.ts';
import type { Dimension } from '../core/dimension.ts';
import { SAND_DUST } from '../core/hazards.ts';
import { PART, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import type { Direction } from '../core/monotone.ts';
import type { Area, Density, Length, MassPerArea, Share } from '../core/quantity.ts';
import { readRange, type LikelyRange, type Ranged } from '../core/range.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import { readUnit } from '../core/readPlain.ts';
import type { LengthUnit, MassUnit } from '../core/unitCodes.ts';

/** Input of {@link broadcast}. Give one of `retained` and `retainedShare`. */
export interface BroadcastInput<U extends MassUnit = MassUnit, T extends LengthUnit = LengthUnit> {
  /** Area that is thrown on: treads and floors, no risers and no upstands. */
  readonly area: Ranged<Area>;
  /** What is thrown until the resin takes no more. */
  readonly thrown: Ranged<MassPerArea>;
  /** What the floor keeps. */
  readonly retained?: Ranged<MassPerArea> | undefined;
  /** What the floor keeps of what is thrown. */
  readonly retainedShare?: Ranged<Share> | undefined;
  /** Share of the sweepings that screening rejects. Given only where sweepings are used again. */
  readonly screenLoss?: Ranged<Share> | undefined;
  /** Film of resin without solvent into which it is thrown. */
  readonly resinThickness: Ranged<Length>;
  /** Density of the grains. */
  readonly solidDensity: Ranged<Density>;
  /** Unit of the masses in the answer. */
  readonly unit: U;
  /** Unit of the thicknesses in the answer. */
  readonly thicknessUnit: T;
}

/** What one broadcast takes, keeps and builds. */
export interface Broadcast<U extends MassUnit = MassUnit, T extends LengthUnit = LengthUnit> {
  /** To be bought and thrown. */
  readonly thrown: LikelyRange<U>;
  /** What stays in the floor. */
  readonly retained: LikelyRange<U>;
  /** What is swept off. */
  readonly swept: LikelyRange<U>;
  /** What of it can be thrown again, where the screening was given. */
  readonly reusable?: LikelyRange<U> | undefined;
  /** What the grains add to the layer, without air. */
  readonly sandThickness: LikelyRange<T>;
  /** Resin and grains together: the layer where the resin fills all voids. */
  readonly build: LikelyRange<T>;
  /** Grains in the layer, by volume. */
  readonly sandShare: LikelyRange<'%'>;
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** Grains of one size packed at random fill this share; above it, resin cannot surround them all. */
const CLOSEST_RANDOM = 0.64;

/**
 * A broadcast to refusal: what is thrown, what the floor keeps of it, what is swept off, and what the layer builds.
 *
 * Orders go by what is thrown, thickness by what is kept, and by the room of the grains, never by the loose pile.
 *
 * @formula
 * ```math
 * m_k = A \, m_A \qquad m_s = A \, (m_t - m_A) \qquad d = w + \frac{m_A}{\rho_s} \qquad \phi = \frac{m_A / \rho_s}{d}
 * ```
 * @units area, masses per area, shares, length, density, each a value or a range; answers masses, lengths and a share.
 * @validRange every input above 0; retained no more than thrown by the likely values, though ranges of both may overlap;
 * retainedShare up to 100 %, screenLoss from 0 % to below 100 %.
 * @accuracy Exact up to round-off: relative error below 2e-15. Sweepings that are weighed settle what was kept.
 * @source common-practice, definition
 * @param input - Area, sand, film, and the units wanted.
 * @returns Masses, thickness and share of grains, each as a range.
 * @throws An `InputError` that names the field; `conflict` where the floor would surely keep more than was thrown.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * const quartz = aggregate.broadcast({
 *   area: { value: 1000, unit: 'ft2' },
 *   thrown: { value: 0.55, unit: 'lb/ft2' },
 *   retained: { value: 0.4, unit: 'lb/ft2' },
 *   resinThickness: { value: 16, unit: 'mil' },
 *   solidDensity: { value: 2.65, unit: 'g/ml' },
 *   unit: 'lb',
 *   thicknessUnit: 'mil',
 * });
 * quartz.swept.likely.value.toFixed(0); // => '150'
 * quartz.build.likely.value.toFixed(1); // => '45.0'
 * ```
 */
export function broadcast<U extends MassUnit, T extends LengthUnit>(
  input: BroadcastInput<U, T>,
): Broadcast<U, T> {
  const { retained, retainedShare, screenLoss, unit, thicknessUnit } = fields('broadcast', input);
  readUnit('broadcast', 'thicknessUnit', thicknessUnit, LENGTH);
  if (retained !== undefined && retainedShare !== undefined) {
    refuse('broadcast', 'conflict', ['retainedShare'], 'nothing beside retained', retainedShare);
  }
  checkKept(input);
  const given = withMiddles(input);
  const range = <V extends string>(
    part: (layer: Layer) => number,
    dimension: Dimension<string>,
    answerUnit: V,
    directions = GROWS,
  ): LikelyRange<V> => {
    const formula = (values: Throw) => write('broadcast', part(layerOf(values)), dimension, answerUnit);
    const { low, likely, high } = acrossLikely('broadcast', directions, formula, given);
    return { low, likely, high };
  };

  const sandShare = range(({ share }) => share, SHARE, '%', { ...GROWS, resinThickness: '-' });
  const swept = { ...GROWS, retained: '-', retainedShare: '-', screenLoss: '-' } as const;
  return {
    thrown: range(({ thrown_kg }) => thrown_kg, MASS, unit),
    retained: range(({ retained_kg }) => retained_kg, MASS, unit),
    swept: range(({ swept_kg }) => swept_kg, MASS, unit, swept),
    ...(screenLoss !== undefined && {
      reusable: range(({ reusable_kg }) => reusable_kg, MASS, unit, swept),
    }),
    sandThickness: range(({ sand_m }) => sand_m, LENGTH, thicknessUnit),
    build: range(({ build_m }) => build_m, LENGTH, thicknessUnit),
    sandShare,
    cautions: [
      SAND_DUST,
      ...(sandShare.high.value > 100 * CLOSEST_RANDOM
        ? [caution('sand-outruns-resin', { share: sandShare.high })]
        : []),
      ...(screenLoss !== undefined ? [caution('swept-sand-again', {})] : []),
    ],
    basis: [
      basis(
        'build',
        'aggregate.broadcast',
        'd = w + m / ρs',
        'common-practice',
        input,
        given !== input ? MIDDLE_TAKEN : undefined,
      ),
    ],
  };
}

/** What the figures are computed from. */
type Throw = Values<Omit<BroadcastInput, 'unit' | 'thicknessUnit'>>;

/** How the masses and thicknesses move with each input, but where noted. */
const GROWS: Readonly<Record<keyof Throw, Direction>> = {
  area: '+',
  thrown: '+',
  retained: '+',
  retainedShare: '+',
  screenLoss: '+',
  resinThickness: '+',
  solidDensity: '-',
};

/** Refuses what surely keeps more than was thrown, or keeps it by the likely values that are stated. */
function checkKept({ thrown, retained }: BroadcastInput): void {
  if (retained === undefined) return;
  const cast = readRange('broadcast', 'thrown', thrown, MASS_PER_AREA, POSITIVE);
  const kept = readRange('broadcast', 'retained', retained, MASS_PER_AREA, POSITIVE);
  if ((kept.likely ?? kept.low) > (cast.likely ?? cast.high) * (1 + 1e-9)) {
    refuse('broadcast', 'conflict', ['retained'], 'no more than thrown', retained);
  }
}

/** One broadcast in base units. */
interface Layer {
  readonly thrown_kg: number;
  readonly retained_kg: number;
  readonly swept_kg: number;
  readonly reusable_kg: number;
  readonly sand_m: number;
  readonly build_m: number;
  readonly share: number;
}

function layerOf(values: Throw): Layer {
  const { area, thrown, retained, retainedShare, screenLoss, resinThickness, solidDensity } = values;
  const area_m2 = read('broadcast', 'area', area, AREA, POSITIVE);
  const thrown_kgPerM2 = read('broadcast', 'thrown', thrown, MASS_PER_AREA, POSITIVE);
  const kept_kgPerM2 =
    retainedShare === undefined
      ? read('broadcast', 'retained', retained, MASS_PER_AREA, POSITIVE)
      : thrown_kgPerM2 * read('broadcast', 'retainedShare', retainedShare, SHARE, PART_OR_WHOLE);
  // Ranges may overlap, but no floor keeps more than was thrown on it.
  const retained_kgPerM2 = Math.min(kept_kgPerM2, thrown_kgPerM2);
  const rejected = readOr(0, 'broadcast', 'screenLoss', screenLoss, SHARE, PART);
  const resin_m = read('broadcast', 'resinThickness', resinThickness, LENGTH, POSITIVE);
  const solid_kgPerM3 = read('broadcast', 'solidDensity', solidDensity, DENSITY, POSITIVE);

  const swept_kg = area_m2 * (thrown_kgPerM2 - retained_kgPerM2);
  const sand_m = retained_kgPerM2 / solid_kgPerM3;
  return {
    thrown_kg: area_m2 * thrown_kgPerM2,
    retained_kg: area_m2 * retained_kgPerM2,
    swept_kg,
    reusable_kg: swept_kg * (1 - rejected),
    sand_m,
    build_m: resin_m + sand_m,
    share: sand_m / (resin_m + sand_m),
  };
}

function caution(code: Caution['code'], params: Caution['params']): Caution {
  return { code, severity: 'caution', params, source: 'common-practice' };
}
