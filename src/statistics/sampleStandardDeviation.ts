import { dimensionOf, type SameKind } from '../core/dimensionOf.ts';
import { TEMPERATURE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import type { TemperatureDifferenceUnit, TemperatureUnit } from '../core/unitCodes.ts';
import { scalable } from '../units/arithmeticInput.ts';
import { pointUnit } from '../units/differenceUnit.ts';
import type { ScalableUnit } from '../units/scale.ts';
import { answer } from '../units/valueIn.ts';
import { deviationOf, meanOf, readReadings } from './readings.ts';

/** What may have a deviation in a unit: temperatures deviate by a temperature difference. */
export type DeviatingUnit<U extends ScalableUnit> = U extends TemperatureDifferenceUnit
  ? TemperatureDifferenceUnit | TemperatureUnit
  : SameKind<U>;

/** Input of {@link sampleStandardDeviation}. */
export interface SampleStandardDeviationInput<U extends ScalableUnit = ScalableUnit> {
  /** Two readings or more, each in its own unit. */
  readonly readings: readonly Quantity<DeviatingUnit<U>>[];
  /** Unit of the answer; of temperatures that of a difference. */
  readonly unit: U;
}

/**
 * How widely readings scatter about their mean, as an estimate for all places that were not read: by n − 1, never n.
 *
 * Computed in two passes. The short form with sums of squares loses all digits where readings are alike.
 *
 * @formula
 * ```math
 * s = \sqrt{\frac{1}{n - 1} \sum_i (x_i - \bar{x})^2}
 * ```
 * @units any kind; answers the same kind, of temperatures a temperature difference.
 * @validRange two readings or more; too few are refused with how many are missing.
 * @monotone readings none
 * @accuracy Within 1e-13 relative of the certified deviations of NIST where the readings are exact in binary; 1e-8
 * for deviations of a tenth about a million.
 * @source nist-strd, chan-golub-leveque-1983
 * @param input - The readings and the unit wanted.
 * @returns The deviation in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const readings = [9, 11, 13].map((value) => ({ value, unit: 'mil' }) as const);
 * statistics.sampleStandardDeviation({ readings, unit: 'mil' }); // => { value: 2, unit: 'mil' }
 * ```
 */
export const sampleStandardDeviation = /* @__PURE__ */ monotone(
  { readings: 'none' },
  <U extends ScalableUnit>(input: SampleStandardDeviationInput<U>): Quantity<U> => {
    const fn = 'sampleStandardDeviation';
    const { readings, unit } = fields(fn, input);
    const dimension = scalable(fn, unit);
    const first = Array.isArray(readings) ? (readings[0] as Quantity | undefined)?.unit : undefined;
    const ofPoints =
      dimension.kind === TEMPERATURE_DIFFERENCE.kind && dimensionOf(first)?.kind === TEMPERATURE.kind;
    const values = ofPoints
      ? readReadings(fn, readings, 2, dimensionOf(first) as typeof dimension, pointUnit(unit))
      : readReadings(fn, readings, 2, dimension, unit);
    return answer(fn, deviationOf(values, meanOf(values)), unit);
  },
);
