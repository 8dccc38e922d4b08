import type { Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Caution } from '../core/caution.ts';
import { SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE, POSITIVE, type Limits } from '../core/limits.ts';
import type { Share, Volume } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readNames, readObjects } from '../core/readPlain.ts';
import type { ShareUnit, VolumeUnit } from '../core/unitCodes.ts';
import {
  readCoverage,
  readError,
  uncertaintyBasis,
  type BaseError,
  type Confidence,
  type Coverage,
  type ReadingError,
} from '../statistics/readingError.ts';
import { readVolumeParts, type PartVolume, type VolumePart } from './parts.ts';
import { decisive, judgeOff, ratioOff } from './ratioOff.ts';

/** What was used of one part. */
export interface UsedVolume<U extends VolumeUnit = VolumeUnit> extends PartVolume<U> {
  /** How far the reading may be off, either way. Taken as exact where not given. */
  readonly readingError?: ReadingError<Volume> | undefined;
}

/** Input of {@link checkRatio}. */
export interface CheckRatioInput<U extends ShareUnit = ShareUnit> extends Confidence {
  /** What was used of each part. */
  readonly used: readonly UsedVolume[];
  /** The ratio by volume; two parts or more. */
  readonly parts: readonly VolumePart[];
  /** How far a part may be off against the first, from the instructions. */
  readonly ratioTolerance: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/** A ratio judged, with the part that decides. */
export interface RatioAssessment<U extends ShareUnit = ShareUnit> extends Assessment<U> {
  /**
   * The part that decides: of the worst verdict, and furthest off against the first. `measured` is of it, below 0 where
   * it is short.
   */
  readonly part: string;
}

/**
 * Whether the parts that were used were in ratio, as far as their readings can tell.
 *
 * @formula
 * ```math
 * \delta_i = \frac{V_i / V_1}{r_i / r_1} - 1
 * ```
 * @units volumes, share, numbers of parts; answers shares.
 * @validRange volumes and tolerance above 0; reading errors 0 or more, that of the first part below its volume; two
 * parts or more.
 * @accuracy Exact up to round-off; the uncertainty is that of both readings wrong against each other, or with
 * `confidence` that of independent readings by the GUM.
 * No published figure: it is the definition of a ratio.
 * @source definition
 * @param input - What was used, ratio, tolerance and the unit wanted.
 * @returns The verdict over all parts with the part that decides, and its uncertainty.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const check = mix.checkRatio({
 *   used: [
 *     { name: 'A', volume: { value: 21, unit: 'l' } },
 *     { name: 'B', volume: { value: 10, unit: 'l' } },
 *   ],
 *   parts: [{ name: 'A', parts: 2 }, { name: 'B', parts: 1 }],
 *   ratioTolerance: { value: 3, unit: '%' },
 *   unit: '%',
 * });
 * [check.verdict, check.part, check.measured.value.toFixed(1)]; // => ['fails', 'B', '-4.8']
 * ```
 */
export function checkRatio<U extends ShareUnit>(input: CheckRatioInput<U>): RatioAssessment<U> {
  const fn = 'checkRatio';
  const { used, parts, ratioTolerance, unit } = fields(fn, input);
  const ratio = readVolumeParts(fn, parts);
  const coverage = readCoverage(fn, input);
  const amounts = readUsed(fn, ratio.names, used, POSITIVE, coverage);
  const tolerance = read(fn, 'ratioTolerance', ratioTolerance, SHARE, PART_OR_WHOLE);
  const [first, ...others] = amounts.map(({ volume_m3, error_m3 }, i) => ({
    part: ratio.names[i] ?? '',
    amount: volume_m3,
    error: error_m3,
    weight: ratio.weights[i]?.toNumber() ?? 1,
  }));
  if (!first || others.length === 0) return refuse(fn, 'out-of-range', ['parts'], 'two parts or more', parts);
  if (first.error.bound >= first.amount * (1 - 1e-12)) {
    refuse(fn, 'conflict', ['used'], `a reading of ${first.part} larger than its error`, used);
  }
  const worst = decisive(
    others.map((other) => {
      const off = ratioOff(other, first, coverage);
      return { part: other.part, ...off, verdict: judgeOff(off, tolerance) };
    }),
  );
  const gap = tolerance - Math.abs(worst.off);
  const { verdict } = worst;
  const share = (value: number) => write(fn, value, SHARE, unit);
  const percent = (value: number) => write(fn, value, SHARE, '%');
  const caution: Caution = {
    code: verdict === 'fails' ? 'mix-off-ratio' : 'mix-ratio-undecided',
    severity: verdict === 'fails' ? 'danger' : 'caution',
    params: {
      part: worst.part,
      off: percent(worst.off),
      tolerance: percent(tolerance),
      uncertainty: percent(worst.uncertainty),
    },
    source: 'common-practice',
  };
  return {
    verdict,
    part: worst.part,
    measured: share(worst.off),
    limit: share(tolerance),
    gap: share(gap),
    uncertainty: share(worst.uncertainty),
    cautions: verdict === 'meets' ? [] : [caution],
    basis: [
      basis('measured', 'mix.checkRatio', '(used / first used) / (parts / first parts) − 1', 'definition', {
        used: used.map(({ name, volume, readingError }) => ({ name, volume, readingError })),
        parts: ratio.given,
        ratioTolerance,
      }),
      ...uncertaintyBasis(
        'mix.checkRatio',
        Object.fromEntries(used.map(({ name, readingError }) => [name, readingError])),
        input,
      ),
    ],
  };
}

/** Reads what was used of each part, in the order of the ratio. */
export function readUsed(
  fn: string,
  names: readonly string[],
  used: readonly UsedVolume[],
  limits: Limits,
  coverage: Coverage | undefined,
): readonly { readonly volume_m3: number; readonly error_m3: BaseError }[] {
  const list = readObjects(fn, 'used', used, 1);
  const usedNames = readNames(fn, list, ['used']);
  const readings = list.map(({ volume, readingError }, i) => ({
    volume_m3: read(fn, 'volume', volume, VOLUME, limits, ['used', i]),
    error_m3: readError(fn, 'readingError', readingError, coverage, VOLUME, NOT_NEGATIVE, ['used', i]),
  }));
  return names.map((name) => {
    const reading = readings[usedNames.indexOf(name)];
    return reading ?? refuse(fn, 'missing', ['used'], `a list with ${name} in it`, used);
  });
}
