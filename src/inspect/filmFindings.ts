/** One finding for each criterion of a rule: the worst place of the film by it. */
import { judge, type Verdict } from '../core/assessment.ts';
import type { BaseFilmArea } from './filmReadings.ts';
import type { BaseFilmLimits } from './filmLimits.ts';
import type { BaseTerms } from './readFilmRule.ts';
import { worstFinding } from './worstFinding.ts';
import { meanOf } from '../statistics/readings.ts';

/** What a rule holds the film to. */
export type FilmCriterion = 'spot-least' | 'spot-most' | 'mean-least' | 'mean-most' | 'low-share';

/** Why a place is not decided. */
type FilmDoubt = 'the gauge cannot tell' | 'readings are missing' | 'the rule is not known there';

/** The worst place by one criterion; thicknesses in m, shares as fractions. */
export interface BaseFinding {
  readonly criterion: FilmCriterion;
  readonly verdict: Verdict;
  /** Why, where the verdict is undecided. */
  readonly doubt?: FilmDoubt | undefined;
  readonly measured: number;
  readonly limit: number;
  readonly gap: number;
  readonly uncertainty: number;
  /** Place of the area in the list, nothing where all of them count together; and of the spot in it. */
  readonly area?: number | undefined;
  readonly spot?: number | undefined;
}

/** How far a thickness in m may be off by the gauge. */
export type GaugeError = (thickness_m: number) => number;

/** What is judged: the film, what of it is complete, and what the gauge is worth. */
export interface JudgedFilm {
  readonly areas: readonly BaseFilmArea[];
  readonly complete: readonly boolean[];
  readonly readingsPerSpot: number;
  /** Whether means and shares are of all areas together. */
  readonly together: boolean;
  /** Spots that are missing where they are counted together. */
  readonly missing: number;
  readonly error: GaugeError;
}

/** A mean that may decide: of a spot or of an area. With a doubt, such as missing readings, it never fails a film. */
interface Place {
  readonly value: number;
  readonly area?: number | undefined;
  readonly spot?: number | undefined;
  readonly doubt?: FilmDoubt | undefined;
}

/** The least or greatest spot of each area, apart for spots that decide and those that lack readings. */
function endSpots({ areas, readingsPerSpot }: JudgedFilm, sign: 1 | -1): Place[] {
  return areas.flatMap(({ spots_m, counts }, area) =>
    [true, false].flatMap((decides): Place[] => {
      let found = -1;
      spots_m.forEach((value, spot) => {
        if ((counts[spot] ?? 0) >= readingsPerSpot !== decides) return;
        if (found < 0 || sign * value < sign * (spots_m[found] ?? 0)) found = spot;
      });
      const doubt = decides ? undefined : 'readings are missing';
      return found < 0 ? [] : [{ value: spots_m[found] ?? 0, area, spot: found, doubt }];
    }),
  );
}

/** The worst place against a limit; `sign` is 1 where the limit is a least one. */
function worstPlace(
  criterion: FilmCriterion,
  places: readonly Place[],
  limit: number | undefined,
  sign: 1 | -1,
  error: GaugeError,
): BaseFinding[] {
  if (limit === undefined) return [];
  const judged = places.map(({ value, area, spot, doubt }): BaseFinding => {
    const gap = sign * (value - limit);
    const uncertainty = error(value);
    const byGauge = judge(gap, uncertainty, limit);
    const verdict = byGauge === 'fails' && doubt ? 'undecided' : byGauge;
    return {
      criterion,
      verdict,
      doubt: byGauge === 'undecided' ? 'the gauge cannot tell' : doubt,
      measured: value,
      limit,
      gap,
      uncertainty,
      area,
      spot,
    };
  });
  const worst = worstFinding(judged);
  return worst ? [worst] : [];
}

/** Spots that have one mean, and one share of low ones: those of an area, or all of them. */
interface SpotSet {
  readonly spots_m: readonly number[];
  readonly mean_m: number;
  readonly complete: boolean;
  readonly area?: number | undefined;
}

function setsOf({ areas, complete, together }: JudgedFilm): readonly SpotSet[] {
  if (!together) {
    return areas.map(({ spots_m, mean_m }, area) => ({
      spots_m,
      mean_m,
      complete: complete[area] ?? false,
      area,
    }));
  }
  const spots_m = areas.flatMap((area) => area.spots_m);
  return [{ spots_m, mean_m: meanOf(spots_m), complete: complete.every(Boolean) }];
}

/** The set with the most spots below the specified least thickness. */
function lowShares(
  film: JudgedFilm,
  sets: readonly SpotSet[],
  limits: BaseFilmLimits,
  terms: BaseTerms,
): BaseFinding[] {
  const { lowShare: limit, lowShareAtLimit } = terms;
  if (limit === undefined) return [];
  const least_m = limits.least * (1 - 1e-12);
  const within = (share: number) =>
    lowShareAtLimit === 'fails' ? share < limit - 1e-12 : share <= limit + 1e-12;
  const judged = sets.map(({ spots_m, area }): BaseFinding => {
    const low = (off: -1 | 0 | 1) => spots_m.filter((spot) => spot + off * film.error(spot) < least_m).length;
    // At best the gauge read low everywhere, and every reading that is missing is high enough.
    const best = low(1) / (spots_m.length + film.missing);
    const worst = low(-1) / spots_m.length;
    const measured = low(0) / spots_m.length;
    const gap = limit - measured;
    const byGauge = within(low(1) / spots_m.length) && !within(worst);
    return {
      criterion: 'low-share',
      doubt: byGauge ? 'the gauge cannot tell' : 'readings are missing',
      verdict: within(worst) ? 'meets' : within(best) ? 'undecided' : 'fails',
      measured,
      limit,
      gap,
      uncertainty: gap < 0 ? measured - low(1) / spots_m.length : worst - measured,
      area,
    };
  });
  const worst = worstFinding(judged);
  return worst ? [worst] : [];
}

/** Every criterion of the rule that the specification gives a limit for. */
export function findingsOf(film: JudgedFilm, limits: BaseFilmLimits, terms: BaseTerms): BaseFinding[] {
  const { error } = film;
  const sets = setsOf(film);
  const means = (known: boolean) =>
    sets.map(({ mean_m, complete, area }): Place => {
      const byReadings = complete ? undefined : 'readings are missing';
      return { value: mean_m, area, doubt: known ? byReadings : 'the rule is not known there' };
    });
  return [
    ...worstPlace('spot-least', endSpots(film, 1), limits.spotLeast, 1, error),
    ...worstPlace('spot-most', endSpots(film, -1), limits.spotMost, -1, error),
    ...worstPlace('mean-least', means(true), limits.meanLeast, 1, error),
    ...worstPlace('mean-most', means(terms.meanMost !== 'unknown'), limits.meanMost, -1, error),
    ...lowShares(film, sets, limits, terms),
  ];
}
