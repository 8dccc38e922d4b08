import type { BatchStep, BatchStepCode } from '../batch/batchSteps.ts';
import { fields } from '../core/read.ts';
import { readKey, readObject } from '../core/readPlain.ts';
import { filled } from './filled.ts';

/** The English words for each step; `{time}` is the time of day where the clock has a start. */
const STEPS: Readonly<Record<BatchStepCode, string>> = {
  measure: 'Measure {volume} of {name}.',
  'fill-to-mark': 'Fill {name} up to the mark at {mark}.',
  mix: 'Batch {batch}, {volume}: start mixing {time}.',
  'pour-by': 'Batch {batch}: pour it out {time} at the latest.',
  'down-by': 'Batch {batch}: have {area} down {time} at the latest.',
  'discard-at':
    'Batch {batch}: {time} its pot life is over. Spread out what is left to cure; use none of it.',
};

/**
 * One step of a batch in words, to read out at the mixing table.
 *
 * @param step - A step out of `batchSteps`.
 * @returns An English sentence with its figures, to four digits, and the time of day or the time since the first batch.
 * @throws An `InputError` that names the field: an unknown code, or a number or name that its words need.
 * @example
 * ```ts
 * import { batchStepText } from 'coating-math/messages';
 *
 * batchStepText({ code: 'measure', params: { name: 'A', volume: { value: 1.25, unit: 'usgal' } } });
 * // => 'Measure 1.25 US gal of A.'
 * batchStepText({
 *   code: 'pour-by',
 *   params: { batch: 2, after: { value: 15, unit: 'min' }, at: '2027-04-12T07:45:00-05:00' },
 * }); // => 'Batch 2: pour it out at 07:45:00 at the latest.'
 * ```
 */
export function batchStepText(step: BatchStep): string {
  const fn = 'batchStepText';
  const { code, params } = fields(fn, step);
  const words = STEPS[readKey(fn, 'code', code, STEPS)];
  const { at } = readObject(fn, 'params', params);
  if (!words.includes('{time}')) return filled(fn, words, params, 4);
  const time =
    typeof at === 'string' ? `at ${at.slice(11, 19)}` : filled(fn, '{after} after the start', params, 4);
  return filled(fn, words, { ...params, time }, 4);
}
