/**
 * Pot life, gel, recoat and cure against temperature, degree of cure, and the heat of the reaction.
 * @module cure
 */
export { activationEnergy } from './activationEnergy.ts';
export type { ActivationEnergyInput } from './activationEnergy.ts';
export { adiabaticRise } from './adiabaticRise.ts';
export type { AdiabaticRise, AdiabaticRiseInput } from './adiabaticRise.ts';
export { degreeOfCure } from './degreeOfCure.ts';
export type { DegreeOfCureInput } from './degreeOfCure.ts';
export type { Kinetics, SelfHeating } from './kinetics.ts';
export { potLife } from './potLife.ts';
export type { PotLifeAnswer, PotLifeInput } from './potLife.ts';
export { reactionHeat } from './reactionHeat.ts';
export type { ReactionHeatInput } from './reactionHeat.ts';
export { recoatWindow } from './recoatWindow.ts';
export type { RecoatWindow, RecoatWindowInput } from './recoatWindow.ts';
export { recoatWindowFromTable } from './recoatWindowFromTable.ts';
export type { RecoatRow, RecoatWindowFromTableInput } from './recoatWindowFromTable.ts';
export { temperatureForTime } from './temperatureForTime.ts';
export type { TemperatureForTime, TemperatureForTimeInput } from './temperatureForTime.ts';
export { timeAt } from './timeAt.ts';
export type { TimeAtAnswer, TimeAtInput } from './timeAt.ts';
export type { ArrheniusRule, HalvingRule, TimePoint, TimeRule, TimeTable } from './timeRule.ts';
export { timeToDegreeOfCure } from './timeToDegreeOfCure.ts';
export type { TimeToDegreeOfCureInput } from './timeToDegreeOfCure.ts';
