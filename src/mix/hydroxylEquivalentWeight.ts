import { EQUIVALENT_WEIGHT, HYDROXYL_NUMBER } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { HydroxylNumber, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { EquivalentWeightUnit } from '../core/unitCodes.ts';

/** Input of {@link hydroxylEquivalentWeight}. */
export interface HydroxylEquivalentWeightInput<U extends EquivalentWeightUnit = EquivalentWeightUnit> {
  /** Hydroxyl number of the polyol. */
  readonly hydroxylNumber: HydroxylNumber;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Molar mass of potassium hydroxide in mg/mol, as the titration takes it. */
const POTASSIUM_HYDROXIDE = 56100;

/**
 * How much of a polyol carries one hydroxyl group, from its hydroxyl number.
 *
 * @formula
 * ```math
 * E = \frac{56100}{\mathrm{OHV}}
 * ```
 * @units hydroxyl number; answers equivalent weight.
 * @validRange hydroxylNumber above 0.
 * @monotone hydroxylNumber -
 * @accuracy Exact up to round-off. The published 56100 is the rounded 56105.6 of atomic weights, 0.01 % less.
 * @source pma-terms
 * @param input - Hydroxyl number and the unit wanted.
 * @returns The equivalent weight in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.hydroxylEquivalentWeight({ hydroxylNumber: { value: 280, unit: 'mgKOH/g' }, unit: 'g/eq' }).value.toFixed(1);
 * // => '200.4'
 * ```
 */
export const hydroxylEquivalentWeight = /* @__PURE__ */ monotone(
  { hydroxylNumber: '-' },
  <U extends EquivalentWeightUnit>(input: HydroxylEquivalentWeightInput<U>): Quantity<U> => {
    const { hydroxylNumber, unit } = fields('hydroxylEquivalentWeight', input);
    const number = read(
      'hydroxylEquivalentWeight',
      'hydroxylNumber',
      hydroxylNumber,
      HYDROXYL_NUMBER,
      POSITIVE,
    );
    return write('hydroxylEquivalentWeight', POTASSIUM_HYDROXIDE / number, EQUIVALENT_WEIGHT, unit);
  },
);
