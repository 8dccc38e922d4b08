/**
 * What was really laid: wet and dry film, ratio of the batches, bond, grip and look of a floor, each judged by a named rule.
 * @module inspect
 */
export { aggregateExposure } from './aggregateExposure.ts';
export type {
  AggregateExposure,
  AggregateExposureInput,
  ExposureClass,
  SurfacePart,
} from './aggregateExposure.ts';
export { appearanceCheck } from './appearanceCheck.ts';
export type {
  AppearanceCheckInput,
  AppearanceLimits,
  AppearanceResult,
  AppearanceScale,
} from './appearanceCheck.ts';
export { asApplied } from './asApplied.ts';
export type { AppliedFinding, AsApplied, AsAppliedInput, SuspectBatch } from './asApplied.ts';
export { dryFilmCheck } from './dryFilmCheck.ts';
export type { DryFilmAssessment, DryFilmCheckInput, FilmAreaMeans, FilmFinding } from './dryFilmCheck.ts';
export { filmRuleLimits } from './filmRuleLimits.ts';
export type { FilmRuleLimits, FilmRuleLimitsInput } from './filmRuleLimits.ts';
export { filmSamplingPlan } from './filmSamplingPlan.ts';
export type { FilmSamplingPlan, FilmSamplingPlanInput } from './filmSamplingPlan.ts';
export { frictionCoefficient } from './frictionCoefficient.ts';
export type { FrictionCoefficient, FrictionCoefficientInput } from './frictionCoefficient.ts';
export { glossGeometry } from './glossGeometry.ts';
export type { GlossGeometry, GlossGeometryInput } from './glossGeometry.ts';
export { glossLevel } from './glossLevel.ts';
export type { GlossLevel, GlossLevelInput, GlossLevelName } from './glossLevel.ts';
export { hazeIndex } from './hazeIndex.ts';
export type { HazeIndex, HazeIndexInput } from './hazeIndex.ts';
export { materialForecast } from './materialForecast.ts';
export type { MaterialForecast, MaterialForecastInput } from './materialForecast.ts';
export { notchGaugeReading } from './notchGaugeReading.ts';
export type {
  FilmInterval,
  NotchGaugeReading,
  NotchGaugeReadingInput,
  NotchSeries,
  PlannedFilm,
} from './notchGaugeReading.ts';
export { pendulumClass } from './pendulumClass.ts';
export type { PendulumClass, PendulumClassInput, SlipPotential } from './pendulumClass.ts';
export { polishLevel } from './polishLevel.ts';
export type { PolishLevel, PolishLevelInput, PolishLevelNumber } from './polishLevel.ts';
export { pullOffCheck } from './pullOffCheck.ts';
export type {
  FailureMode,
  FailureShares,
  PullOffAcceptance,
  PullOffAssessment,
  PullOffCheckInput,
  PullOffFinding,
  PullOffMean,
  PullOffMethod,
  PullOffTest,
} from './pullOffCheck.ts';
export { pullOffForce } from './pullOffForce.ts';
export type { PullOffForceInput } from './pullOffForce.ts';
export { pullOffStress } from './pullOffStress.ts';
export type { PullOffStressInput } from './pullOffStress.ts';
export { ratioDrift } from './ratioDrift.ts';
export type {
  BatchFinding,
  LoggedBatch,
  LoggedPart,
  PartTrend,
  RatioDrift,
  RatioDriftInput,
} from './ratioDrift.ts';
export { roughnessCorrection } from './roughnessCorrection.ts';
export type { RoughnessCorrection, RoughnessCorrectionInput, SteelRoughness } from './roughnessCorrection.ts';
export { slipCheck } from './slipCheck.ts';
export type { SlipCheckInput, SlipPlace, SlipResult } from './slipCheck.ts';
export { slipLimit } from './slipLimit.ts';
export type { SlipLimit, SlipLimitInput, SlipUse } from './slipLimit.ts';
export type { AppliedSquare } from './appliedSquares.ts';
export type { FilmCriterion } from './filmFindings.ts';
export type { FilmArea, MissingReadings } from './filmReadings.ts';
export type { SpecifiedFilm } from './filmLimits.ts';
export type {
  FilmRule,
  FilmRuleImo,
  FilmRuleIso,
  FilmRuleOwn,
  FilmRulePa2,
  FilmRulePa9,
  FilmTerms,
} from './filmRules.ts';
export type { FilmSubstrate } from './substrates.ts';
export type { ScaleCriterion, ScaleFinding, ScalePlace } from './scale.ts';
export type { SlipMethod } from './slipMethods.ts';
