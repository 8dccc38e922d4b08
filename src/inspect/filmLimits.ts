/** The film that a specification asks for, and what a rule makes of it. */
import { AREA, LENGTH } from '../core/dimensions.ts';
import { POSITIVE, type Limits } from '../core/limits.ts';
import type { Area, Length } from '../core/quantity.ts';
import { read, readOptional, refuse } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { BaseRule } from './readFilmRule.ts';

/** More readings than anyone could write down. */
const FLOOR: Limits = { above: 0, below: 1000000000.001, words: ' above 0 and up to 1e9 m²' };

/** Reads the area that the film lies on. */
export function readCoatedArea(fn: string, coatedArea: Area): number {
  return read(fn, 'coatedArea', coatedArea, AREA, FLOOR);
}

/** The film that the specification asks for. */
export interface SpecifiedFilm {
  /** Least thickness; the nominal one where the rule goes by that. */
  readonly least: Length;
  /** Greatest thickness. Not judged where not given. */
  readonly most?: Length | undefined;
}

/** Limits of a film by a rule, in m; what is not there is not asked. */
export interface BaseFilmLimits {
  readonly least: number;
  readonly spotLeast?: number | undefined;
  readonly spotMost?: number | undefined;
  readonly meanLeast?: number | undefined;
  readonly meanMost?: number | undefined;
}

/** Reads the specified film and answers what the rule makes of it. */
export function readFilmLimits(fn: string, rule: BaseRule, given: SpecifiedFilm): BaseFilmLimits {
  const specified = readObject(fn, 'specified', given);
  const path = ['specified'];
  const least = read(fn, 'least', specified.least, LENGTH, POSITIVE, path);
  const most = readOptional(fn, 'most', specified.most, LENGTH, POSITIVE, path);
  if (most !== undefined && most < least * (1 - 1e-12)) {
    refuse(fn, 'conflict', ['specified', 'most'], 'at or above least', specified.most);
  }
  const { terms, name, leastNominal = 0 } = rule;
  if (least < leastNominal * (1 - 1e-12)) {
    const expected = `${leastNominal * 1e6} um or more, the scope of ${name}`;
    refuse(fn, 'out-of-range', ['specified', 'least'], expected, specified.least);
  }
  const of = (share: number | undefined, thickness: number | undefined) =>
    share === undefined || thickness === undefined ? undefined : share * thickness;
  return {
    least,
    spotLeast: of(terms.spotLeast, least),
    spotMost: of(terms.spotMost, most),
    meanLeast: of(terms.meanLeast, least),
    meanMost: of(terms.meanMost === 'unknown' ? 1 : terms.meanMost, most),
  };
}
