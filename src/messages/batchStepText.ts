import type { BatchStep, BatchStepCode } from '../batch/batchSteps.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { formatQuantity } from '../units/formatQuantity.ts';
import { inside } from '../core/inside.ts';
import { fields } from '../core/read.ts';
import { readKey, readObject } from '../core/readPlain.ts';
import { filled } from './filled.ts';

/** The English words for each step; `{time}` is the time of day where the clock has a start, `{ratio}` what a mark does. */
const STEPS: Readonly<Record<BatchStepCode, string>> = {
  measure: 'Measure {volume} of {name}.',
  'fill-to-mark': 'Or in the marked pail: {name} up to {mark}{ratio}.',
  'mark-too-coarse': 'No mark in the pail for {name}: steps of {step} are too coarse for it.',
  mix: 'Batch {batch}, {volume}: start mixing {time}.',
  'stand-until': 'Batch {batch}: let it stand; {time} its stand time is over.',
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
 * batchStepText({
 *   code: 'fill-to-mark',
 *   params: {
 *     name: 'B',
 *     mark: { value: 5.8125, unit: 'in' },
 *     step: { value: 1 / 16, unit: 'in' },
 *     atMarks: { value: 0, unit: '%' },
 *     low: { value: -7.94, unit: '%' },
 *     high: { value: 8.2, unit: '%' },
 *   },
 * }); // => 'Or in the marked pail: B up to 5 13/16 in (0.0 % off ratio at the line, -7.9 % to 8.2 % if misread).'
 * ```
 */
export function batchStepText(step: BatchStep): string {
  const fn = 'batchStepText';
  const { code, params } = fields(fn, step);
  const words = STEPS[readKey(fn, 'code', code, STEPS)];
  const { at } = readObject(fn, 'params', params);
  if (code === 'fill-to-mark') {
    return filled(fn, words, { ...params, ...onStick(fn, params), ratio: ratioText(fn, params) }, 4);
  }
  if (!words.includes('{time}')) return filled(fn, words, params, 4);
  const time =
    typeof at === 'string' ? `at ${at.slice(11, 19)}` : filled(fn, '{after} after the start', params, 4);
  return filled(fn, words, { ...params, time }, 4);
}

/** A mark as it is read off, where that is in fractions of an inch: on a stick of halves, quarters and so on. */
function onStick(fn: string, { mark, step }: BatchStep['params']): { readonly mark?: string } {
  if (typeof mark !== 'object' || typeof step !== 'object' || mark.unit !== 'in') return {};
  const denominator = 1 / step.value;
  if (denominator < 1 || !Number.isInteger(Math.log2(denominator))) return {};
  const quantity = mark as Length;
  return inside(fn, ['params', 'mark'], () => ({
    mark: formatQuantity({ quantity, locale: 'en-US', denominator }),
  }));
}

/** What a mark does to the ratio, to a tenth of a per cent; nothing for the first part, whose mark does nothing. */
function ratioText(fn: string, params: BatchStep['params']): string {
  if (params.atMarks === undefined) return '';
  const tenths = (key: string) =>
    inside(fn, ['params', key], () =>
      formatQuantity({ quantity: params[key] as Quantity<'%'>, locale: 'en-US', unit: '%', decimals: 1 }),
    );
  return ` (${tenths('atMarks')} off ratio at the line, ${tenths('low')} to ${tenths('high')} if misread)`;
}
