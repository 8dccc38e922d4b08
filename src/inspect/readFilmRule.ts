/** Reads a rule for dry films. Each has a table of its own: 80 and 120 % on metal are not 75 and 125 % on concrete. */
import type { Cited } from '../core/caution.ts';
import { SHARE } from '../core/dimensions.ts';
import type { Limits } from '../core/limits.ts';
import type { InputPath } from '../core/InputError.ts';
import type { Area, Length } from '../core/quantity.ts';
import { readOptional, refuse } from '../core/read.ts';
import { readChoice, readCount, readKey, readName, readObject } from '../core/readPlain.ts';
import type { FilmRule, FilmRuleIso, FilmRuleOwn, FilmRulePa2, FilmRulePa9, FilmTerms } from './filmRules.ts';
import { readFit, SUBSTRATES, type FilmSubstrate, type Fits } from './substrates.ts';

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

/** A measured area and the circle in which the readings of a spot lie, as the rule prints them. */
export interface BaseSize {
  readonly area: Area;
  readonly spotDiameter: Length;
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
  /** Size of a measured area and of a spot, where the rule has one. */
  readonly size?: BaseSize | undefined;
  /** Least thickness that the rule is for, in m. */
  readonly leastNominal?: number | undefined;
  /** Where its terms are from. */
  readonly cited: Cited;
  /** Where its counting is from: the same document, but one may be quoted from memory and the other not. */
  readonly countCited: Cited;
  /** What of it is not from the standard itself. */
  readonly assumption?: string | undefined;
}

/** A row of a table: what it asks, how that is known, and the mark of what is quoted from memory. */
type Row = readonly [terms: BaseTerms, known: string, status?: 'memory'];
type Level<N extends number> = Readonly<Record<N, Row>>;

/** Metal: 80 % and 120 %. */
const PA2_LEVELS: Level<1 | 2 | 3 | 4 | 5> = {
  1: [
    { spotLeast: 1, spotMost: 1, meanLeast: 1, meanMost: 1 },
    'the row of level 1 is from memory',
    'memory',
  ],
  2: [
    { spotLeast: 1, spotMost: 1.2, meanLeast: 1, meanMost: 1 },
    'the row of level 2 is from memory and doubtful',
    'memory',
  ],
  3: [
    { spotLeast: 0.8, spotMost: 1.2, meanLeast: 1, meanMost: 1 },
    'the row of level 3 is from restatements',
  ],
  4: [
    { spotLeast: 0.8, spotMost: 1.5, meanLeast: 1, meanMost: 1 },
    'the row of level 4 is from memory',
    'memory',
  ],
  5: [{ spotLeast: 0.8, meanLeast: 1 }, 'the row of level 5 is from memory', 'memory'],
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

/** What differs between the two rules of one publisher beside their tables. */
interface SspcRule {
  readonly name: string;
  readonly source: string;
  /** The circle of a spot, in US and in metric measures. */
  readonly spot: Readonly<Record<'ft2' | 'm2', Length>>;
}
const PA2: SspcRule = {
  name: 'SSPC-PA 2:2015',
  source: 'sspc-pa-2',
  spot: { ft2: { value: 1.5, unit: 'in' }, m2: { value: 4, unit: 'cm' } },
};
const PA9: SspcRule = {
  name: 'SSPC-PA 9:2015',
  source: 'sspc-pa-9',
  spot: { ft2: { value: 6, unit: 'in' }, m2: { value: 15, unit: 'cm' } },
};

/** ISO 19840 is not for thinner films, in m. */
const ISO_LEAST = 40e-6;

const FITS: Fits<FilmRule['rule']> = {
  'SSPC-PA 2:2015': ['steel', 'other metal'],
  'SSPC-PA 9:2015': ['concrete'],
  'ISO 19840:2012': ['steel'],
  'IMO MSC.215(82)': ['steel'],
  own: SUBSTRATES,
};
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

/** Where a rule is from as a whole: marked where any part of it is quoted from memory. */
export function citedOf({ cited, countCited }: BaseRule): Cited {
  return countCited.status ? countCited : cited;
}

/** Reads a rule, and refuses it on a substrate that it is not for. */
export function readFilmRule(fn: string, given: FilmRule, substrate: FilmSubstrate): BaseRule {
  const rule = readRule(fn, given);
  readFit(fn, ['rule', 'rule'], given.rule, FITS, substrate);
  return rule;
}

function readRule(fn: string, given: FilmRule): BaseRule {
  const rule = readObject(fn, 'rule', given);
  const path = ['rule'];
  switch (readKey(fn, 'rule', rule.rule, FITS, path)) {
    case 'SSPC-PA 2:2015': {
      const { level, areasIn } = rule as FilmRulePa2;
      const row = readLevel(fn, level, PA2_LEVELS, path);
      return sspcRule(PA2, row, level, readAreasIn(fn, areasIn, path));
    }
    case 'SSPC-PA 9:2015': {
      const { level, areasIn, terms } = rule as FilmRulePa9;
      const counted = readAreasIn(fn, areasIn, path);
      if (level === 2) {
        if (terms === undefined) {
          const expected = 'terms from the standard: the row of level 2 is not known here';
          refuse(fn, 'missing', ['rule', 'terms'], expected, terms);
        }
        const row = [readTerms(fn, terms, path), 'the row of level 2 is as given'] as const;
        return sspcRule(PA9, row, level, counted);
      }
      const row = readLevel(fn, level, PA9_LEVELS, path);
      if (terms !== undefined) {
        refuse(fn, 'conflict', ['rule', 'terms'], `left out at level ${level}, which is known`, terms);
      }
      return sspcRule(PA9, row, level, counted);
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
        leastNominal: ISO_LEAST,
        cited: { source: 'iso-19840' },
        countCited: { source: 'iso-19840', status: 'memory' },
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
        cited: { source: 'imo-msc-215-82', status: 'memory' },
        countCited: { source: 'imo-msc-215-82' },
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
        cited: { source: 'common-practice' },
        countCited: { source: 'common-practice' },
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
  { name, source, spot }: SspcRule,
  [terms, known, status]: Row,
  level: number,
  areasIn: 'ft2' | 'm2',
): BaseRule {
  const one = areasIn === 'ft2' ? 100 : 10;
  const unit = areasIn === 'ft2' ? 'ft²' : 'm²';
  return {
    name: `${name}, level ${level}`,
    clause: 'section 9, Table 1',
    terms,
    countFor: (area_m2) => ({ areas: areasBySspc(area_m2, areasIn), spotsPerArea: 5, readingsPerSpot: 3 }),
    counted: 'in each area',
    counting: `5 spots of 3 readings in each area of ${one} ${unit}: every area up to 3, 3 of up to 10, 1 more for each further 10 or part of them`,
    size: { area: { value: one, unit: areasIn }, spotDiameter: spot[areasIn] },
    cited: { source, ...(status && { status }) },
    countCited: { source },
    assumption: known,
  };
}
