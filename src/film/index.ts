/**
 * Spread rate, wet film, dry film, and the volume an area needs, on the floor as it is.
 * @module film
 */
export { appliedThickness } from './appliedThickness.ts';
export type { AppliedThicknessInput } from './appliedThickness.ts';
export { areaCovered } from './areaCovered.ts';
export type { AreaCoveredInput } from './areaCovered.ts';
export { coatVolume } from './coatVolume.ts';
export type { CoatLoss, CoatVolume, CoatVolumeInput, LossCause, LossKind } from './coatVolume.ts';
export { comparatorProfile } from './comparatorProfile.ts';
export type { ComparatorProfile, ComparatorProfileInput, ComparatorSegment } from './comparatorProfile.ts';
export { dryThickness } from './dryThickness.ts';
export type { DryThicknessInput } from './dryThickness.ts';
export { meanTextureDepth } from './meanTextureDepth.ts';
export type { MeanTextureDepthInput } from './meanTextureDepth.ts';
export { poreCoat } from './poreCoat.ts';
export type { PoreCoat, PoreCoatInput } from './poreCoat.ts';
export { practicalSpreadRate } from './practicalSpreadRate.ts';
export type { PracticalSpreadRateInput } from './practicalSpreadRate.ts';
export { profileDepth } from './profileDepth.ts';
export type { ProfileDepthInput } from './profileDepth.ts';
export { solidsByVolumeFromSolvent } from './solidsByVolumeFromSolvent.ts';
export type { SolidsByVolumeFromSolventInput } from './solidsByVolumeFromSolvent.ts';
export { solidsByVolumeFromWeight } from './solidsByVolumeFromWeight.ts';
export type { SolidsByVolumeFromWeightInput } from './solidsByVolumeFromWeight.ts';
export { spreadRate } from './spreadRate.ts';
export type { SpreadRateInput } from './spreadRate.ts';
export { spreadRateForThickness } from './spreadRateForThickness.ts';
export type { SpreadRateForThicknessInput } from './spreadRateForThickness.ts';
export { surfaceProfile } from './surfaceProfile.ts';
export type { ProtectiveSystem, SurfaceProfile, SurfaceProfileInput } from './surfaceProfile.ts';
export { testSquare } from './testSquare.ts';
export type { TestSquare, TestSquareInput } from './testSquare.ts';
export { theoreticalSpreadRate } from './theoreticalSpreadRate.ts';
export type { TheoreticalSpreadRateInput } from './theoreticalSpreadRate.ts';
export { thinnedSolids } from './thinnedSolids.ts';
export type { ThinnedSolidsInput } from './thinnedSolids.ts';
export { volumeNeeded } from './volumeNeeded.ts';
export type { VolumeNeededInput } from './volumeNeeded.ts';
export { volumeWithLoss } from './volumeWithLoss.ts';
export type { VolumeWithLossInput } from './volumeWithLoss.ts';
export { volumeWithSpare } from './volumeWithSpare.ts';
export type { VolumeWithSpareInput } from './volumeWithSpare.ts';
export { wetThickness } from './wetThickness.ts';
export type { WetThicknessInput } from './wetThickness.ts';
export { wetThicknessForDry } from './wetThicknessForDry.ts';
export type { WetThicknessForDryInput } from './wetThicknessForDry.ts';
