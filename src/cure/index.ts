/**
 * Pot life, gel, recoat and cure against temperature.
 * @module cure
 */
export { potLife } from './potLife.ts';
export type { PotLifeAnswer, PotLifeInput } from './potLife.ts';
export { timeAt } from './timeAt.ts';
export type { TimeAtAnswer, TimeAtInput } from './timeAt.ts';
export type { ArrheniusRule, HalvingRule, TimePoint, TimeRule, TimeTable } from './timeRule.ts';
