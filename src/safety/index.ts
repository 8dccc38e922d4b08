/**
 * Solvent and its vapour, silica dust, limits of exposure, the mass in a pail, and the standing hazards of the work.
 * @module safety
 */
export { cautionsFor } from './cautionsFor.ts';
export type { CautionsFor, CautionsForInput, FloorTask, ProductClass } from './cautionsFor.ts';
export { checkPailMass } from './checkPailMass.ts';
export type { CheckPailMassInput } from './checkPailMass.ts';
export { dilutionAirForExplosiveLimit } from './dilutionAirForExplosiveLimit.ts';
export type {
  DilutionAirForExplosiveLimit,
  DilutionAirForExplosiveLimitInput,
} from './dilutionAirForExplosiveLimit.ts';
export { dilutionAirForExposureLimit } from './dilutionAirForExposureLimit.ts';
export type {
  DilutionAirForExposureLimit,
  DilutionAirForExposureLimitInput,
} from './dilutionAirForExposureLimit.ts';
export { exposureLimits } from './exposureLimits.ts';
export type {
  AirborneSubstance,
  ExposureLimit,
  ExposureLimits,
  ExposureLimitsInput,
} from './exposureLimits.ts';
export { grindingDust } from './grindingDust.ts';
export type { GrindingDust, GrindingDustInput } from './grindingDust.ts';
export { mostThinner } from './mostThinner.ts';
export type { MostThinner, MostThinnerInput } from './mostThinner.ts';
export { purgeTime } from './purgeTime.ts';
export type { PurgeTime, PurgeTimeInput } from './purgeTime.ts';
export { silicaExposure } from './silicaExposure.ts';
export type { DustyTask, SilicaExposure, SilicaExposureInput } from './silicaExposure.ts';
export type { DustControl, SilicaControl, SilicaTool, WorkPlace } from './silicaTable.ts';
export { silicaTable1 } from './silicaTable1.ts';
export type { SilicaRequirement, SilicaTable1, SilicaTable1Input, SilicaTask } from './silicaTable1.ts';
export { solventData } from './solventData.ts';
export type { Solvent, SolventData, SolventDataInput, SolventReading } from './solventData.ts';
export { vapourBuildUp } from './vapourBuildUp.ts';
export type { VapourBuildUp, VapourBuildUpInput } from './vapourBuildUp.ts';
export { vapourVolume } from './vapourVolume.ts';
export type { VapourVolumeInput } from './vapourVolume.ts';
export type { VocComponent } from './vocComponent.ts';
export { vocContent } from './vocContent.ts';
export type { VocContent, VocContentInput } from './vocContent.ts';
export { vocEmitted } from './vocEmitted.ts';
export type { EmittingCoat, VocEmitted, VocEmittedInput } from './vocEmitted.ts';
export { vocPerSolids } from './vocPerSolids.ts';
export type { VocPerSolidsInput } from './vocPerSolids.ts';
