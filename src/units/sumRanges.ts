import type { SameKind } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import type { Range, Ranged } from '../core/range.ts';
import { fields } from '../core/read.ts';
import { answerRange, rangeIn } from './rangeIn.ts';
import { listIn, scalable } from './arithmeticInput.ts';
import type { ScalableUnit } from './scale.ts';
import { total } from './total.ts';

/** Input of {@link sumRanges}. */
export interface SumRangesInput<U extends ScalableUnit = ScalableUnit> {
  /** What is added up: ranges and single quantities, each in its own unit. */
  readonly ranges: readonly Ranged<Quantity<SameKind<U>>>[];
  /** Unit of the answer, which says what kind the quantities are. */
  readonly unit: U;
}

/**
 * Several uncertain quantities together, from all at their least to all at their most.
 *
 * No sum lies outside. Where the parts hang on one and the same uncertain input, such as the thirst of one slab, put
 * the whole sum into one formula for `across` instead of adding its answers: it may be narrower.
 *
 * @formula
 * ```math
 * \Bigl[\sum_i a_i,\ \sum_i b_i\Bigr]
 * ```
 * @units any kind but a temperature; answers the same kind.
 * @validRange every finite value.
 * @accuracy As `sum`, at each end.
 * @source definition
 * @param input - The ranges and the unit wanted.
 * @returns The range of the sum in `input.unit`; `likely` where every part has one.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import { between } from 'coating-math/core';
 * import * as units from 'coating-math/units';
 *
 * const need = units.sumRanges({
 *   ranges: [between(2, 3, 'usgal', { likely: 2.5 }), { value: 2, unit: 'usqt' }],
 *   unit: 'usgal',
 * });
 * [need.low.value, need.likely?.value, need.high.value]; // => [2.5, 3, 3.5]
 * ```
 */
export function sumRanges<U extends ScalableUnit>(input: SumRangesInput<U>): Range<U> {
  const { ranges, unit } = fields('sumRanges', input);
  const dimension = scalable('sumRanges', unit);
  const parts = Array.from(listIn('sumRanges', 'ranges', ranges), (range, i) =>
    rangeIn('sumRanges', i, range as Range, dimension, unit, ['ranges']),
  );
  const likely = parts.map((part) => part.likely).filter((value) => value !== undefined);
  const ends = {
    low: total(parts.map((part) => part.low)),
    likely: likely.length === parts.length ? total(likely) : undefined,
    high: total(parts.map((part) => part.high)),
  };
  return answerRange('sumRanges', ends, unit);
}
