import type { Decimal } from 'decimal.js';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { counted, countedSteps } from '../core/decimal.ts';
import { SHARE, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity, Volume } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { readVolumeParts, type PartVolume, type VolumePart } from './parts.ts';

/** Input of {@link graduatedBatch}. */
export interface GraduatedBatchInput<U extends VolumeUnit = VolumeUnit> {
  /** The ratio by volume. */
  readonly parts: readonly VolumePart[];
  /** Step between two lines of the cup in hand. */
  readonly graduation: Volume;
  /** The largest batch: by pot life, by the cup. */
  readonly largest: Volume;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link graduatedBatch}. */
export interface GraduatedBatch<U extends VolumeUnit = VolumeUnit> {
  /** The smallest batch whose parts all fall on lines exactly; every multiple of it does as well. */
  readonly smallest: Quantity<U>;
  /** The batch to mix: the largest multiple, or the batch nearest to the ratio where even the smallest is too large. */
  readonly batch: Quantity<U>;
  /** Its parts, each on a line. */
  readonly parts: readonly PartVolume<U>[];
  /** How far the part that is furthest off comes out against the first; 0 where all fall on lines. */
  readonly off: Quantity<'%'>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** More lines than any cup has. */
const MOST_LINES = 100_000;

/**
 * The batch whose parts can be poured to lines of the cup in hand, so that nobody has to guess between two of them.
 *
 * @formula
 * ```math
 * V_0 = g \sum_i \frac{r_i}{\gcd(r_1, \dots, r_n)}
 * ```
 * @units volumes, numbers of parts; answers volumes and a share.
 * @validRange all above 0; largest holds a line of each part; at most 100,000 lines.
 * @accuracy In decimals, exact. No published figure: it is the least common measure of the ratio.
 * @source definition
 * @param input - Ratio, graduation, largest batch and the unit wanted.
 * @returns The smallest such batch, the one to mix with its parts in `input.unit`, and how far it is off ratio.
 * @throws An `InputError` that names the field; `conflict` where the largest batch has no line for every part.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.graduatedBatch({
 *   parts: [{ name: 'A', parts: 2.5 }, { name: 'B', parts: 1 }],
 *   graduation: { value: 1, unit: 'usfloz' },
 *   largest: { value: 24, unit: 'usfloz' },
 *   unit: 'usfloz',
 * });
 * [answer.smallest.value, answer.batch.value, answer.parts.map(({ volume }) => volume.value)]; // => [7, 21, [15, 6]]
 * ```
 */
export function graduatedBatch<U extends VolumeUnit>(input: GraduatedBatchInput<U>): GraduatedBatch<U> {
  const fn = 'graduatedBatch';
  const { parts, graduation, largest, unit } = fields(fn, input);
  const ratio = readVolumeParts(fn, parts);
  const inUnit = (key: string, volume: Volume): number =>
    write(fn, read(fn, key, volume, VOLUME, POSITIVE), VOLUME, unit).value;
  const step = inUnit('graduation', graduation);
  const line = counted(step);
  const lines = countedSteps(inUnit('largest', largest), step).floor();
  if (lines.gt(MOST_LINES)) {
    refuse(
      fn,
      'too-large',
      ['graduation'],
      `at least 1/${String(MOST_LINES)} of the largest batch`,
      graduation,
    );
  }
  if (lines.lt(ratio.weights.length)) {
    refuse(fn, 'conflict', ['largest'], 'a line for every part or more', largest);
  }
  const measure = ratio.weights.reduce(commonMeasure);
  const whole = ratio.weights.map((weight) => weight.div(measure));
  const wholeSum = whole.reduce((a, b) => a.plus(b));
  const times = lines.div(wholeSum).floor();
  const exact = times.gte(1) ? whole.map((one) => one.times(times).toNumber()) : undefined;
  const poured = exact ?? nearestLines(ratio.weights, lines.toNumber());
  const off = offRatio(poured, ratio.weights);
  const volumeOf = (count: Decimal.Value): Quantity<U> => ({ value: line.times(count).toNumber(), unit });
  const percent = write(fn, off, SHARE, '%');
  const params = { graduation: volumeOf(1), largest: volumeOf(lines), off: percent };
  return {
    smallest: volumeOf(wholeSum),
    batch: volumeOf(poured.reduce((a, b) => a + b)),
    parts: ratio.names.map((name, i) => ({ name, volume: volumeOf(poured[i] ?? 0) })),
    off: percent,
    cautions: exact
      ? []
      : [{ code: 'off-graduations', severity: 'caution', params, source: 'common-practice' }],
    basis: [
      basis(
        'batch',
        'mix.graduatedBatch',
        'graduation · whole numbers in the ratio of the parts',
        'definition',
        {
          parts: ratio.given,
          graduation,
          largest,
        },
      ),
    ],
  };
}

/** The largest number of which both are whole multiples. */
function commonMeasure(a: Decimal, b: Decimal): Decimal {
  return b.isZero() ? a : commonMeasure(b, a.mod(b));
}

/** How far the part that is furthest off comes out against the first; of equally far ones the first in pouring order. */
function offRatio(poured: readonly number[], weights: readonly Decimal[]): number {
  const sets = poured.map((lines, i) => lines / (weights[i]?.toNumber() ?? 1));
  const [first = 1] = sets;
  return sets.map((set) => set / first - 1).reduce((a, b) => (further(b, a) ? b : a));
}

/** Whether one ratio is further off than another, by more than round-off. */
function further(off: number, other: number): boolean {
  return Math.abs(off) > Math.abs(other) * (1 + 1e-12);
}

/** Lines for each part, no more than so many in all, that come nearest to the ratio; of equally near ones the largest. */
function nearestLines(weights: readonly Decimal[], most: number): readonly number[] {
  const ratios = weights.map((weight) => weight.div(weights[0] ?? 1).toNumber());
  let best = weights.map(() => 1);
  for (let first = 1; first <= most; first++) {
    const poured = ratios.map((ratio) => Math.max(1, Math.round(ratio * first)));
    if (poured.reduce((a, b) => a + b) > most) continue;
    if (!further(offRatio(poured, weights), offRatio(best, weights))) best = poured;
  }
  return best;
}
