import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer } from '../units/valueIn.ts';
import { meanOf, readReadings } from './readings.ts';

/** Input of {@link arithmeticMean}. */
export interface ArithmeticMeanInput<U extends Unit = Unit> {
  /** One reading or more, each in its own unit. */
  readonly readings: readonly Quantity<SameKind<U>>[];
  /** Unit of the answer, which says what kind the readings are. */
  readonly unit: U;
}

/**
 * The middle of several readings: all of them together, shared out evenly.
 *
 * @formula
 * ```math
 * \bar{x} = \frac{1}{n} \sum_i x_i
 * ```
 * @units any kind; answers the same kind.
 * @validRange one reading or more.
 * @monotone readings none
 * @accuracy Within 1e-15 relative of the certified means of NIST, the difficult ones too.
 * @source nist-strd
 * @param input - The readings and the unit wanted.
 * @returns The mean in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const readings = [{ value: 11.2, unit: 'mil' }, { value: 12.6, unit: 'mil' }, { value: 254, unit: 'um' }] as const;
 * statistics.arithmeticMean({ readings, unit: 'mil' }).value.toFixed(6); // => '11.266667'
 * ```
 */
export const arithmeticMean = /* @__PURE__ */ monotone(
  { readings: 'none' },
  <U extends Unit>(input: ArithmeticMeanInput<U>): Quantity<U> => {
    const { readings, unit } = fields('arithmeticMean', input);
    const values = readReadings('arithmeticMean', readings, 1, dimensionOfUnit('arithmeticMean', unit), unit);
    return answer('arithmeticMean', meanOf(values), unit);
  },
);
