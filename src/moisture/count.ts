/** How many tests a floor asks for, by method. */
import { AREA } from '../core/dimensions.ts';
import type { Limits } from '../core/limits.ts';
import type { Area } from '../core/quantity.ts';
import { read } from '../core/read.ts';

/** How the moisture or the pH of a slab is tested. */
export type MoistureMethod = 'calcium chloride' | 'in-slab humidity' | 'plastic sheet' | 'alkalinity';

/** Tests for the first area, and for each further area of the same size or part of one. */
interface CountRule {
  readonly first: number;
  readonly further: number;
  /** In ft². */
  readonly area: number;
  /** The rule in words. */
  readonly words: string;
  /** Id in the register of sources. */
  readonly source: string;
}

/** 3 for the first 1000 ft², as one solicitation asks for both methods. */
const BY_THOUSANDS: CountRule = {
  first: 3,
  further: 1,
  area: 1000,
  words: '3 for the first 1000 ft², 1 for each further 1000 ft² or part of it',
  source: 'california-dmv-flooring',
};

/** The rules that were read or are remembered. */
export const COUNT_RULES: Readonly<Record<MoistureMethod, CountRule>> = {
  'calcium chloride': BY_THOUSANDS,
  'in-slab humidity': BY_THOUSANDS,
  'plastic sheet': {
    first: 1,
    further: 1,
    area: 500,
    words: '1 for each 500 ft² or part of it',
    source: 'astm-d4263',
  },
  alkalinity: {
    first: 2,
    further: 2,
    area: 500,
    words: '2 for each 500 ft² or part of it',
    source: 'astm-d4262',
  },
};

const FT2_M2 = 0.09290304;
/** More tests than anyone could write down. */
const FLOOR: Limits = { above: 0, below: 1.000000000001e9, words: ' above 0 and up to 1e9 m²' };

/** Reads the area of the floor and answers the number of tests; a part of an area counts as a whole one. */
export function testsFor(fn: string, method: MoistureMethod, floorArea: Area | undefined): number {
  const given_ft2 = read(fn, 'floorArea', floorArea, AREA, FLOOR) / FT2_M2;
  // Twelve digits are what an area is worth: 2000 ft² given in m² is not a hair more.
  const area_ft2 = Number(given_ft2.toPrecision(12));
  const { first, further, area } = COUNT_RULES[method];
  return first + further * Math.max(0, Math.ceil((area_ft2 - area) / area));
}
