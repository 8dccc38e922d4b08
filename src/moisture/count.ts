/** How many tests a floor asks for, by method. */
import { counted } from '../core/decimal.ts';
import { AREA } from '../core/dimensions.ts';
import { POSITIVE, type Limits } from '../core/limits.ts';
import type { Area } from '../core/quantity.ts';
import { read } from '../core/read.ts';

/** How the moisture or the pH of a slab is tested. */
export type MoistureMethod = 'calcium chloride' | 'in-slab humidity' | 'plastic sheet' | 'alkalinity';

/** Tests for the first area, tests for each further area or part of one, in ft². */
export interface CountRule {
  readonly first: number;
  readonly firstArea: number;
  readonly further: number;
  readonly furtherArea: number;
  /** The rule in words. */
  readonly words: string;
  /** Id in the register of sources. */
  readonly source: string;
}

const THREE_AND_ONE = {
  first: 3,
  firstArea: 1000,
  further: 1,
  furtherArea: 1000,
  words: '3 for the first 1000 ft², 1 for each further 1000 ft² or part of it',
};

/** The rules that were read or are remembered. */
export const COUNT_RULES: Readonly<Record<MoistureMethod, CountRule>> = {
  'calcium chloride': { ...THREE_AND_ONE, source: 'california-dmv-flooring' },
  'in-slab humidity': { ...THREE_AND_ONE, source: 'california-dmv-flooring' },
  'plastic sheet': {
    first: 1,
    firstArea: 500,
    further: 1,
    furtherArea: 500,
    words: '1 for each 500 ft² or part of it',
    source: 'astm-d4263',
  },
  alkalinity: {
    first: 2,
    firstArea: 500,
    further: 2,
    furtherArea: 500,
    words: '2 for each 500 ft² or part of it',
    source: 'astm-d4262',
  },
};

/** More tests than anyone could write down. */
const FLOOR: Limits = { ...POSITIVE, most: 1e9, words: ' above 0 and up to 1e9 m²' };

/** Reads the area of the floor and answers the number of tests; a part of an area counts as a whole one. */
export function testsFor(fn: string, method: MoistureMethod, floorArea: Area | undefined): number {
  const area_ft2 = counted(read(fn, 'floorArea', floorArea, AREA, FLOOR) / 0.09290304);
  const { first, firstArea, further, furtherArea } = COUNT_RULES[method];
  const parts = area_ft2.minus(firstArea).div(furtherArea).ceil();
  return first + further * Math.max(0, parts.toNumber());
}
