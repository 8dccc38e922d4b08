import { judge, worstOf, type Assessment, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { LENGTH, SHARE, SPREAD_RATE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART, POSITIVE } from '../core/limits.ts';
import type { Density, Length, Mass, Quantity, Share, Volume } from '../core/quantity.ts';
import { isRange, readRange, type BaseRange, type LikelyRange, type Ranged } from '../core/range.ts';
import { fields, read, write } from '../core/read.ts';
import { readList, readName, readObject } from '../core/readPlain.ts';
import type { LengthUnit, SpreadRateUnit } from '../core/unitCodes.ts';
import { filmAbovePeaks } from '../film/filmAbovePeaks.ts';
import {
  boundedError,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { readSquares, volumeOf, type AppliedSquare, type BaseSquare } from './appliedSquares.ts';
import { worstFinding } from './worstFinding.ts';

/** Input of {@link asApplied}. */
export interface AsAppliedInput<
  U extends LengthUnit = LengthUnit,
  S extends SpreadRateUnit = SpreadRateUnit,
> extends Confidence {
  /** The squares that are done. */
  readonly squares: readonly AppliedSquare[];
  /** Wet film above the peaks that was planned. */
  readonly plannedThickness: Length;
  /** How far a square may be off the plan, either way. */
  readonly tolerance: Share;
  /** Density of the mix; goes with squares logged by mass. */
  readonly density?: Density | undefined;
  /** Share of what is mixed that stays in pails and cups. Nothing stays where it is not given. */
  readonly residue?: Ranged<Share> | undefined;
  /** Depth that the valleys and pores drink, as an average over the area. None where not given. */
  readonly textureDepth?: Ranged<Length> | undefined;
  /** What one reading of the pail or the scale may be off by. Taken as exact where not given. */
  readonly readingError?: ReadingError<Volume | Mass> | undefined;
  /** What an area may be off by, as a share of it. Taken as exact where not given. */
  readonly areaError?: ReadingError<Share> | undefined;
  /** Units of the answer. */
  readonly units: { readonly thickness: U; readonly spreadRate: S };
}

/** What was laid on one square. The film is `measured`, judged against the nearer end of the plan. */
export interface AppliedFinding<
  U extends LengthUnit = LengthUnit,
  S extends SpreadRateUnit = SpreadRateUnit,
> extends Omit<Assessment<U>, 'cautions' | 'basis'> {
  /** Name of the square. */
  readonly name: string;
  /** The film by the readings, and how thin and how thick it may be by their errors. */
  readonly thickness: LikelyRange<U>;
  /** Area over all that was mixed for it, residue included. */
  readonly spreadRate: Quantity<S>;
  /** On which side of the plan the limit lies. */
  readonly end: 'least' | 'most';
}

/** A batch to look at, because a square that it went into is off the plan. */
export interface SuspectBatch {
  /** The batch. */
  readonly batch: string;
  /** Squares of it that are off the plan. */
  readonly squares: readonly string[];
}

/** What was really laid. */
export interface AsApplied<U extends LengthUnit = LengthUnit, S extends SpreadRateUnit = SpreadRateUnit> {
  /** The worst of the squares. */
  readonly verdict: Verdict;
  /** The square with the worst verdict and the least room. */
  readonly worst: string;
  /** Every square, in the order given. */
  readonly squares: readonly AppliedFinding<U, S>[];
  /** Mean film of all squares together: a bare square does not show in it. */
  readonly mean: Quantity<U>;
  /** Area over all that was mixed. */
  readonly spreadRate: Quantity<S>;
  /** Batches that went into a square that is off the plan. */
  readonly suspects: readonly SuspectBatch[];
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** A range with a middle. */
interface Known {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * What film was really laid on each square of a floor, against the plan, while the resin is wet and can be mended.
 *
 * The errors of pail, tape, residue and texture are taken as all on one side at once; with `confidence` they are
 * propagated by the GUM. Where they reach over the end of the plan a square is undecided: measure it with a gauge, do not
 * accept it by the gallon.
 *
 * @formula
 * ```math
 * w_i = \frac{V_i (1 - r)}{A_i} - t \qquad w_{plan}(1 - \tau) \le w_i \le w_{plan}(1 + \tau)
 * ```
 * @units areas, volumes or masses with density, lengths, shares; answers lengths and spread rates.
 * @validRange areas, amounts and plannedThickness above 0; tolerance, residue and areaError from 0 % to below 100 %;
 * textureDepth and readingError 0 or more. A film that the texture drinks wholly is answered as 0.
 * @accuracy Exact up to round-off. A film exactly on an end of the plan meets it. No published figure: it is volume over
 * area.
 * @source common-practice, jcgm-100-2008
 * @param input - Squares, plan, losses, errors of the readings and the units wanted.
 * @returns Every square with its film and verdict, the whole, and the batches to look at.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const square = (name: string, used: number) => ({
 *   name,
 *   area: { value: 20, unit: 'm2' } as const,
 *   used: { value: used, unit: 'l' } as const,
 * });
 * const floor = inspect.asApplied({
 *   squares: [square('A1', 10.2), square('A2', 9.1), square('A3', 8.2)],
 *   plannedThickness: { value: 0.5, unit: 'mm' },
 *   tolerance: { value: 10, unit: '%' },
 *   readingError: { value: 0.2, unit: 'l' },
 *   units: { thickness: 'mm', spreadRate: 'm2/l' },
 * });
 * floor.squares.map(({ verdict }) => verdict); // => ['meets', 'undecided', 'fails']
 * ```
 */
export function asApplied<U extends LengthUnit, S extends SpreadRateUnit>(
  input: AsAppliedInput<U, S>,
): AsApplied<U, S> {
  const fn = 'asApplied';
  const given = fields(fn, input);
  const { squares, kind } = readSquares(fn, given.squares);
  const batches = given.squares.map((square, i) => readBatches(fn, square, i));
  const planned_m = read(fn, 'plannedThickness', given.plannedThickness, LENGTH, POSITIVE);
  const tolerance = read(fn, 'tolerance', given.tolerance, SHARE, PART);
  const toVolume = volumeOf(fn, kind, given.density);
  const residue = knownOr(given.residue, () => readRange(fn, 'residue', given.residue, SHARE, PART));
  const texture_m = knownOr(given.textureDepth, () =>
    readRange(fn, 'textureDepth', given.textureDepth, LENGTH, NOT_NEGATIVE),
  );
  const coverage = readCoverage(fn, given);
  const error = readError<string>(fn, 'readingError', given.readingError, coverage, kind, NOT_NEGATIVE);
  const areaError = readError(fn, 'areaError', given.areaError, coverage, SHARE, PART);
  const { thickness, spreadRate } = readObject(fn, 'units', given.units);

  const film = (used: number, area_m2: number, share: number, depth_m: number) =>
    Math.max(0, filmAbovePeaks(Math.max(0, used) * toVolume, area_m2, share, depth_m));
  /** How thin and how thick a film may be with all errors on one side at once. */
  const endsOf = ({ area_m2, used }: BaseSquare) => [
    film(used - error.bound, area_m2 * (1 + areaError.bound), residue.high, texture_m.high),
    film(used + error.bound, area_m2 * (1 - areaError.bound), residue.low, texture_m.low),
  ];
  /** How far a film may be off by the errors as they are propagated. */
  const expandedOf = ({ area_m2, used }: BaseSquare) => {
    const mixed_m = (used * toVolume) / area_m2;
    const laid_m = mixed_m * (1 - residue.likely);
    return coverage?.expanded(
      [laid_m / used, error],
      [laid_m, areaError],
      [mixed_m, boundedError((residue.high - residue.low) / 2)],
      [1, boundedError((texture_m.high - texture_m.low) / 2)],
    );
  };
  const judged = squares.map((square) => {
    const { name, area_m2, used } = square;
    const likely_m = film(used, area_m2, residue.likely, texture_m.likely);
    const off_m = expandedOf(square);
    const [low_m = 0, high_m = 0] =
      off_m === undefined ? endsOf(square) : [Math.max(0, likely_m - off_m), likely_m + off_m];
    const ends = [
      { end: 'least' as const, limit: planned_m * (1 - tolerance), sign: 1 },
      { end: 'most' as const, limit: planned_m * (1 + tolerance), sign: -1 },
    ].map(({ end, limit, sign }) => {
      const gap = sign * (likely_m - limit);
      // What lies short of its limit may be thicker by the readings, what lies within may be thinner; or the reverse.
      const uncertainty = gap < 0 === sign > 0 ? high_m - likely_m : likely_m - low_m;
      return { end, limit, gap, uncertainty, verdict: judge(gap, uncertainty, planned_m) };
    });
    return { name, area_m2, used, likely_m, low_m, high_m, ...(worstFinding(ends) as (typeof ends)[number]) };
  });
  const worst = worstFinding(judged) as (typeof judged)[number];
  const whole = judged.reduce(
    (sum, square) => ({
      area_m2: sum.area_m2 + square.area_m2,
      used: sum.used + square.used,
      film_m3: sum.film_m3 + square.likely_m * square.area_m2,
    }),
    { area_m2: 0, used: 0, film_m3: 0 },
  );

  const path = (key: string) => ['units', key];
  const length = (value_m: number) => write(fn, value_m, LENGTH, thickness, path('thickness'));
  const rate = ({ area_m2, used }: Pick<BaseSquare, 'area_m2' | 'used'>) =>
    write(fn, area_m2 / (used * toVolume), SPREAD_RATE, spreadRate, path('spreadRate'));
  const names = (list: readonly { readonly name: string }[]) => list.map(({ name }) => name).join(', ');
  const about = (code: CautionCode, list: readonly { readonly name: string }[]): Caution[] =>
    list.length === 0
      ? []
      : [{ code, severity: 'caution', params: { names: names(list) }, source: 'common-practice' }];
  const failing = (end: 'least' | 'most') =>
    judged.filter((square) => square.verdict === 'fails' && square.end === end);
  return {
    verdict: worstOf(judged.map(({ verdict }) => verdict)),
    worst: worst.name,
    squares: judged.map(({ likely_m, low_m, high_m, ...square }) => ({
      name: square.name,
      verdict: square.verdict,
      measured: length(likely_m),
      limit: length(square.limit),
      gap: length(square.gap),
      ...(square.uncertainty > 0 && { uncertainty: length(square.uncertainty) }),
      thickness: { low: length(low_m), likely: length(likely_m), high: length(high_m) },
      spreadRate: rate(square),
      end: square.end,
    })),
    mean: length(whole.film_m3 / whole.area_m2),
    spreadRate: rate(whole),
    suspects: suspectsOf(judged, batches),
    cautions: [
      ...about('square-too-thin', failing('least')),
      ...about('square-too-thick', failing('most')),
      ...about(
        'square-undecided',
        judged.filter(({ verdict }) => verdict === 'undecided'),
      ),
      ...about(
        'texture-drinks-all',
        judged.filter(({ likely_m }) => likely_m === 0),
      ),
    ],
    basis: [
      basis('squares', `inspect.${fn}`, 'used · (1 − residue) / area − textureDepth', 'common-practice', {
        squares: squares.length,
        plannedThickness: given.plannedThickness,
        tolerance: given.tolerance,
        density: given.density,
        residue: given.residue,
        textureDepth: given.textureDepth,
        readingError: given.readingError,
        areaError: given.areaError,
      }),
      ...uncertaintyBasis(
        `inspect.${fn}`,
        {
          residue: isRange(given.residue) ? given.residue : undefined,
          textureDepth: isRange(given.textureDepth) ? given.textureDepth : undefined,
          readingError: given.readingError,
          areaError: given.areaError,
        },
        given,
      ),
    ],
  };
}

/** A range with a middle; nothing at all where nothing was given. */
function knownOr(given: unknown, reading: () => BaseRange): Known {
  if (given === undefined) return { low: 0, likely: 0, high: 0 };
  const { low, likely, high } = reading();
  return { low, likely: likely ?? low + (high - low) / 2, high };
}

/** Reads the batches that went into a square. */
function readBatches(fn: string, { batches }: AppliedSquare, i: number): readonly string[] {
  if (batches === undefined) return [];
  const path = ['squares', i];
  const names = readList(fn, 'batches', batches, 1, path).map((batch, k) =>
    readName(fn, k, batch, [...path, 'batches']),
  );
  return [...new Set(names)];
}

/** Every batch of a square that is off the plan, with those squares. */
function suspectsOf(
  squares: readonly { readonly name: string; readonly verdict: Verdict }[],
  batches: readonly (readonly string[])[],
): SuspectBatch[] {
  const suspects = new Map<string, string[]>();
  squares.forEach(({ name, verdict }, i) => {
    if (verdict !== 'fails') return;
    for (const batch of batches[i] ?? []) suspects.set(batch, [...(suspects.get(batch) ?? []), name]);
  });
  return [...suspects].map(([batch, names]) => ({ batch, squares: names }));
}
