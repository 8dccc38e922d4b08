/** Several readings of one thing. */
import type { Dimension } from '../core/dimension.ts';
import type { Quantity } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';
import { readAny } from '../core/readAny.ts';
import { readList } from '../core/readPlain.ts';
import { total } from '../units/total.ts';
import { valueIn } from '../units/valueIn.ts';

/** What kind the readings are, and their unit: those of the first. */
export function readKind(
  fn: string,
  readings: readonly Quantity[] | undefined,
): { readonly dimension: Dimension<string>; readonly unit: string } {
  const first = readList(fn, 'readings', readings, 1)[0] as Quantity;
  const { dimension } = readAny(fn, 0, first, undefined, ['readings']);
  return { dimension, unit: first.unit };
}

/** Reads the list in `readings` into one unit; too few are refused with how many are missing. */
export function readReadings(
  fn: string,
  readings: readonly Quantity[] | undefined,
  least: number,
  dimension: Dimension<string>,
  unit: string,
): number[] {
  const list = readList(fn, 'readings', readings, 0);
  if (list.length < least) {
    const missing = `${least} readings or more, ${least - list.length} more than came`;
    refuse(fn, 'out-of-range', ['readings'], missing, `${list.length} readings`);
  }
  return list.map((reading, i) => valueIn(fn, i, reading, dimension, unit, ['readings']));
}

/** The arithmetic mean. */
export function meanOf(values: readonly number[]): number {
  return total(values) / values.length;
}

/**
 * The sample standard deviation in two passes: first the mean, then the deviations from it, less what the rounding of
 * the mean left in them.
 */
export function deviationOf(values: readonly number[], mean: number): number {
  const off = values.map((value) => value - mean);
  const squares = total(off.map((one) => one * one)) - total(off) ** 2 / values.length;
  return Math.sqrt(Math.max(0, squares) / (values.length - 1));
}
