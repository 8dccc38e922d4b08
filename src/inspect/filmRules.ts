/** The rules by which dry films are accepted, as they are given. */
import type { Share } from '../core/quantity.ts';

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
