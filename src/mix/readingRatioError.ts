import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import type { Mass, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import { readNames, readObjects } from '../core/readPlain.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { readingCaution } from './readingCaution.ts';

/** How much of one part, on a scale or in a cup. */
export interface PartAmount {
  /** Name of the part. */
  readonly name: string;
  /** How much of it; all parts by volume or all by mass. */
  readonly amount: Volume | Mass;
}

/** Input of {@link readingRatioError}. */
export interface ReadingRatioErrorInput<U extends ShareUnit = ShareUnit> {
  /** What is measured out, two parts or more. */
  readonly amounts: readonly PartAmount[];
  /** How far one reading of the scale or the cup may be off, either way. */
  readonly readingError: Volume | Mass;
  /** How far a part may be off against the first, from the instructions. Where not given, the caution says how far it is. */
  readonly ratioTolerance?: Share | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** How far one part may come out against the first. */
export interface PartOff<U extends ShareUnit = ShareUnit> {
  /** Name of the part. */
  readonly name: string;
  /** With too much of the first and too little of this one. */
  readonly low: Quantity<U>;
  /** With too little of the first and too much of this one. */
  readonly high: Quantity<U>;
}

/** Answer of {@link readingRatioError}. */
export interface ReadingRatioError<U extends ShareUnit = ShareUnit> {
  /** Every part but the first. */
  readonly off: readonly PartOff<U>[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * What the reading error of a scale or a cup does to the ratio of a batch.
 *
 * @formula
 * ```math
 * \delta_i = \frac{(m_i \mp e)/(m_1 \pm e)}{m_i / m_1} - 1
 * ```
 * @units volumes or masses, share; answers shares.
 * @validRange amounts above 0 and of one kind; readingError above 0 and below the least amount.
 * @accuracy Exact up to round-off, for both readings wrong against each other.
 * No published figure: it is the arithmetic of two readings.
 * @source definition, common-practice
 * @param input - Amounts, reading error and the unit wanted.
 * @returns How far each part may be off against the first in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.readingRatioError({
 *   amounts: [
 *     { name: 'A', amount: { value: 2000, unit: 'g' } },
 *     { name: 'B', amount: { value: 500, unit: 'g' } },
 *   ],
 *   readingError: { value: 5, unit: 'g' },
 *   unit: '%',
 * });
 * answer.off.map(({ low, high }) => [low.value.toFixed(2), high.value.toFixed(2)]); // => [['-1.25', '1.25']]
 * ```
 */
export function readingRatioError<U extends ShareUnit>(
  input: ReadingRatioErrorInput<U>,
): ReadingRatioError<U> {
  const fn = 'readingRatioError';
  const { amounts, readingError, ratioTolerance, unit } = fields(fn, input);
  const list = readObjects(fn, 'amounts', amounts, 2);
  const names = readNames(fn, list, ['amounts']);
  const { dimension } = readOneOf(fn, 'amount', list[0]?.amount, [VOLUME, MASS], POSITIVE, ['amounts', 0]);
  const bases = list.map(({ amount }, i) => read(fn, 'amount', amount, dimension, POSITIVE, ['amounts', i]));
  const error = read<string>(fn, 'readingError', readingError, dimension, POSITIVE);
  if (error >= Math.min(...bases) * (1 - 1e-12)) {
    refuse(fn, 'conflict', ['readingError'], 'below the least amount', readingError);
  }
  const tolerance = readOptional(fn, 'ratioTolerance', ratioTolerance, SHARE, PART);
  const [first = 1, ...others] = bases;
  const ends = others.map((other) => ({
    low: (1 - error / other) / (1 + error / first) - 1,
    high: (1 + error / other) / (1 - error / first) - 1,
  }));
  const share = (value: number) => write(fn, value, SHARE, unit);
  return {
    off: ends.map(({ low, high }, i) => ({ name: names[i + 1] ?? '', low: share(low), high: share(high) })),
    // The high end is always the worse of the two.
    cautions: ends.flatMap(({ high }, i) =>
      readingCaution(fn, names[i + 1] ?? '', readingError, { exact: 0, misread: high }, tolerance),
    ),
    basis: [
      basis('off', 'mix.readingRatioError', '((m − e)/(M + e)) / (m/M) − 1', 'definition', {
        amounts: list.map(({ name, amount }) => ({ name, amount })),
        readingError,
        ratioTolerance,
      }),
    ],
  };
}
