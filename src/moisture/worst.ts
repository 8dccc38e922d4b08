/** The worst reading of a floor against its limit. An average says nothing: the floor fails where it is wettest. */
import { judge, type Assessment, type Verdict } from '../core/assessment.ts';
import type { Basis, Caution, CautionCode, Cited } from '../core/caution.ts';
import type { Quantity } from '../core/quantity.ts';

/** A test of the floor, in base units. */
export interface Reading {
  /** What was read. */
  readonly value: number;
  /** How low and how high the true value may be by the instruments. */
  readonly low: number;
  readonly high: number;
  /** Why this test is not one by the book; empty where it is. */
  readonly doubts: readonly CautionCode[];
  /** Whether what is wrong with it can only have made it read low, so that a reading over the limit stands. */
  readonly readsLow?: boolean | undefined;
}

/** What the readings say together. */
interface Worst {
  readonly verdict: Verdict;
  /** Place of the reading that governs. */
  readonly governing: number;
  /** Half the width in which the governing value lies, on the side of the limit. */
  readonly uncertainty: number;
  /** Tests by the book. */
  readonly usable: number;
  /** Place of the highest reading not by the book that is not clearly within the limit and decides nothing. */
  readonly doubtful?: number | undefined;
  /** What leaves it undecided; empty where it is decided. */
  readonly reasons: readonly string[];
}

/** An assessment of several tests, of which the worst one governs. */
export interface WorstAssessment<U extends string = string> extends Assessment<U> {
  /** Place of the governing test in the list. */
  readonly governing: number;
  /** Tests that count: done by the book. */
  readonly usable: number;
  /** Tests that a floor of this size asks for; nothing where the method has no such rule. */
  readonly testsNeeded?: number | undefined;
}

/**
 * Judges every reading. One over the limit fails the floor. It meets only by enough tests by the book, all of them
 * clearly within the limit; a doubtful test is set aside where it is within the limit too.
 */
export function judgeWorst(
  readings: readonly Reading[],
  limit: number,
  scale: number,
  needed: number,
): Worst {
  const higher = (best: number | undefined, place: number) =>
    best === undefined || (readings[place] as Reading).value > (readings[best] as Reading).value
      ? place
      : best;
  let failing: number | undefined;
  let byTheBook: number | undefined;
  let doubtful: number | undefined;
  let any: number | undefined;
  let usable = 0;
  let near = false;
  for (const [place, reading] of readings.entries()) {
    const verdict = judge(limit - reading.value, uncertaintyOf(reading, limit), scale);
    const counts = reading.doubts.length === 0;
    const fails = verdict === 'fails' && (counts || reading.readsLow === true);
    any = higher(any, place);
    if (fails) failing = higher(failing, place);
    if (counts) byTheBook = higher(byTheBook, place);
    if (counts) usable++;
    else if (verdict !== 'meets' && !fails) doubtful = higher(doubtful, place);
    near ||= counts && verdict === 'undecided';
  }
  const governing = failing ?? byTheBook ?? any ?? 0;
  const open = [
    ...(near ? ['a reading too close to the limit'] : []),
    ...(doubtful === undefined ? [] : ['a test not done by the book']),
    ...(usable < needed ? ['too few tests'] : []),
  ];
  const reasons = failing === undefined ? open : [];
  return {
    verdict: failing !== undefined ? 'fails' : reasons.length === 0 ? 'meets' : 'undecided',
    reasons,
    governing,
    uncertainty: uncertaintyOf(readings[governing] as Reading, limit),
    usable,
    ...(doubtful !== undefined && { doubtful }),
  };
}

/** Half the width in which a reading lies, on the side of the limit. */
function uncertaintyOf({ value, low, high }: Reading, limit: number): number {
  return limit < value ? value - low : high - value;
}

/** What a check of this folder adds to a verdict. */
export interface WorstWords<U extends string> {
  readonly worst: Worst;
  readonly readings: readonly Reading[];
  readonly testsNeeded?: number | undefined;
  readonly limit: Quantity<U>;
  /** A figure in base units as the answer gives it. */
  readonly answer: (value: number) => Quantity<U>;
  /** The limit in base units. */
  readonly base: number;
  /** Cautions of the method itself. */
  readonly always: readonly Caution[];
  readonly basis: readonly Basis[];
  /** The method in the register of sources. */
  readonly method: Cited;
}

/** The assessment with its cautions. */
export function worstAssessment<U extends string>(words: WorstWords<U>): WorstAssessment<U> {
  const { worst, readings, testsNeeded, limit, answer, base, method } = words;
  const { verdict, governing, usable, doubtful } = worst;
  const valueAt = (place: number) => (readings[place] as Reading).value;
  const measured = answer(valueAt(governing));
  const uncertainty = answer(worst.uncertainty);
  const params = { measured, limit, uncertainty, test: governing + 1 };
  const about = (code: CautionCode, severity: Caution['severity'], more?: Caution['params']): Caution => ({
    code,
    severity,
    params: Object.assign({}, params, more),
    ...method,
  });
  const plain = (code: CautionCode, more: Caution['params']): Caution => ({
    code,
    severity: 'caution',
    params: more,
    ...method,
  });
  const raised = new Set<CautionCode>();
  for (const reading of readings) for (const code of reading.doubts) raised.add(code);
  const doubts = [...raised].map((code) => {
    const places = readings.flatMap((reading, place) => (reading.doubts.includes(code) ? [place + 1] : []));
    return plain(code, { tests: places.length, places: places.join(', ') });
  });
  return {
    verdict,
    measured,
    limit,
    gap: answer(base - valueAt(governing)),
    governing,
    usable,
    cautions: [
      ...(verdict === 'fails' ? [about('moisture-over-limit', 'caution')] : []),
      ...(verdict === 'undecided'
        ? [about('moisture-undecided', 'caution', { reason: worst.reasons.join(' and ') })]
        : []),
      ...(testsNeeded !== undefined && usable < testsNeeded
        ? [about('too-few-tests', 'caution', { testsNeeded, usable })]
        : []),
      ...(doubtful === undefined
        ? []
        : [plain('doubtful-reading', { measured: answer(valueAt(doubtful)), limit, test: doubtful + 1 })]),
      ...doubts,
      about('worst-test-governs', 'note'),
      ...words.always,
    ],
    basis: words.basis,
    ...(worst.uncertainty > 0 && { uncertainty }),
    ...(testsNeeded !== undefined && { testsNeeded }),
  };
}

/** Notes that go with every moisture test of a floor. */
export function testNotes(method: Cited): Caution[] {
  return [
    { code: 'service-climate', severity: 'note', params: {}, source: 'astm-f1869' },
    { code: 'methods-not-converted', severity: 'note', params: {}, ...method },
  ];
}
