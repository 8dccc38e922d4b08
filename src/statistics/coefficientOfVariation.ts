import type { SameKind } from '../core/dimensionOf.ts';
import { SHARE, TEMPERATURE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import type { ScalableUnit } from '../units/scale.ts';
import { deviationOf, meanOf, readKind, readReadings } from './readings.ts';

/** Input of {@link coefficientOfVariation}. */
export interface CoefficientOfVariationInput<
  K extends ScalableUnit = ScalableUnit,
  U extends ShareUnit = ShareUnit,
> {
  /** Two readings or more, of a kind whose zero means none of it: no temperatures. */
  readonly readings: readonly Quantity<SameKind<K>>[];
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How widely readings scatter, as a part of their mean.
 *
 * @formula
 * ```math
 * v = \frac{s}{\left|\bar{x}\right|}
 * ```
 * @units any kind but a temperature; answers share.
 * @validRange two readings or more, their mean not 0.
 * @monotone readings none
 * @accuracy As `sampleStandardDeviation`. No published figure: it is the quotient of two that have one.
 * @source nist-strd
 * @param input - The readings and the unit wanted.
 * @returns The coefficient of variation in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const readings = [9, 11, 13].map((value) => ({ value, unit: 'mil' }) as const);
 * statistics.coefficientOfVariation({ readings, unit: '%' }).value.toFixed(2); // => '18.18'
 * ```
 */
export const coefficientOfVariation = /* @__PURE__ */ monotone(
  { readings: 'none' },
  <K extends ScalableUnit, U extends ShareUnit>(input: CoefficientOfVariationInput<K, U>): Quantity<U> => {
    const fn = 'coefficientOfVariation';
    const { readings, unit } = fields(fn, input);
    const { dimension, unit: own } = readKind(fn, readings);
    if (dimension.kind === TEMPERATURE.kind) {
      refuse(fn, 'wrong-unit', ['readings', 0], 'of any kind but a temperature', readings[0]);
    }
    const values = readReadings(fn, readings, 2, dimension, own);
    const mean = meanOf(values);
    if (mean === 0) refuse(fn, 'out-of-range', ['readings'], 'with a mean that is not 0', 'a mean of 0');
    return write(fn, deviationOf(values, mean) / Math.abs(mean), SHARE, unit);
  },
);
