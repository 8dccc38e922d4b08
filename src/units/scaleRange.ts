import type { SameKind } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import type { Range, Ranged } from '../core/range.ts';
import { fields } from '../core/read.ts';
import { answerRange, rangeIn } from './rangeIn.ts';
import { scalable, times } from './arithmeticInput.ts';
import type { ScalableUnit } from './scale.ts';

/** Input of {@link scaleRange}. */
export interface ScaleRangeInput<
  From extends ScalableUnit = ScalableUnit,
  U extends SameKind<From> = SameKind<From>,
> {
  /** What is taken several times. */
  readonly range: Ranged<Quantity<From>>;
  /** How many times; a part of it below 1. Below 0 the ends change places. */
  readonly by: number;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Several times an uncertain quantity, or a part of it.
 *
 * @formula
 * ```math
 * \bigl[\min(k a, k b),\ \max(k a, k b)\bigr]
 * ```
 * @units any kind but a temperature; answers the same kind.
 * @validRange every finite value.
 * @accuracy As `scale`, at each end.
 * @source definition
 * @param input - The range, how many times, and the unit wanted.
 * @returns The range of the product in `input.unit`; `likely` where the input has one.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import { between } from 'coating-math/core';
 * import * as units from 'coating-math/units';
 *
 * const coats = units.scaleRange({ range: between(2, 3, 'usgal'), by: 2, unit: 'usgal' });
 * [coats.low.value, coats.high.value]; // => [4, 6]
 * ```
 */
export function scaleRange<From extends ScalableUnit, U extends SameKind<From>>(
  input: ScaleRangeInput<From, U>,
): Range<U> {
  const { range, by, unit } = fields('scaleRange', input);
  const { low, likely, high } = rangeIn('scaleRange', 'range', range, scalable('scaleRange', unit), unit);
  const factor = times('scaleRange', by);
  const [least, most] = factor < 0 ? [high, low] : [low, high];
  const ends = { low: least * factor, likely: likely && likely * factor, high: most * factor };
  return answerRange('scaleRange', ends, unit);
}
