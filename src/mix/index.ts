/**
 * Ratios, marks on the pail, and what a reading does to the ratio.
 * @module mix
 */
export type { Pail } from './pail.ts';
export { pailMarks } from './pailMarks.ts';
export type { PailMark, PailMarks, PailMarksInput, RatioOff } from './pailMarks.ts';
export type { PartVolume, VolumePart } from './parts.ts';
export { splitByVolume } from './splitByVolume.ts';
export type { SplitByVolumeInput, VolumeSplit } from './splitByVolume.ts';
