/**
 * Batches: how large, how many, when each must be down, and where to stop.
 * @module batch
 */
export { batchClock } from './batchClock.ts';
export type { BatchClock, BatchClockInput, ClockBatch, ClockPail, ClockTime } from './batchClock.ts';
export { batchPace } from './batchPace.ts';
export type { BatchPace, BatchPaceInput } from './batchPace.ts';
export { batchSizes } from './batchSizes.ts';
export type { BatchSizes, BatchSizesInput } from './batchSizes.ts';
export { batchSteps } from './batchSteps.ts';
export type { BatchStep, BatchStepCode, BatchSteps } from './batchSteps.ts';
export type { Division } from './divide.ts';
export { handsNeeded } from './handsNeeded.ts';
export type { HandsNeeded, HandsNeededInput } from './handsNeeded.ts';
export { largestBatch } from './largestBatch.ts';
export type { BatchLimit, LargestBatch, LargestBatchInput } from './largestBatch.ts';
export { latestStart } from './latestStart.ts';
export type { LatestStart, LatestStartInput } from './latestStart.ts';
export { mixersNeeded } from './mixersNeeded.ts';
export type { MixersNeeded, MixersNeededInput } from './mixersNeeded.ts';
export type { Pace, Remedy } from './pace.ts';
export { poreCoatLots } from './poreCoatLots.ts';
export type { PoreCoatLots, PoreCoatLotsInput } from './poreCoatLots.ts';
export { potLifeNeeded } from './potLifeNeeded.ts';
export type { PotLifeNeededInput } from './potLifeNeeded.ts';
export type { PacedBy } from './stagger.ts';
export { stopPoint } from './stopPoint.ts';
export type { StopLine, StopPoint, StopPointInput } from './stopPoint.ts';
export { wetEdge } from './wetEdge.ts';
export type { WetEdge, WetEdgeInput } from './wetEdge.ts';
