import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readNames, readObjects } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { halfWidthOf, readCoverage, uncertaintyBasis, type Confidence } from '../statistics/readingError.ts';
import { readUsed, type UsedVolume } from './checkRatio.ts';
import { readVolumeParts, type PartVolume, type VolumePart } from './parts.ts';

/** Input of {@link reconcile}. */
export interface ReconcileInput<U extends VolumeUnit = VolumeUnit> extends Confidence {
  /** The ratio by volume. */
  readonly parts: readonly VolumePart[];
  /** The batches as they were logged, by number or place, and what was to be mixed for each. */
  readonly batches: readonly PartVolume[];
  /** What the cans say was used of each part: bought less left. */
  readonly used: readonly UsedVolume[];
  /** Unit of the answer. */
  readonly unit: U;
}

/** What may have gone wrong in one batch. */
export interface Suspicion {
  /** The batch. */
  readonly batch: string;
  /** What may have happened: a part left out, poured twice, or the two parts of the ratio changed round. */
  readonly mistake: 'left out' | 'poured twice' | 'turned round';
  /** The part left out or poured twice; not there where the ratio was turned round. */
  readonly part?: string | undefined;
}

/** Used against logged, for one part. */
export interface PartDifference<U extends VolumeUnit = VolumeUnit> {
  /** Name of the part. */
  readonly name: string;
  /** What the batches should have taken. */
  readonly expected: Quantity<U>;
  /** Used less expected; below 0 where less was used. */
  readonly difference: Quantity<U>;
  /** Whether the difference is more than the reading can be off. */
  readonly beyondReading: boolean;
}

/** Answer of {@link reconcile}. */
export interface Reconciliation<U extends VolumeUnit = VolumeUnit> {
  /** Whether every part agrees with the log within its reading. */
  readonly agrees: boolean;
  /** Each part. */
  readonly parts: readonly PartDifference<U>[];
  /** Single mistakes that would explain the differences within the readings; none where none does. */
  readonly suspicions: readonly Suspicion[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Compares what the cans lost with what the batches should have taken, and names the batches that could explain it.
 *
 * @formula
 * ```math
 * \Delta_i = V_i - \frac{r_i}{\sum_j r_j} \sum_b V_b
 * ```
 * @units volumes, numbers of parts; answers volumes.
 * @validRange batches above 0; used and reading errors 0 or more; every part of the ratio under the same name.
 * @accuracy Exact up to round-off; as good as the readings. One mistake is looked for, not several at once.
 * No published figure: it is book-keeping.
 * @source common-practice
 * @param input - Ratio, batches, what was used and the unit wanted.
 * @returns The difference of each part, what could explain it, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const error = { value: 0.1, unit: 'usgal' } as const;
 * const answer = mix.reconcile({
 *   parts: [{ name: 'A', parts: 2 }, { name: 'B', parts: 1 }],
 *   batches: [
 *     { name: '1', volume: { value: 3, unit: 'usgal' } },
 *     { name: '2', volume: { value: 1.5, unit: 'usgal' } },
 *   ],
 *   used: [
 *     { name: 'A', volume: { value: 3, unit: 'usgal' }, readingError: error },
 *     { name: 'B', volume: { value: 1, unit: 'usgal' }, readingError: error },
 *   ],
 *   unit: 'usgal',
 * });
 * answer.suspicions; // => [{ batch: '2', mistake: 'left out', part: 'B' }]
 * ```
 */
export function reconcile<U extends VolumeUnit>(input: ReconcileInput<U>): Reconciliation<U> {
  const fn = 'reconcile';
  const { parts, batches, used, unit } = fields(fn, input);
  const ratio = readVolumeParts(fn, parts);
  const list = readObjects(fn, 'batches', batches, 1);
  const batchNames = readNames(fn, list, ['batches']);
  const sizes_m3 = list.map(({ volume }, i) => read(fn, 'volume', volume, VOLUME, POSITIVE, ['batches', i]));
  const coverage = readCoverage(fn, input);
  const readings = readUsed(fn, ratio.names, used, NOT_NEGATIVE, coverage);
  const errors_m3 = readings.map(({ error_m3 }) => halfWidthOf(error_m3, coverage));

  const weights = ratio.weights.map((weight) => weight.toNumber());
  const sum = weights.reduce((all, weight) => all + weight);
  const shares = weights.map((weight) => weight / sum);
  const logged_m3 = sizes_m3.reduce((all, size) => all + size);
  const differences_m3 = readings.map(({ volume_m3 }, i) => volume_m3 - (shares[i] ?? 0) * logged_m3);
  /** Whether the readings allow these differences. */
  const allowed = (predicted_m3: readonly number[]) =>
    differences_m3.every((difference_m3, i) => {
      const slack_m3 = (errors_m3[i] ?? 0) + 1e-9 * logged_m3;
      return Math.abs(difference_m3 - (predicted_m3[i] ?? 0)) <= slack_m3;
    });
  const agrees = allowed([]);
  const mistakes = agrees ? [] : mistakesOf(ratio.names, shares);
  const suspicions = batchNames.flatMap((batch, b) =>
    mistakes.flatMap(({ mistake, part, moves }): Suspicion[] =>
      allowed(moves.map((move) => move * (sizes_m3[b] ?? 0)))
        ? [{ batch, mistake, ...(part !== undefined && { part }) }]
        : [],
    ),
  );
  const volume = (m3: number) => write(fn, m3, VOLUME, unit);
  const answered = ratio.names.map((name, i) => {
    const difference_m3 = differences_m3[i] ?? 0;
    return {
      name,
      expected: volume((shares[i] ?? 0) * logged_m3),
      difference: volume(difference_m3),
      beyondReading: Math.abs(difference_m3) > (errors_m3[i] ?? 0) + 1e-9 * logged_m3,
    };
  });
  return {
    agrees,
    parts: answered,
    suspicions,
    cautions: answered.flatMap(({ name, difference, beyondReading }): Caution[] => {
      const params = { name, difference };
      return beyondReading
        ? [{ code: 'parts-used-off-ratio', severity: 'caution', params, source: 'common-practice' }]
        : [];
    }),
    basis: [
      basis('parts', 'mix.reconcile', 'used − share of the ratio · sum of batches', 'common-practice', {
        parts: ratio.given,
        batches: list.map(({ name, volume: size }) => ({ name, volume: size })),
        used: used.map(({ name, volume: amount, readingError }) => ({ name, volume: amount, readingError })),
      }),
      ...uncertaintyBasis(
        'mix.reconcile',
        Object.fromEntries(used.map(({ name, readingError }) => [name, readingError])),
        input,
      ),
    ],
  };
}

/** Every single mistake in a batch, and by which share of the batch it moves the use of each part. */
function mistakesOf(names: readonly string[], shares: readonly number[]) {
  const only = (i: number, share: number) => shares.map((_, k) => (k === i ? share : 0));
  const ofOnePart = names.flatMap((part, i) => [
    { mistake: 'left out' as const, part, moves: only(i, -(shares[i] ?? 0)) },
    { mistake: 'poured twice' as const, part, moves: only(i, shares[i] ?? 0) },
  ]);
  const [first = 0, second = 0] = shares;
  const turned = {
    mistake: 'turned round' as const,
    part: undefined,
    moves: [second - first, first - second],
  };
  return shares.length === 2 ? [...ofOnePart, turned] : ofOnePart;
}
