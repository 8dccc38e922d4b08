/**
 * Sand and other aggregate: bulk, grains and voids, mortars, broadcasts and the layers they build.
 * @module aggregate
 */
export { aggregateVolumes } from './aggregateVolumes.ts';
export type { AggregateVolumes, AggregateVolumesInput } from './aggregateVolumes.ts';
export { binderForVoids } from './binderForVoids.ts';
export type { BinderForVoidsInput } from './binderForVoids.ts';
export { broadcast } from './broadcast.ts';
export type { Broadcast, BroadcastInput } from './broadcast.ts';
export { buildUp } from './buildUp.ts';
export type { BuildUp, BuildUpInput, BuildUpLayer } from './buildUp.ts';
export { builtThickness } from './builtThickness.ts';
export type { BuiltThicknessInput } from './builtThickness.ts';
export { bulkDensity } from './bulkDensity.ts';
export type { BulkDensityInput } from './bulkDensity.ts';
export { lifts } from './lifts.ts';
export type { Lifts, LiftsInput } from './lifts.ts';
export { massOfVolume } from './massOfVolume.ts';
export type { MassOfVolumeInput } from './massOfVolume.ts';
export { mixVolume } from './mixVolume.ts';
export type { MixVolumeInput } from './mixVolume.ts';
export { mortarYield } from './mortarYield.ts';
export type { MortarYield, MortarYieldInput } from './mortarYield.ts';
export { sandDryness } from './sandDryness.ts';
export type { SandDrynessInput } from './sandDryness.ts';
export { sandMoisture } from './sandMoisture.ts';
export type { SandMoistureInput } from './sandMoisture.ts';
export { sealThickness } from './sealThickness.ts';
export type { SealThicknessInput } from './sealThickness.ts';
export { voidFreeDensity } from './voidFreeDensity.ts';
export type { VoidFreeDensityInput } from './voidFreeDensity.ts';
export { voids } from './voids.ts';
export type { VoidsInput } from './voids.ts';
export { volumeOfMass } from './volumeOfMass.ts';
export type { VolumeOfMassInput } from './volumeOfMass.ts';
export { waterInSand } from './waterInSand.ts';
export type { WaterInSandInput } from './waterInSand.ts';
