import { SHARE, VOLUME } from '../core/dimensions.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readVolumeParts, type VolumePart } from './parts.ts';

/** Input of {@link leastMeasurableBatch}. */
export interface LeastMeasurableBatchInput<U extends VolumeUnit = VolumeUnit> {
  /** The ratio by volume; two parts or more. */
  readonly parts: readonly VolumePart[];
  /** How far one reading of the cup or pail may be off, either way. */
  readonly readingError: Volume;
  /** How far a part may be off against the first, from the instructions. */
  readonly ratioTolerance: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The smallest batch that can still be measured in ratio: below it one misread line puts the mix out of tolerance.
 *
 * @formula
 * ```math
 * V = \frac{e}{\tau} \max_{i > 1} \left( \frac{1}{s_i} + \frac{1 + \tau}{s_1} \right)
 * ```
 * @units volume, share, numbers of parts; answers volume.
 * @validRange readingError above 0, ratioTolerance above 0 % and up to 100 %, two parts or more.
 * @monotone readingError +, ratioTolerance -
 * @accuracy Exact up to round-off, for both readings wrong against each other.
 * No published figure: instructions print the tolerance, cups their graduation.
 * @source definition
 * @param input - Ratio, reading error, tolerance and the unit wanted.
 * @returns The volume of the whole batch in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.leastMeasurableBatch({
 *   parts: [{ name: 'A', parts: 1 }, { name: 'B', parts: 1 }],
 *   readingError: { value: 5, unit: 'ml' },
 *   ratioTolerance: { value: 5, unit: '%' },
 *   unit: 'ml',
 * }).value.toFixed(0); // => '410'
 * ```
 */
export const leastMeasurableBatch = /* @__PURE__ */ monotone(
  { readingError: '+', ratioTolerance: '-' },
  <U extends VolumeUnit>(input: LeastMeasurableBatchInput<U>): Quantity<U> => {
    const { parts, readingError, ratioTolerance, unit } = fields('leastMeasurableBatch', input);
    const ratio = readVolumeParts('leastMeasurableBatch', parts);
    const error_m3 = read('leastMeasurableBatch', 'readingError', readingError, VOLUME, POSITIVE);
    const tolerance = read('leastMeasurableBatch', 'ratioTolerance', ratioTolerance, SHARE, PART_OR_WHOLE);
    const [first, ...others] = ratio.weights.map((weight) => weight.toNumber());
    if (first === undefined || others.length === 0) {
      return refuse('leastMeasurableBatch', 'out-of-range', ['parts'], 'two parts or more', parts);
    }
    const sum = others.reduce((all, other) => all + other, first);
    const scarce = sum / Math.min(...others) + ((1 + tolerance) * sum) / first;
    return write('leastMeasurableBatch', (error_m3 / tolerance) * scarce, VOLUME, unit);
  },
);
