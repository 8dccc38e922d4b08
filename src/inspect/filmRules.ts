/** The rules by which dry films are accepted: each under its name and edition, each with a table of its own. */
import { AREA, LENGTH, SHARE } from '../core/dimensions.ts';
import { POSITIVE, type Limits } from '../core/limits.ts';
import type { InputPath } from '../core/InputError.ts';
import type { Area, Length, Share } from '../core/quantity.ts';
import { read, readOptional, refuse } from '../core/read.ts';
import { readChoice, readCount, readName, readObject } from '../core/readPlain.ts';

/** What lies under the film. */
export type FilmSubstrate = 'steel' | 'other metal' | 'concrete';

/** What a rule asks of the film. What is left out is not asked. */
export interface FilmTerms {
  /** Least mean of a spot, as a share of the specified least thickness. */
  readonly spotLeast?: Share | undefined;
  /** Greatest mean of a spot, as a share of the specified greatest thickness. */
  readonly spotMost?: Share | undefined;
  /** Least mean of an area, as a share of the specified least thickness. */
  readonly meanLeast?: Share | undefined;
  /** Greatest mean of an area, as a share of the specified greatest thickness. */
  readonly meanMost?: Share | undefined;
  /** Which share of the spots of an area may lie below the specified least thickness. */
  readonly lowShare?: Share | undefined;
  /** What a share of low spots exactly at `lowShare` does. It meets where not given. */
  readonly lowShareAtLimit?: 'meets' | 'fails' | undefined;
}

/** SSPC-PA 2, for films on metal. */
export interface FilmRulePa2 {
  /** Name and edition. */
  readonly rule: 'SSPC-PA 2:2015';
  /** Restriction level, as the specification names it. */
  readonly level: 1 | 2 | 3 | 4 | 5;
  /** Whether areas are counted in the square feet or in the square metres of the standard, which are not equal. */
  readonly areasIn: 'ft2' | 'm2';
}

/** SSPC-PA 9, for films on concrete by ultrasonic gauge. */
export interface FilmRulePa9 {
  /** Name and edition. */
  readonly rule: 'SSPC-PA 9:2015';
  /** Restriction level, as the specification names it. */
  readonly level: 1 | 2 | 3 | 4;
  /** Whether areas are counted in square feet or in square metres. */
  readonly areasIn: 'ft2' | 'm2';
  /** The row of level 2, from the standard: it is not known here. Left out at every other level. */
  readonly terms?: FilmTerms | undefined;
}

/** ISO 19840, for films on rough steel. */
export interface FilmRuleIso {
  /** Name and edition. */
  readonly rule: 'ISO 19840:2012';
  /** What exactly 20 % of low readings do: the standard asks for less than 20 %, so they fail where not given. */
  readonly lowShareAtLimit?: 'meets' | 'fails' | undefined;
}

/** The 90/10 rule of the performance standard for coatings in ballast tanks. */
export interface FilmRuleImo {
  /** Name. */
  readonly rule: 'IMO MSC.215(82)';
}

/** A rule of the specification itself. */
export interface FilmRuleOwn {
  /** Says that the rule is given here. */
  readonly rule: 'own';
  /** What the specification calls it, for the report. */
  readonly name: string;
  /** How many areas are measured on the floor. */
  readonly areas: number;
  /** How many spots in each area. */
  readonly spotsPerArea: number;
  /** How many readings at each spot. */
  readonly readingsPerSpot: number;
  /** What the film must hold; at least one term. */
  readonly terms: FilmTerms;
}

/** A rule for accepting a dry film. */
export type FilmRule = FilmRulePa2 | FilmRulePa9 | FilmRuleIso | FilmRuleImo | FilmRuleOwn;

/** What a rule asks, as plain shares. */
export interface BaseTerms {
  readonly spotLeast?: number | undefined;
  readonly spotMost?: number | undefined;
  readonly meanLeast?: number | undefined;
  /** `unknown`: whether the rule has this limit could not be learnt, so what is over it is undecided. */
  readonly meanMost?: number | 'unknown' | undefined;
  readonly lowShare?: number | undefined;
  readonly lowShareAtLimit?: 'meets' | 'fails' | undefined;
}

/** How many measurements a rule asks for. */
export interface BaseCount {
  readonly areas: number;
  readonly spotsPerArea: number;
  readonly readingsPerSpot: number;
}

/** A rule ready to be applied. */
export interface BaseRule {
  /** Name with edition and level. */
  readonly name: string;
  /** Where acceptance stands in it. */
  readonly clause: string;
  readonly terms: BaseTerms;
  readonly countFor: (area_m2: number) => BaseCount;
  /** Whether the spots are counted in each area, or in all areas together. */
  readonly counted: 'in each area' | 'together';
  /** How it counts, in words. */
  readonly counting: string;
  readonly source: string;
  /** What of it is not from the standard itself. */
  readonly assumption?: string | undefined;
}

type Level<N extends number> = Readonly<Record<N, readonly [terms: BaseTerms, known: string]>>;

/** Metal: 80 % and 120 %. */
const PA2_LEVELS: Level<1 | 2 | 3 | 4 | 5> = {
  1: [{ spotLeast: 1, spotMost: 1, meanLeast: 1, meanMost: 1 }, 'the row of level 1 is from memory'],
  2: [
    { spotLeast: 1, spotMost: 1.2, meanLeast: 1, meanMost: 1 },
    'the row of level 2 is from memory and doubtful',
  ],
  3: [
    { spotLeast: 0.8, spotMost: 1.2, meanLeast: 1, meanMost: 1 },
    'the row of level 3 is from restatements',
  ],
  4: [{ spotLeast: 0.8, spotMost: 1.5, meanLeast: 1, meanMost: 1 }, 'the row of level 4 is from memory'],
  5: [{ spotLeast: 0.8, meanLeast: 1 }, 'the row of level 5 is from memory'],
};

/** Concrete: 75 % and 125 %. */
const PA9_LEVELS: Level<1 | 3 | 4> = {
  1: [{ spotLeast: 1, spotMost: 1, meanLeast: 1, meanMost: 1 }, 'the row of level 1 is from a restatement'],
  3: [
    { spotLeast: 0.75, spotMost: 1.25, meanLeast: 1, meanMost: 1 },
    'the row of level 3 is from a restatement',
  ],
  4: [
    { spotLeast: 0.75, meanLeast: 1, meanMost: 'unknown' },
    'the row of level 4 is from a restatement, which is silent on the mean of an area over the greatest thickness',
  ],
};

/** ISO 19840 is not for thinner films. */
const ISO_LEAST_M = 40e-6;

const FITS: Readonly<Record<Exclude<FilmRule['rule'], 'own'>, readonly FilmSubstrate[]>> = {
  'SSPC-PA 2:2015': ['steel', 'other metal'],
  'SSPC-PA 9:2015': ['concrete'],
  'ISO 19840:2012': ['steel'],
  'IMO MSC.215(82)': ['steel'],
};
const RULES = [...Object.keys(FITS), 'own'] as FilmRule['rule'][];
/** Every substrate. */
export const SUBSTRATES: readonly FilmSubstrate[] = ['steel', 'other metal', 'concrete'];

/** One area of the standard in m²: 100 ft² or 10 m². */
const ONE_AREA: Readonly<Record<'ft2' | 'm2', number>> = { ft2: 9.290304, m2: 10 };

/** How many wholes and parts; twelve digits are what an area is worth, so that 2000 ft² in m² are not a hair more. */
function partsOf(ratio: number): number {
  return Math.ceil(Number(ratio.toPrecision(12)));
}

/** Every area up to three, then three up to ten of them, then one more for each further ten. */
function areasBySspc(area_m2: number, areasIn: 'ft2' | 'm2'): number {
  const areas = area_m2 / ONE_AREA[areasIn];
  return Math.min(3, partsOf(areas)) + Math.max(0, partsOf((areas - 10) / 10));
}

/** Least number of readings up to an inspection area in m². */
const ISO_COUNTS: readonly (readonly [area_m2: number, readings: number])[] = [
  [1, 5],
  [3, 10],
  [10, 15],
  [30, 20],
  [100, 30],
];

function readingsByIso(area_m2: number): number {
  const row = ISO_COUNTS.find(([most]) => area_m2 <= most * (1 + 1e-12));
  return row?.[1] ?? 30 + 10 * partsOf((area_m2 - 100) / 100);
}

/** A share that a rule may ask for. */
const FACTOR: Limits = { above: 0, below: 100.0000000001, words: ' above 0 % and up to 10000 %' };
/** A share of all spots. */
const LOW_SHARE: Limits = { above: -5e-324, below: 1.000000000001, words: ' from 0 % to 100 %' };
/** More readings than anyone could write down. */
const FLOOR: Limits = { above: 0, below: 1.000000000001e9, words: ' above 0 and up to 1e9 m²' };

/** Reads the terms of a specification. */
function readTerms(fn: string, terms: FilmTerms | undefined, path: InputPath): BaseTerms {
  const given = readObject(fn, 'terms', terms, path);
  const inside = [...path, 'terms'];
  const factor = (key: 'spotLeast' | 'spotMost' | 'meanLeast' | 'meanMost') =>
    readOptional(fn, key, given[key], SHARE, FACTOR, inside);
  const read = {
    spotLeast: factor('spotLeast'),
    spotMost: factor('spotMost'),
    meanLeast: factor('meanLeast'),
    meanMost: factor('meanMost'),
    lowShare: readOptional(fn, 'lowShare', given.lowShare, SHARE, LOW_SHARE, inside),
  };
  if (Object.values(read).every((term) => term === undefined)) {
    refuse(fn, 'missing', inside, 'at least one term, such as spotLeast', terms);
  }
  return { ...read, lowShareAtLimit: readAtLimit(fn, given.lowShareAtLimit, inside) ?? 'meets' };
}

function readAtLimit(fn: string, given: 'meets' | 'fails' | undefined, path: InputPath) {
  return given === undefined
    ? undefined
    : readChoice(fn, 'lowShareAtLimit', given, ['meets', 'fails'] as const, path);
}

/** Reads a rule, without asking what it is applied to. */
export function readRule(fn: string, given: FilmRule): BaseRule {
  const rule = readObject(fn, 'rule', given);
  const path = ['rule'];
  switch (readChoice(fn, 'rule', rule.rule, RULES, path)) {
    case 'SSPC-PA 2:2015': {
      const { level, areasIn } = rule as FilmRulePa2;
      const row = readLevel(fn, level, PA2_LEVELS, path);
      return sspcRule('SSPC-PA 2:2015', 'sspc-pa-2', row, level, readAreasIn(fn, areasIn, path));
    }
    case 'SSPC-PA 9:2015': {
      const { level, areasIn, terms } = rule as FilmRulePa9;
      const counted = readAreasIn(fn, areasIn, path);
      if (level === 2) {
        const row = [readTerms(fn, terms, path), 'the row of level 2 is as given'] as const;
        return sspcRule('SSPC-PA 9:2015', 'sspc-pa-9', row, level, counted);
      }
      const row = readLevel(fn, level, PA9_LEVELS, path);
      if (terms !== undefined) {
        refuse(fn, 'conflict', ['rule', 'terms'], `left out at level ${level}, which is known`, terms);
      }
      return sspcRule('SSPC-PA 9:2015', 'sspc-pa-9', row, level, counted);
    }
    case 'ISO 19840:2012': {
      const lowShareAtLimit = readAtLimit(fn, (rule as FilmRuleIso).lowShareAtLimit, path) ?? 'fails';
      return {
        name: 'ISO 19840:2012',
        clause: 'acceptance criteria',
        terms: { spotLeast: 0.8, spotMost: 1, meanLeast: 1, lowShare: 0.2, lowShareAtLimit },
        countFor: (area_m2) => ({ areas: 1, spotsPerArea: readingsByIso(area_m2), readingsPerSpot: 1 }),
        counted: 'together',
        counting: '5, 10, 15, 20, 30 readings up to 1, 3, 10, 30, 100 m², 10 more for each further 100 m²',
        source: 'iso-19840',
        assumption:
          'the criteria are from a published answer that quotes the edition of 2005; the numbers of readings up to 30 m² are from memory',
      };
    }
    case 'IMO MSC.215(82)':
      return {
        name: 'IMO MSC.215(82)',
        clause: 'Table 1, practice of 90/10',
        terms: { spotLeast: 0.9, spotMost: 1, lowShare: 0.1, lowShareAtLimit: 'meets' },
        countFor: (area_m2) => ({ areas: 1, spotsPerArea: partsOf(area_m2 / 5), readingsPerSpot: 1 }),
        counted: 'together',
        counting: '1 reading for each 5 m² of flat surface; edges, welds and corners are counted apart',
        source: 'imo-msc-215-82',
        assumption: 'the rule of 90/10 is from memory',
      };
    case 'own': {
      const own = rule as FilmRuleOwn;
      const count = {
        areas: readCount(fn, 'areas', own.areas, path),
        spotsPerArea: readCount(fn, 'spotsPerArea', own.spotsPerArea, path),
        readingsPerSpot: readCount(fn, 'readingsPerSpot', own.readingsPerSpot, path),
      };
      return {
        name: readName(fn, 'name', own.name, path),
        clause: 'as given',
        terms: readTerms(fn, own.terms, path),
        countFor: () => count,
        counted: 'in each area',
        counting: `${count.areas} areas, ${count.spotsPerArea} spots in each, ${count.readingsPerSpot} readings at each`,
        source: 'common-practice',
        assumption: 'the rule is that of the specification, as given',
      };
    }
  }
}

function readLevel<N extends number>(fn: string, level: N, levels: Level<N>, path: InputPath) {
  const known = Object.keys(levels).join(', ');
  const row = (levels as Readonly<Record<number, Level<N>[N]>>)[typeof level === 'number' ? level : NaN];
  const code = (level as unknown) === undefined ? 'missing' : 'out-of-range';
  return row ?? refuse(fn, code, [...path, 'level'], `a level out of ${known}`, level);
}

function readAreasIn(fn: string, areasIn: 'ft2' | 'm2', path: InputPath): 'ft2' | 'm2' {
  return readChoice(fn, 'areasIn', areasIn, ['ft2', 'm2'] as const, path);
}

/** What both rules of one publisher share: how they count. */
function sspcRule(
  name: string,
  source: string,
  [terms, known]: readonly [BaseTerms, string],
  level: number,
  areasIn: 'ft2' | 'm2',
): BaseRule {
  const [one, three, ten] = areasIn === 'ft2' ? [100, 300, 1000] : [10, 30, 100];
  const unit = areasIn === 'ft2' ? 'ft²' : 'm²';
  return {
    name: `${name}, level ${level}`,
    clause: 'section 9, Table 1',
    terms,
    countFor: (area_m2) => ({ areas: areasBySspc(area_m2, areasIn), spotsPerArea: 5, readingsPerSpot: 3 }),
    counted: 'in each area',
    counting: `5 spots of 3 readings in each area of ${one} ${unit}: every area up to ${three}, 3 areas up to ${ten}, 1 more for each further ${ten} ${unit}`,
    source,
    assumption: known,
  };
}

/** Refuses a rule on a substrate that it is not for, and names those that are. */
export function readSubstrate(fn: string, rule: FilmRule['rule'], given: FilmSubstrate): FilmSubstrate {
  const substrate = readChoice(fn, 'substrate', given, SUBSTRATES);
  if (rule === 'own' || FITS[rule].includes(substrate)) return substrate;
  const fitting = Object.entries(FITS).filter(([, fits]) => fits.includes(substrate));
  const names = fitting.map(([name]) => name).join(', ');
  return refuse(fn, 'conflict', ['rule', 'rule'], `a rule for ${substrate}: ${names}`, rule);
}

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
  if (rule.source === 'iso-19840' && least < ISO_LEAST_M * (1 - 1e-12)) {
    const expected = '40 um or more, the scope of ISO 19840';
    refuse(fn, 'out-of-range', ['specified', 'least'], expected, specified.least);
  }
  const { terms } = rule;
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
