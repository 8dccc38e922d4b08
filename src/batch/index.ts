/**
 * Batches: how large, how many, and when each must be down.
 * @module batch
 */
export { batchClock } from './batchClock.ts';
export type { BatchClock, BatchClockInput, ClockBatch, ClockPail, ClockTime } from './batchClock.ts';
export { batchSizes } from './batchSizes.ts';
export type { BatchSizes, BatchSizesInput } from './batchSizes.ts';
export type { Division } from './divide.ts';
export { largestBatch } from './largestBatch.ts';
export type { BatchLimit, LargestBatch, LargestBatchInput } from './largestBatch.ts';
export type { Pace, Remedy } from './pace.ts';
