import { judge, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import type { Area } from '../core/quantity.ts';
import { fields, refuse } from '../core/read.ts';
import { readList, readNumber } from '../core/readPlain.ts';
import {
  halfWidthOf,
  readCoverage,
  readErrorBy,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { PH, readPhError } from './ph.ts';
import { testsFor } from './count.ts';

/** Input of {@link alkalinityTest}. The pH is a scale without unit. */
export interface AlkalinityTestInput extends Confidence {
  /** Area of the floor that the readings stand for. */
  readonly floorArea: Area;
  /** All readings of pH, on lightly ground and cleaned concrete. */
  readonly readings: readonly number[];
  /** Lowest pH that the instructions of the system allow, where they name one. */
  readonly least?: number | undefined;
  /** Highest pH that the instructions of the system allow. */
  readonly most: number;
  /** What a reading may be off by. */
  readonly readingError?: ReadingError<number> | undefined;
}

/** The pH of a floor against the limits of the system. */
export interface AlkalinityResult {
  /** What can be said. */
  readonly verdict: Verdict;
  /** The reading that is closest to its limit, or furthest beyond it. */
  readonly measured: number;
  /** The limit that it was judged against. */
  readonly limit: number;
  /** Room to the limit; below 0 beyond it. */
  readonly gap: number;
  /** Half the width in which the true value lies, where the error was given. */
  readonly uncertainty?: number | undefined;
  /** Place of that reading in the list. */
  readonly governing: number;
  /** Readings that a floor of this size asks for. */
  readonly testsNeeded: number;
  /** What belongs with the verdict; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Whether the pH of the concrete surface is within what the system allows.
 *
 * A reading is never corrected for the water that it was taken in: twenty times the water moved it by 0.15 in a
 * published comparison, not by 1.3 as a logarithm would have it.
 *
 * @formula
 * ```math
 * pH_{least} \le pH_i \le pH_{most} \;\; \forall\, i
 * ```
 * @units area, pH without unit; answers pH without unit.
 * @validRange floorArea above 0 and up to 1e9 m²; pH from 0 to 14; least no more than most.
 * @accuracy Exact. A reading exactly on a limit meets it.
 * @source astm-d4262, aci-364-17t-18, astm-f3441-23
 * @param input - Floor, readings and limits.
 * @returns The verdict with the governing reading.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const floor = moisture.alkalinityTest({
 *   floorArea: { value: 480, unit: 'ft2' },
 *   readings: [9.2, 10.4],
 *   most: 10,
 * });
 * [floor.verdict, floor.measured]; // => ['fails', 10.4]
 * ```
 */
export function alkalinityTest(input: AlkalinityTestInput): AlkalinityResult {
  const fn = 'alkalinityTest';
  const { floorArea, readings, least, most, readingError } = fields(fn, input);
  const testsNeeded = testsFor(fn, 'alkalinity', floorArea);
  const upper = readNumber(fn, 'most', most, PH);
  const lower = least === undefined ? undefined : readNumber(fn, 'least', least, PH);
  if (lower !== undefined && lower > upper) refuse(fn, 'conflict', ['least'], 'at or below most', least);
  const coverage = readCoverage(fn, input);
  const error = halfWidthOf(
    readErrorBy(fn, 'readingError', readingError, coverage, readPhError(fn)),
    coverage,
  );

  const judged = readList(fn, 'readings', readings, 1).map((reading, governing) => {
    const measured = readNumber(fn, governing, reading, PH, ['readings']);
    const below = { measured, governing, limit: upper, gap: upper - measured };
    const above = { measured, governing, limit: lower ?? 0, gap: measured - (lower ?? 0) };
    return lower !== undefined && above.gap < below.gap ? above : below;
  });
  const worst = judged.reduce((a, b) => (b.gap < a.gap ? b : a));
  const byReading = judge(worst.gap, error, 14);
  const verdict = byReading === 'meets' && judged.length < testsNeeded ? 'undecided' : byReading;
  const about = (code: CautionCode, severity: Caution['severity'], source: string): Caution => ({
    code,
    severity,
    params: { measured: worst.measured, limit: worst.limit, usable: judged.length, testsNeeded },
    source,
  });
  return {
    verdict,
    ...worst,
    ...(error > 0 && { uncertainty: error }),
    testsNeeded,
    cautions: [
      ...(byReading === 'meets' ? [] : [about('alkalinity-not-within-limit', 'caution', 'astm-d4262')]),
      ...(judged.length < testsNeeded ? [about('too-few-tests', 'caution', 'astm-d4262')] : []),
      about('alkalinity-not-corrected', 'note', 'aci-364-17t-18'),
    ],
    basis: [
      basis('measured', `moisture.${fn}`, 'reading with the least room to its limit', 'astm-d4262', {
        readings,
        floorArea,
        least,
        most,
        readingError,
      }),
      ...uncertaintyBasis(`moisture.${fn}`, { readingError }, input),
    ],
  };
}
