/**
 * Ratios by volume and by weight, marks on the pail, additions, stoichiometry, and what a reading does to a ratio.
 * @module mix
 */
export { batchWithAdditions } from './batchWithAdditions.ts';
export type {
  Addition,
  BatchWithAdditions,
  BatchWithAdditionsInput,
  Measured,
} from './batchWithAdditions.ts';
export { blendEquivalentWeight } from './blendEquivalentWeight.ts';
export type { BlendEquivalentWeightInput } from './blendEquivalentWeight.ts';
export { checkRatio } from './checkRatio.ts';
export type { CheckRatioInput, RatioAssessment, UsedVolume } from './checkRatio.ts';
export type { BlendComponent } from './component.ts';
export { epoxyEquivalentWeight } from './epoxyEquivalentWeight.ts';
export type { EpoxyEquivalentWeightInput } from './epoxyEquivalentWeight.ts';
export { equivalentWeight } from './equivalentWeight.ts';
export type { EquivalentWeightInput } from './equivalentWeight.ts';
export { gelPoint } from './gelPoint.ts';
export type { GelPoint, GelPointInput } from './gelPoint.ts';
export { graduatedBatch } from './graduatedBatch.ts';
export type { GraduatedBatch, GraduatedBatchInput } from './graduatedBatch.ts';
export { hydroxylEquivalentWeight } from './hydroxylEquivalentWeight.ts';
export type { HydroxylEquivalentWeightInput } from './hydroxylEquivalentWeight.ts';
export { isocyanateContent } from './isocyanateContent.ts';
export type { IsocyanateContentInput } from './isocyanateContent.ts';
export { isocyanateEquivalentWeight } from './isocyanateEquivalentWeight.ts';
export type { IsocyanateEquivalentWeightInput } from './isocyanateEquivalentWeight.ts';
export { isocyanateNeeded } from './isocyanateNeeded.ts';
export type { IsocyanateNeeded, IsocyanateNeededInput } from './isocyanateNeeded.ts';
export { leastMeasurableBatch } from './leastMeasurableBatch.ts';
export type { LeastMeasurableBatchInput } from './leastMeasurableBatch.ts';
export { markHeight } from './markHeight.ts';
export type { MarkHeightInput } from './markHeight.ts';
export type { Pail } from './pail.ts';
export { pailMarks } from './pailMarks.ts';
export type { PailMark, PailMarks, PailMarksInput, RatioOff } from './pailMarks.ts';
export { pailVolume } from './pailVolume.ts';
export type { PailVolumeInput } from './pailVolume.ts';
export type { PartVolume, VolumePart, WeightPart } from './parts.ts';
export { partsPerHundredResin } from './partsPerHundredResin.ts';
export type { PartsPerHundredResinInput } from './partsPerHundredResin.ts';
export { prepolymerContent } from './prepolymerContent.ts';
export type { PrepolymerContentInput } from './prepolymerContent.ts';
export { readingRatioError } from './readingRatioError.ts';
export type { PartAmount, PartOff, ReadingRatioError, ReadingRatioErrorInput } from './readingRatioError.ts';
export { reconcile } from './reconcile.ts';
export type { PartDifference, ReconcileInput, Reconciliation, Suspicion } from './reconcile.ts';
export { splitByVolume } from './splitByVolume.ts';
export type { SplitByVolumeInput, VolumeSplit } from './splitByVolume.ts';
export { splitByWeight } from './splitByWeight.ts';
export type { PartMass, SplitByWeightInput, WeightSplit } from './splitByWeight.ts';
export { stoichiometricIndex } from './stoichiometricIndex.ts';
export type { ReactingSide, StoichiometricIndex, StoichiometricIndexInput } from './stoichiometricIndex.ts';
export { thinnedMix } from './thinnedMix.ts';
export type { ThinnedMix, ThinnedMixInput } from './thinnedMix.ts';
export { usablePartKit } from './usablePartKit.ts';
export type { UsablePartKit, UsablePartKitInput } from './usablePartKit.ts';
export { volumeRatio } from './volumeRatio.ts';
export type { DenseWeightPart, VolumeRatio, VolumeRatioInput } from './volumeRatio.ts';
export { weightRatio } from './weightRatio.ts';
export type { DenseVolumePart, WeightRatio, WeightRatioInput } from './weightRatio.ts';
