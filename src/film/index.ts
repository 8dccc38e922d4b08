/**
 * Spread rate, wet film, dry film, and the volume an area needs.
 * @module film
 */
export { coatVolume } from './coatVolume.ts';
export type { CoatLoss, CoatVolume, CoatVolumeInput, LossCause, LossKind } from './coatVolume.ts';
export { dryThickness } from './dryThickness.ts';
export type { DryThicknessInput } from './dryThickness.ts';
export { spreadRate } from './spreadRate.ts';
export type { SpreadRateInput } from './spreadRate.ts';
export { spreadRateForThickness } from './spreadRateForThickness.ts';
export type { SpreadRateForThicknessInput } from './spreadRateForThickness.ts';
export { volumeNeeded } from './volumeNeeded.ts';
export type { VolumeNeededInput } from './volumeNeeded.ts';
export { wetThickness } from './wetThickness.ts';
export type { WetThicknessInput } from './wetThickness.ts';
export { wetThicknessForDry } from './wetThicknessForDry.ts';
export type { WetThicknessForDryInput } from './wetThicknessForDry.ts';
