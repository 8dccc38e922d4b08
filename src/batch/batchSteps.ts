import { basis } from '../core/basis.ts';
import { echo } from '../core/echo.ts';
import type { Basis } from '../core/caution.ts';
import { AREA, LENGTH, SHARE, TIME, VOLUME } from '../core/dimensions.ts';
import { readInstant } from '../core/instant.ts';
import type { InputPath } from '../core/InputError.ts';
import { ANY, NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, read } from '../core/read.ts';
import { readCount, readFlag, readObjects, readName, readObject } from '../core/readPlain.ts';
import type { PailMark, RatioOff } from '../mix/pailMarks.ts';
import type { PartVolume } from '../mix/parts.ts';
import type { ClockBatch, ClockTime } from './batchClock.ts';

/** What is done with a batch, in order: measured or filled up to a mark, mixed, left to stand, poured, down, discarded. */
export type BatchStepCode =
  | 'measure'
  | 'fill-to-mark'
  | 'mark-too-coarse'
  | 'mix'
  | 'stand-until'
  | 'pour-by'
  | 'down-by'
  | 'discard-at';

/** One thing to do, as data for words in any language. */
export interface BatchStep {
  /** What is done. */
  readonly code: BatchStepCode;
  /** The numbers and names that belong into its words; `at` where the clock has a start. */
  readonly params: Readonly<Record<string, Quantity | string | number>>;
}

/** Answer of {@link batchSteps}. */
export interface BatchSteps {
  /** The steps in the order in which they are done. */
  readonly steps: readonly BatchStep[];
  /** Where they come from. */
  readonly basis: readonly Basis[];
}

/**
 * One line of the clock as steps to read out at the mixing table: measure, mix, let stand, pour by, down by, discard at.
 *
 * @formula
 * ```math
 * t_\mathrm{mix} < t_\mathrm{pour} < t_\mathrm{down} < t_\mathrm{discard}
 * ```
 * @units volumes, lengths, area, times; answers the same.
 * @validRange a line of `batchClock`.
 * @accuracy The figures of the clock; marks as they can be read. No published figure: nothing is computed.
 * @source common-practice
 * @param input - One line of the clock.
 * @returns The steps in order, each a code with its numbers and names.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const minutes = (value: number) => ({ after: { value, unit: 'min' } }) as const;
 * batch.batchSteps({
 *   number: 2,
 *   volume: { value: 3, unit: 'l' },
 *   area: { value: 18, unit: 'm2' },
 *   parts: [{ name: 'A', volume: { value: 3, unit: 'l' } }],
 *   start: minutes(9),
 *   pourBy: minutes(15),
 *   downBy: minutes(24),
 *   discardAt: minutes(29),
 * }).steps.map(({ code }) => code); // => ['measure', 'mix', 'pour-by', 'down-by', 'discard-at']
 * ```
 */
export function batchSteps(input: ClockBatch): BatchSteps {
  const fn = 'batchSteps';
  const { number, volume, area, parts, marks, start, standUntil, pourBy, downBy, discardAt } = fields(
    fn,
    input,
  );
  const batch = readCount(fn, 'number', number);
  read(fn, 'volume', volume, VOLUME, POSITIVE);
  read(fn, 'area', area, AREA, POSITIVE);
  const measures = readObjects(fn, 'parts', parts, 1).map((part, i) => measureStep(fn, part, ['parts', i]));
  const fills =
    marks === undefined
      ? []
      : readObjects(fn, 'marks', marks, 1).map((mark, i) => fillStep(fn, mark, ['marks', i]));
  const times = {
    mix: readTime(fn, 'start', start),
    stand: standUntil === undefined ? undefined : readTime(fn, 'standUntil', standUntil),
    pourBy: readTime(fn, 'pourBy', pourBy),
    downBy: readTime(fn, 'downBy', downBy),
    discardAt: readTime(fn, 'discardAt', discardAt),
  };
  const steps: readonly BatchStep[] = [
    ...measures,
    ...fills,
    { code: 'mix', params: { batch, volume, ...times.mix } },
    ...(times.stand ? [{ code: 'stand-until', params: { batch, ...times.stand } } as const] : []),
    { code: 'pour-by', params: { batch, ...times.pourBy } },
    { code: 'down-by', params: { batch, area, ...times.downBy } },
    { code: 'discard-at', params: { batch, ...times.discardAt } },
  ];
  return {
    steps: echo(steps),
    basis: [basis('steps', 'batch.batchSteps', 'the order of the work', 'common-practice', { batch })],
  };
}

/** A part to be measured. */
function measureStep(fn: string, { name, volume }: PartVolume, path: InputPath): BatchStep {
  read(fn, 'volume', volume, VOLUME, NOT_NEGATIVE, path);
  return { code: 'measure', params: { name: readName(fn, 'name', name, path), volume } };
}

/** A part to be poured up to its mark, with what the mark does to its ratio. */
function fillStep(fn: string, { name: called, mark, off, tooCoarse }: PailMark, path: InputPath): BatchStep {
  const { field, step } = readObject(fn, 'mark', mark, path);
  read(fn, 'field', field, LENGTH, NOT_NEGATIVE, [...path, 'mark']);
  read(fn, 'step', step, LENGTH, POSITIVE, [...path, 'mark']);
  const name = readName(fn, 'name', called, path);
  if (tooCoarse !== undefined && readFlag(fn, 'tooCoarse', tooCoarse, path)) {
    return { code: 'mark-too-coarse', params: { name, step } };
  }
  const ratio = off === undefined ? {} : readOff(fn, off, path);
  return { code: 'fill-to-mark', params: { name, mark: field, step, ...ratio } };
}

/** How far a part may come out against the first. */
function readOff(fn: string, off: RatioOff, path: InputPath): { readonly [K in keyof RatioOff]: Quantity } {
  const { atMarks, low, high } = readObject(fn, 'off', off, path);
  const shares = { atMarks, low, high };
  for (const [key, share] of Object.entries(shares)) read(fn, key, share, SHARE, ANY, [...path, 'off']);
  return shares;
}

/** A time on the clock, and its moment where there is one. */
function readTime(fn: string, key: string, time: ClockTime): { after: Quantity; at?: string } {
  const { after, at } = readObject(fn, key, time);
  read(fn, 'after', after, TIME, NOT_NEGATIVE, [key]);
  if (at === undefined) return { after };
  readInstant(fn, 'at', at, [key]);
  return { after, at };
}
