/**
 * Words for cautions and for the steps of a batch.
 * @module messages
 */
export { batchStepText } from './batchStepText.ts';
export { cautionText } from './cautionText.ts';
