import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer } from '../units/valueIn.ts';
import { deviationOf, meanOf, readReadings } from './readings.ts';
import { stepUnitOf, type Uncertain } from './uncertain.ts';

/** Input of {@link typeAUncertainty}. */
export interface TypeAUncertaintyInput<U extends Unit = Unit> {
  /** Two readings or more of the same thing, each in its own unit. */
  readonly readings: readonly Quantity<SameKind<U>>[];
  /** Unit of the answer, which says what kind the readings are. */
  readonly unit: U;
}

/**
 * What repeated readings of one thing say of it, and how well: their mean with its standard uncertainty (Type A).
 *
 * @formula
 * ```math
 * u(\bar{x}) = \frac{s}{\sqrt{n}}, \quad \nu = n - 1
 * ```
 * @units any kind; answers the same kind with an uncertainty, of temperatures a temperature difference.
 * @validRange two readings or more, independent of each other.
 * @monotone readings none
 * @accuracy As `sampleStandardDeviation`.
 * @source jcgm-100-2008
 * @param input - The readings and the unit wanted.
 * @returns The mean in `input.unit` with its standard uncertainty and degrees of freedom.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const readings = [71, 74, 74, 77].map((value) => ({ value, unit: '%' }) as const);
 * statistics.typeAUncertainty({ readings, unit: '%' }).standardUncertainty.value.toFixed(3); // => '1.225'
 * ```
 */
export const typeAUncertainty = /* @__PURE__ */ monotone(
  { readings: 'none' },
  <U extends Unit>(input: TypeAUncertaintyInput<U>): Uncertain<U> => {
    const fn = 'typeAUncertainty';
    const { readings, unit } = fields(fn, input);
    const dimension = dimensionOfUnit(fn, unit);
    const values = readReadings(fn, readings, 2, dimension, unit);
    const mean = meanOf(values);
    const ofMean = deviationOf(values, mean) / Math.sqrt(values.length);
    return {
      ...answer(fn, mean, unit),
      standardUncertainty: answer(fn, ofMean, stepUnitOf(unit, dimension)),
      degreesOfFreedom: values.length - 1,
    };
  },
);
