import type { Dimension } from '../core/dimension.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import { refuse } from '../core/read.ts';
import { dimensionOfUnit } from './dimensionNamed.ts';

/** The kind of a unit whose zero means none of it. A sum or a multiple of temperatures means nothing. */
export function scalable(fn: string, unit: unknown): Dimension<string> {
  const dimension = dimensionOfUnit(fn, unit);
  return dimension.kind === TEMPERATURE.kind
    ? refuse(fn, 'wrong-unit', ['unit'], 'a unit of anything but a temperature, or of a difference', unit)
    : dimension;
}

/** How many times, from the field `by`. */
export function times(fn: string, by: unknown): number {
  if (typeof by !== 'number')
    return refuse(fn, by === undefined ? 'missing' : 'wrong-type', ['by'], 'a number', by);
  return Number.isFinite(by) ? by : refuse(fn, 'not-finite', ['by'], 'a finite number', by);
}

/** The list in the field `key`. */
export function listIn(fn: string, key: string, given: unknown): readonly unknown[] {
  return Array.isArray(given)
    ? given
    : refuse(fn, given === undefined ? 'missing' : 'wrong-type', [key], 'a list of quantities', given);
}
