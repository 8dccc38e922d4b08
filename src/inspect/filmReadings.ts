/** The readings of a dry film, brought to spots and areas. */
import { LENGTH } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Length } from '../core/quantity.ts';
import { read } from '../core/read.ts';
import { readList, readNames, readObjects } from '../core/readPlain.ts';
import { meanOf } from '../statistics/readings.ts';
import { total } from '../units/total.ts';
import type { BaseCount, BaseRule } from './readFilmRule.ts';

/** A measured area of the film. */
export interface FilmArea {
  /** Where it lies. */
  readonly name: string;
  /** The readings at each spot: a list of them, or one. All in any unit of length, also mixed. */
  readonly spots: readonly (Length | readonly Length[])[];
}

/** A measured area in m. */
export interface BaseFilmArea {
  readonly name: string;
  /** Mean of each spot. */
  readonly spots_m: readonly number[];
  /** How many readings each mean is of. */
  readonly counts: readonly number[];
  readonly mean_m: number;
  /** Place of the first spot with a reading of which nothing is left above the peaks. */
  readonly bare?: number | undefined;
}

/** Reads the areas; `correction_m` is taken off every reading, down to nothing. */
export function readFilmAreas(
  fn: string,
  areas: readonly FilmArea[],
  correction_m: number,
): readonly BaseFilmArea[] {
  const list = readObjects(fn, 'areas', areas, 1);
  const names = readNames(fn, list, ['areas']);
  return list.map((area, i) => {
    const name = names[i] ?? '';
    const path = ['areas', i, 'spots'];
    let bare: number | undefined;
    const counts: number[] = [];
    const reading = (key: number, quantity: Length, spot: number, at: InputPath) => {
      const film_m = Math.max(0, read(fn, key, quantity, LENGTH, NOT_NEGATIVE, at) - correction_m);
      if (film_m === 0) bare ??= spot;
      return film_m;
    };
    const spots_m = readList(fn, 'spots', area.spots, 1, ['areas', i]).map((spot, k) => {
      if (!Array.isArray(spot)) {
        counts.push(1);
        return reading(k, spot as Length, k, path);
      }
      const at = [...path, k];
      const readings = readList(fn, k, spot as readonly Length[], 1, path);
      counts.push(readings.length);
      return meanOf(readings.map((one, r) => reading(r, one, k, at)));
    });
    return { name, spots_m, counts, mean_m: meanOf(spots_m), bare };
  });
}

/** What is missing of what a rule asks for. */
export interface MissingReadings {
  /** Whole areas without any spot. */
  readonly areas: number;
  /** Spots, those of the missing areas included. */
  readonly spots: number;
  /** Readings, those of the missing spots included. */
  readonly readings: number;
}

const short = (asked: number, got: number) => Math.max(0, asked - got);

/** What is missing of one area, or of all of them where the rule counts them together. */
function missingIn(lists: readonly BaseFilmArea[], { spotsPerArea, readingsPerSpot }: BaseCount) {
  const counts = lists.flatMap((area) => area.counts);
  const spots = short(spotsPerArea, counts.length);
  const atSpots = total(counts.map((count) => short(readingsPerSpot, count)));
  return { spots, readings: atSpots + spots * readingsPerSpot };
}

/** Counts what is missing, and says which areas are complete. */
export function missingOf(
  rule: BaseRule,
  areas: readonly BaseFilmArea[],
  asked: BaseCount,
): { readonly missing: MissingReadings; readonly complete: readonly boolean[] } {
  if (rule.counted === 'together') {
    const missing = missingIn(areas, asked);
    return { missing: { areas: 0, ...missing }, complete: areas.map(() => missing.readings === 0) };
  }
  const each = areas.map((area) => missingIn([area], asked));
  const wholeAreas = short(asked.areas, areas.length);
  const spots = total(each.map((one) => one.spots)) + wholeAreas * asked.spotsPerArea;
  const atSpots = total(each.map((one) => one.readings));
  return {
    missing: {
      areas: wholeAreas,
      spots,
      readings: atSpots + wholeAreas * asked.spotsPerArea * asked.readingsPerSpot,
    },
    complete: each.map((one) => one.readings === 0),
  };
}
