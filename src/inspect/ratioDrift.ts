import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import type { Mass, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readNames, readObjects } from '../core/readPlain.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { readVolumeParts, readWeightParts, type VolumePart, type WeightPart } from '../mix/parts.ts';
import { decisive, judgeOff, ratioOff, type BaseUse, type RatioOff } from '../mix/ratioOff.ts';
import { lineThrough } from '../statistics/lineThrough.ts';
import {
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type Coverage,
  type ReadingError,
} from '../statistics/readingError.ts';
import { total } from '../units/total.ts';

/** How much of one part went into a batch. */
export interface LoggedPart {
  /** Name of the part. */
  readonly name: string;
  /** By volume where the ratio is by volume, by mass where it is by weight. */
  readonly amount: Volume | Mass;
  /** What the reading may be off by. Taken as exact where not given. */
  readonly readingError?: ReadingError<Volume | Mass> | undefined;
}

/** A batch as it was logged. */
export interface LoggedBatch {
  /** Its number. */
  readonly name: string;
  /** Every part of it. */
  readonly amounts: readonly LoggedPart[];
}

/** Input of {@link ratioDrift}. */
export interface RatioDriftInput<U extends ShareUnit = ShareUnit> extends Confidence {
  /** The ratio by volume, or by weight; two parts or more. */
  readonly parts: readonly VolumePart[] | readonly WeightPart[];
  /** The batches in the order in which they were mixed. */
  readonly batches: readonly LoggedBatch[];
  /** How far a part may be off against the first, from the instructions. */
  readonly ratioTolerance: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/** One batch, by the part that decides: of the worst verdict, and furthest off. */
export interface BatchFinding<U extends ShareUnit = ShareUnit> {
  /** The batch. */
  readonly name: string;
  /** Whether it is within the tolerance. */
  readonly verdict: Verdict;
  /** That part; all against the first. */
  readonly part: string;
  /** How far; below 0 where it is short. */
  readonly off: Quantity<U>;
  /** How far that may be wrong by the readings. */
  readonly uncertainty: Quantity<U>;
}

/** How the ratio of one part moves over the batches. */
export interface PartTrend<U extends ShareUnit = ShareUnit> {
  /** The part; all against the first. */
  readonly part: string;
  /** The batch in which it was furthest off. */
  readonly worst: string;
  /** How far it was off there. */
  readonly off: Quantity<U>;
  /** How much further it goes off with each batch, by a straight line through all of them. */
  readonly perBatch: Quantity<U>;
  /** From the first batch to the last by that line. */
  readonly overLog: Quantity<U>;
  /** Whether what the readings may be off by could not make that line; with `confidence` nor how the batches scatter about it. */
  readonly drifts: boolean;
}

/** What a log of batches says of their ratio. */
export interface RatioDrift<U extends ShareUnit = ShareUnit> {
  /** The worst of the batches. */
  readonly verdict: Verdict;
  /** The batch that decides: of the worst verdict, and furthest off. */
  readonly worst: string;
  /** Every batch. */
  readonly batches: readonly BatchFinding<U>[];
  /** Every part but the first. */
  readonly trends: readonly PartTrend<U>[];
  /** Batches outside the tolerance, to be looked for on the floor. */
  readonly suspects: readonly string[];
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Whether the ratio of the parts wanders over the batches of a day, and which batch was furthest off.
 *
 * Each batch may be within its tolerance and the log still show a pump that wears or a mark that slips: the line through
 * all batches tells, as far as the readings can. With `confidence` the line must also stand out of the scatter of the
 * batches about it: batches that only go up and down make a line as well.
 *
 * @formula
 * ```math
 * \delta_b = \frac{V_b / V_{1,b}}{r / r_1} - 1 \qquad
 * m = \frac{\sum (b - \bar b)\,\delta_b}{\sum (b - \bar b)^2}
 * ```
 * @units volumes or masses, share, numbers of parts; answers shares.
 * @validRange amounts above 0, reading errors of the first part below its amount; two parts or more; one batch has no trend.
 * @accuracy Exact up to round-off; the uncertainty is that of both readings wrong against each other, or with
 * `confidence` that of independent readings by the GUM. No published figure: it is the definition of a ratio and a
 * straight line through it.
 * @source definition, common-practice, jcgm-100-2008
 * @param input - Ratio, batches, tolerance and the unit wanted.
 * @returns Every batch with its verdict, the trend of each part, and the batches to look for.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const batch = (name: string, a: number, b: number) => ({
 *   name,
 *   amounts: [
 *     { name: 'A', amount: { value: a, unit: 'kg' } as const },
 *     { name: 'B', amount: { value: b, unit: 'kg' } as const },
 *   ],
 * });
 * const log = inspect.ratioDrift({
 *   parts: [{ name: 'A', weightParts: 4 }, { name: 'B', weightParts: 1 }],
 *   batches: [batch('1', 8, 2), batch('2', 8, 1.98), batch('3', 8, 1.96), batch('4', 8, 1.9)],
 *   ratioTolerance: { value: 3, unit: '%' },
 *   unit: '%',
 * });
 * [log.worst, log.suspects, log.trends[0]?.perBatch.value.toFixed(1)]; // => ['4', ['4'], '-1.6']
 * ```
 */
export function ratioDrift<U extends ShareUnit>(input: RatioDriftInput<U>): RatioDrift<U> {
  const fn = 'ratioDrift';
  const { parts, batches, ratioTolerance, unit } = fields(fn, input);
  const list = readObjects<VolumePart | WeightPart>(fn, 'parts', parts, 2);
  const byWeight = 'weightParts' in (list[0] as object);
  const ratio = byWeight
    ? readWeightParts(fn, parts as readonly WeightPart[])
    : readVolumeParts(fn, parts as readonly VolumePart[]);
  const kind = byWeight ? MASS : VOLUME;
  const tolerance = read(fn, 'ratioTolerance', ratioTolerance, SHARE, PART_OR_WHOLE);
  const coverage = readCoverage(fn, input);
  const logged = readObjects(fn, 'batches', batches, 1);
  const names = readNames(fn, logged, ['batches']);
  const others = ratio.names.slice(1);

  /** Of each batch: every part but the first. */
  const offs = logged.map((batch, b): readonly RatioOff[] => {
    const [first, ...rest] = readUses(batch, b);
    if (!first || first.error.bound >= first.amount) {
      const got = batch.amounts;
      return refuse(fn, 'conflict', ['batches', b, 'amounts'], 'a first part larger than its error', got);
    }
    return rest.map((part) => ratioOff(part, first, coverage));
  });

  /** The parts of a batch in the order of the ratio. */
  function readUses(batch: LoggedBatch, b: number): readonly BaseUse[] {
    const path = ['batches', b, 'amounts'];
    const amounts = readObjects(fn, 'amounts', batch.amounts, 1, ['batches', b]);
    const given = readNames(fn, amounts, path);
    const uses = amounts.map(({ amount, readingError }, i) => ({
      amount: read<string>(fn, 'amount', amount, kind, POSITIVE, [...path, i]),
      error: readError<string>(fn, 'readingError', readingError, coverage, kind, NOT_NEGATIVE, [...path, i]),
    }));
    return ratio.names.map((name, i) => {
      const use = uses[given.indexOf(name)];
      const weight = ratio.weights[i]?.toNumber() ?? 1;
      return use
        ? { ...use, weight }
        : refuse(fn, 'missing', path, `a list with ${name} in it`, batch.amounts);
    });
  }

  const furthest = (some: readonly Pick<RatioOff, 'off'>[]) =>
    some.reduce((most, { off }, i) => (Math.abs(off) > Math.abs(some[most]?.off ?? 0) ? i : most), 0);
  const share = (value: number) => write(fn, value, SHARE, unit);
  const judged = offs.map((ofBatch, b) => {
    const { verdict, part, off, uncertainty } = decisive(
      ofBatch.map((one, i) => ({ ...one, verdict: judgeOff(one, tolerance), part: others[i] ?? '' })),
    );
    return { name: names[b] ?? '', verdict, part, off, uncertainty };
  });
  const trends = others.map((part, i) => {
    const ofPart = offs.map((ofBatch) => ofBatch[i] as RatioOff);
    const worst = furthest(ofPart);
    return { part, worst: names[worst] ?? '', off: ofPart[worst]?.off ?? 0, ...lineOf(ofPart, coverage) };
  });
  const worst = decisive(judged);
  const suspects = judged.filter(({ verdict }) => verdict === 'fails').map(({ name }) => name);
  const undecided = judged.filter(({ verdict }) => verdict === 'undecided').map(({ name }) => name);
  const about = (code: CautionCode, params: Caution['params']): Caution => ({
    code,
    severity: 'caution',
    params,
    source: 'common-practice',
  });
  return {
    verdict: worst.verdict,
    worst: worst.name,
    batches: judged.map(({ off, uncertainty, ...batch }) => ({
      ...batch,
      off: share(off),
      uncertainty: share(uncertainty),
    })),
    trends: trends.map(({ off, perBatch, drifts, ...trend }) => ({
      ...trend,
      off: share(off),
      perBatch: share(perBatch),
      overLog: share(perBatch * (offs.length - 1)),
      drifts,
    })),
    suspects,
    cautions: [
      ...(suspects.length > 0
        ? [
            about('batches-off-ratio', {
              names: suspects.join(', '),
              tolerance: write(fn, tolerance, SHARE, '%'),
            }),
          ]
        : []),
      ...(undecided.length > 0 ? [about('batches-undecided', { names: undecided.join(', ') })] : []),
      ...trends.flatMap(({ part, perBatch, drifts }) =>
        drifts ? [about('ratio-drifts', { part, perBatch: write(fn, perBatch, SHARE, '%') })] : [],
      ),
    ],
    basis: [
      basis('batches', `inspect.${fn}`, '(amount / first amount) / (parts / first parts) − 1', 'definition', {
        parts: ratio.given,
        batches: logged.length,
        ratioTolerance,
      }),
      ...uncertaintyBasis(
        `inspect.${fn}`,
        Object.fromEntries(
          logged.flatMap((batch) =>
            batch.amounts.map(({ name, readingError }) => [`${batch.name}, ${name}`, readingError]),
          ),
        ),
        input,
      ),
    ],
  };
}

/** The straight line through the batches, and whether neither readings nor scatter could make it by themselves. */
function lineOf(
  offs: readonly RatioOff[],
  coverage: Coverage | undefined,
): { readonly perBatch: number; readonly drifts: boolean } {
  const {
    middle,
    width,
    slope,
    off: scatter,
  } = lineThrough(
    offs.map((_, b) => b),
    offs.map(({ off }) => off),
  );
  if (width === 0) return { perBatch: 0, drifts: false };
  const pull = (b: number) => Math.abs(b - middle) / width;
  const byReadings =
    coverage?.expanded(
      ...offs.flatMap(({ errors }, b) =>
        errors.map(([sensitivity, error]) => [pull(b) * sensitivity, error] as const),
      ),
    ) ?? total(offs.map(({ uncertainty }, b) => pull(b) * uncertainty));
  // What the batches scatter about the line holds the errors of their readings already.
  const freedom = offs.length - 2;
  const uncertainty = freedom > 0 ? Math.sqrt(scatter / freedom / width) : 0;
  const byScatter = coverage?.expanded([1, { bound: 0, uncertainty, freedom }]) ?? 0;
  return { perBatch: slope, drifts: Math.abs(slope) > Math.max(byReadings, byScatter) + 1e-12 };
}
