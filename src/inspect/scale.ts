/** Readings on a scale without unit: friction, gloss, haze, image clarity. Each place is judged, and the mean of them. */
import { judge, type Verdict } from '../core/assessment.ts';
import type { Limits } from '../core/limits.ts';
import { readList, readNames, readNumber, readObjects } from '../core/readPlain.ts';
import { meanOf } from '../statistics/readings.ts';
import { worstFinding } from './worstFinding.ts';

/** A place with the readings that were taken there. */
export interface ScalePlace {
  /** Where it is. */
  readonly name: string;
  /** What the instrument showed; the place counts as their mean. */
  readonly readings: readonly number[];
}

/** What a place, or the mean of all places, is held to. */
export type ScaleCriterion = 'each-least' | 'each-most' | 'mean-least' | 'mean-most';

/** The worst place by one criterion. All figures on the scale of the instrument. */
export interface ScaleFinding {
  /** What it was held to. */
  readonly criterion: ScaleCriterion;
  /** What can be said. */
  readonly verdict: Verdict;
  /** What was measured. */
  readonly measured: number;
  /** What it was judged against. */
  readonly limit: number;
  /** Room to the limit; below 0 beyond it. */
  readonly gap: number;
  /** Half the width in which the true value lies, where the error of the instrument was given. */
  readonly uncertainty?: number | undefined;
  /** The place; nothing for the mean of all. */
  readonly place?: string | undefined;
}

/** A place as it is judged. */
export interface BasePlace {
  readonly name: string;
  readonly value: number;
}

/** Reads the places; each counts as the mean of its readings. */
export function readPlaces(fn: string, places: readonly ScalePlace[], limits: Limits): readonly BasePlace[] {
  const list = readObjects(fn, 'places', places, 1);
  const names = readNames(fn, list, ['places']);
  return list.map((place, i) => {
    const path = ['places', i];
    const readings = readList(fn, 'readings', place.readings, 1, path).map((reading, k) =>
      readNumber(fn, k, reading, limits, [...path, 'readings']),
    );
    return { name: names[i] ?? '', value: meanOf(readings) };
  });
}

/** The worst place by every criterion that has a limit. */
export function judgeScale(
  places: readonly BasePlace[],
  limits: Readonly<Partial<Record<ScaleCriterion, number>>>,
  error: number,
): ScaleFinding[] {
  const mean = meanOf(places.map(({ value }) => value));
  return (Object.keys(limits) as ScaleCriterion[]).flatMap((criterion) => {
    const limit = limits[criterion];
    if (limit === undefined) return [];
    const sign = criterion.endsWith('least') ? 1 : -1;
    const judged = (criterion.startsWith('each') ? places : [{ name: undefined, value: mean }]).map(
      ({ name, value }): ScaleFinding => {
        const gap = sign * (value - limit);
        return {
          criterion,
          verdict: judge(gap, error, Math.max(value, limit)),
          measured: value,
          limit,
          gap: gap + 0,
          ...(error > 0 && { uncertainty: error }),
          ...(name !== undefined && { place: name }),
        };
      },
    );
    const worst = worstFinding(judged);
    return worst ? [worst] : [];
  });
}
