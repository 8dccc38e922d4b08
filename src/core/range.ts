import type { Dimension } from './dimension.ts';
import type { InputPath } from './InputError.ts';
import type { Limits } from './limits.ts';
import type { Quantity } from './quantity.ts';
import { read, refuse } from './read.ts';

/** What is known of an uncertain quantity: between which two values it lies, and where most likely. One unit. */
export interface Range<U extends string = string> {
  /** Smallest value. */
  readonly low: Quantity<U>;
  /** Most likely value, if one is known. */
  readonly likely?: Quantity<U> | undefined;
  /** Largest value. */
  readonly high: Quantity<U>;
}

/** A range of which the most likely value is known. */
export interface LikelyRange<U extends string = string> extends Range<U> {
  /** Most likely value. */
  readonly likely: Quantity<U>;
}

/** One value or a range of values. */
export type Ranged<Q extends Quantity> = Q | Range<Q['unit']>;

/** A range in base units. */
export interface BaseRange {
  readonly low: number;
  readonly likely: number | undefined;
  readonly high: number;
}

/** Whether a value is meant as a range: it has ends. */
export function isRange<U extends string>(value: Ranged<Quantity<U>> | undefined): value is Range<U>;
export function isRange(value: unknown): value is Range;
export function isRange(value: unknown): boolean {
  return typeof value === 'object' && value !== null && ('low' in value || 'high' in value);
}

/** What lies in the middle between the ends. */
export function middleOf<U extends string>({ low, high }: Range<U>): Quantity<U> {
  return { value: low.value / 2 + high.value / 2, unit: low.unit };
}

/** Refuses ends in the wrong order, a likely value outside them, and ends in different units. */
export function checkOrder(fn: string, range: Range, path: InputPath): void {
  const { low, likely, high } = range;
  if (low.unit !== high.unit || (likely && likely.unit !== low.unit)) {
    const units = new Set([low, likely ?? low, high].map(({ unit }) => unit));
    refuse(fn, 'conflict', path, 'a range in one unit', [...units].join(' and '));
  }
  const middle = likely ? likely.value : low.value;
  if (!(low.value <= middle && middle <= high.value)) {
    const got = [low, likely, high].map((end) => end && String(end.value)).filter(Boolean);
    refuse(fn, 'conflict', path, 'a range with low ≤ likely ≤ high', got.join(' to '));
  }
}

/** Reads a quantity or a range of them into base units; one value is a range without width. */
export function readRange<U extends string>(
  fn: string,
  key: string | number,
  given: Ranged<Quantity<U>> | undefined,
  dimension: Dimension<U>,
  limits: Limits,
  path: InputPath = [],
): BaseRange {
  if (!isRange(given)) {
    const value = read(fn, key, given, dimension, limits, path);
    return { low: value, likely: value, high: value };
  }
  const inside = [...path, key];
  const low = read(fn, 'low', given.low, dimension, limits, inside);
  const high = read(fn, 'high', given.high, dimension, limits, inside);
  const likely =
    given.likely === undefined ? undefined : read(fn, 'likely', given.likely, dimension, limits, inside);
  checkOrder(fn, given, inside);
  return { low, likely, high };
}
