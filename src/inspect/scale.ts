/** Readings on a scale without unit: friction, gloss, haze, image clarity. Each place is judged, and the mean of them. */
import { judge, type Verdict } from '../core/assessment.ts';
import type { InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import { readList, readNames, readNumber, readObjects } from '../core/readPlain.ts';
import { halfWidthOf, readErrorBy, type Coverage, type ReadingError } from '../statistics/readingError.ts';
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

/** Reads what a reading on the scale may be off by: half the width in which the true value lies. */
export function readScaleError(
  fn: string,
  key: string,
  error: ReadingError<number> | undefined,
  coverage: Coverage | undefined,
  limits: Limits,
): number {
  const size = (at: string, off: number, path: InputPath) => readNumber(fn, at, off, limits, path);
  return halfWidthOf(readErrorBy(fn, key, error, coverage, size), coverage);
}

/** Whether a reading that may be off is at or above a boundary of its scale. */
export function reaches(value: number, error: number, boundary: number): Verdict {
  return judge(value - boundary, error, Math.max(value, boundary));
}

/**
 * The classes that a reading may belong to, of classes that each begin where the one before ends, the lowest at 0.
 * One that lies within its error of a boundary belongs to neither side of it for sure.
 */
export function classesOf<C>(
  classes: readonly (readonly [from: number, name: C])[],
  value: number,
  error: number,
): readonly C[] {
  const possible = classes.filter(([from], i) => {
    const next = classes[i + 1];
    return reaches(value, error, from) !== 'fails' && !(next && reaches(value, error, next[0]) === 'meets');
  });
  return possible.map(([, name]) => name);
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
