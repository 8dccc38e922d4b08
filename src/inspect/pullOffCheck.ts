import { judge, worstOf, type Assessment, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Caution, CautionCode, Cited } from '../core/caution.ts';
import { FORCE, LENGTH, PRESSURE, SHARE } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { TEST_DUST } from '../core/hazards.ts';
import { PART, PART_OR_WHOLE, POSITIVE, type Limits } from '../core/limits.ts';
import type { Force, Length, Pressure, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOptional, readOr, refuse, write } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import { readChoice, readCount, readKey, readNames, readObject, readObjects } from '../core/readPlain.ts';
import type { PressureUnit } from '../core/unitCodes.ts';
import { meanOf } from '../statistics/readings.ts';
import { dollyArea } from './dollyArea.ts';
import { readFit, SUBSTRATES, type FilmSubstrate, type Fits } from './substrates.ts';
import { worstFinding } from './worstFinding.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** How the bond was tested. */
export type PullOffMethod = 'ASTM D7234' | 'ASTM D4541' | 'ISO 4624';

/** Which share of the face broke where; together 100 %. What is left out is nothing. */
export interface FailureShares {
  /** Within the substrate: in the concrete. */
  readonly substrate?: Share | undefined;
  /** Between substrate and coat, or between two coats. */
  readonly adhesive?: Share | undefined;
  /** Within a coat. */
  readonly cohesive?: Share | undefined;
  /** In the glue, or between it and the dolly or the coat. */
  readonly glue?: Share | undefined;
}

/** Where a face broke. */
export type FailureMode = keyof FailureShares;

/** One dolly. */
export interface PullOffTest {
  /** Where it stood. */
  readonly name: string;
  /** Force at failure; or the stress that the gauge showed, with `scaleDiameter`. */
  readonly load: Force | Pressure;
  /** Diameter of the face that was glued on. */
  readonly dollyDiameter: Length;
  /** Diameter of the dolly that the scale of the gauge is made for; goes with a stress. */
  readonly scaleDiameter?: Length | undefined;
  /** Where it broke. */
  readonly failure: FailureShares;
}

/** What a test must show: the strength, and with it or in place of it a break in the substrate. */
export type PullOffAcceptance =
  'strength' | 'strength and substrate failure' | 'strength or substrate failure';

/** Input of {@link pullOffCheck}. */
export interface PullOffCheckInput<U extends PressureUnit = PressureUnit> extends Confidence {
  /** How the bond was tested. */
  readonly method: PullOffMethod;
  /** What lies under the coat. */
  readonly substrate: FilmSubstrate;
  /** All dollies. */
  readonly tests: readonly PullOffTest[];
  /** Least stress that the specification asks for. */
  readonly limit: Quantity<U>;
  /** What the specification accepts. */
  readonly acceptance: PullOffAcceptance;
  /** Share of the face that must have broken in the substrate; goes with an acceptance that asks where it broke. */
  readonly leastSubstrateShare?: Share | undefined;
  /** What a load may be off by, as a share of it. Taken as exact where not given. */
  readonly loadError?: ReadingError<Share> | undefined;
  /** How many tests the specification asks for. Not judged where not given. */
  readonly testsNeeded?: number | undefined;
}

/** One dolly judged. */
export interface PullOffFinding<U extends PressureUnit = PressureUnit> extends Omit<
  Assessment<U>,
  'cautions' | 'basis'
> {
  /** Where it stood. */
  readonly name: string;
  /** Where more than half of the face broke; `mixed` where no place has more than half. */
  readonly mode: FailureMode | 'mixed';
  /** Whether the bond is stronger than `measured`: glue or substrate gave way on a part of the face. */
  readonly lowerBound: boolean;
}

/** The mean of the tests that broke in the same way. */
export interface PullOffMean<U extends PressureUnit = PressureUnit> {
  /** How they broke. */
  readonly mode: FailureMode;
  /** How many they are. */
  readonly count: number;
  /** Their mean. */
  readonly mean: Quantity<U>;
}

/** A set of dollies judged. The figures are those of the test that governs. */
export interface PullOffAssessment<U extends PressureUnit = PressureUnit> extends Assessment<U> {
  /** The test that governs. */
  readonly name: string;
  /** Every test. */
  readonly findings: readonly PullOffFinding<U>[];
  /** Means of tests that broke alike; never of tests in which the glue gave way. */
  readonly means: readonly PullOffMean<U>[];
}

const FITS: Fits<PullOffMethod> = {
  'ASTM D7234': ['concrete'],
  'ASTM D4541': ['steel', 'other metal'],
  'ISO 4624': SUBSTRATES,
};
const SOURCE: Readonly<Record<PullOffMethod, Cited>> = {
  'ASTM D7234': { source: 'astm-d7234' },
  'ASTM D4541': { source: 'astm-d4541', status: 'memory' },
  'ISO 4624': { source: 'iso-4624', status: 'memory' },
};
const ACCEPTANCES: readonly PullOffAcceptance[] = [
  'strength',
  'strength and substrate failure',
  'strength or substrate failure',
];
const MODES: readonly FailureMode[] = ['substrate', 'adhesive', 'cohesive', 'glue'];
/** A part of the face. */
const FACE: Limits = { above: -5e-324, below: 1.000000000001, words: ' from 0 % to 100 %' };

/**
 * Whether a coat is bonded well enough, by discs (dollies) that were glued on and torn off.
 *
 * Every test must hold; the worst one governs. Specifications usually ask for 100 to 250 psi. Where the glue gave way the bond is at least what was read, so that such
 * a test can meet its limit but never fails it. "200 psi or failure in the concrete" and "200 psi and failure in the
 * concrete" are two acceptances: say which.
 *
 * @formula
 * ```math
 * \sigma_i = \frac{4 F_i}{\pi d_i^2} \ge \sigma_{limit} \;\; \forall\, i
 * ```
 * @units forces or pressures, lengths, shares, pressure; answers pressures.
 * @validRange loads and diameters above 0; the shares of a face add up to 100 %; loadError below 100 %. ASTM D7234 on
 * concrete, ASTM D4541 on metal, ISO 4624 on both.
 * @accuracy Exact up to round-off. A reading exactly on the limit meets it. Means are of tests of which more than half
 * of the face broke in the same way.
 * @source astm-d7234, astm-d4541, iso-4624, astm-c1583, astm-f3010, concrete-construction-bond
 * @param input - Method, tests, limit and what is accepted.
 * @returns The verdict with the governing test, every test, and the means of those that broke alike.
 * @throws An `InputError` that names the field, or `conflict` where the method is not for that substrate.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const percent = (value: number) => ({ value, unit: '%' }) as const;
 * const bond = {
 *   method: 'ASTM D7234',
 *   substrate: 'concrete',
 *   tests: [
 *     {
 *       name: 'bay 4',
 *       load: { value: 2600, unit: 'N' },
 *       dollyDiameter: { value: 50, unit: 'mm' },
 *       failure: { substrate: percent(90), adhesive: percent(10) },
 *     },
 *   ],
 *   limit: { value: 1.5, unit: 'MPa' },
 *   leastSubstrateShare: percent(80),
 * } as const;
 * inspect.pullOffCheck({ ...bond, acceptance: 'strength or substrate failure' }).verdict; // => 'meets'
 * inspect.pullOffCheck({ ...bond, acceptance: 'strength and substrate failure' }).verdict; // => 'fails'
 * ```
 */
export function pullOffCheck<U extends PressureUnit>(input: PullOffCheckInput<U>): PullOffAssessment<U> {
  const fn = 'pullOffCheck';
  const given = fields(fn, input);
  const { method, substrate, limit, acceptance, leastSubstrateShare, testsNeeded } = given;
  const cited = SOURCE[readKey(fn, 'method', method, FITS)];
  readFit(fn, ['method'], method, FITS, substrate);
  const limit_Pa = read(fn, 'limit', limit, PRESSURE, POSITIVE);
  const asksWhere = readChoice(fn, 'acceptance', acceptance, ACCEPTANCES) !== 'strength';
  const leastShare = readOptional(fn, 'leastSubstrateShare', leastSubstrateShare, SHARE, PART_OR_WHOLE);
  if (asksWhere && leastShare === undefined) {
    const expected = 'a share, as the acceptance asks where it broke';
    refuse(fn, 'missing', ['leastSubstrateShare'], expected, leastSubstrateShare);
  }
  if (!asksWhere && leastShare !== undefined) {
    refuse(
      fn,
      'conflict',
      ['leastSubstrateShare'],
      'nothing where strength alone counts',
      leastSubstrateShare,
    );
  }
  const coverage = readCoverage(fn, given);
  const loadError = readError(fn, 'loadError', given.loadError, coverage, SHARE, PART);
  const errorShare = halfWidthOf(loadError, coverage);
  const needed = testsNeeded === undefined ? 0 : readCount(fn, 'testsNeeded', testsNeeded);

  const list = readObjects(fn, 'tests', given.tests, 1);
  readNames(fn, list, ['tests']);
  const tests = list.map((test, i) => readTest(fn, test, i));
  const judged = tests.map((test) => {
    const gap = test.stress_Pa - limit_Pa;
    const uncertainty = test.stress_Pa * errorShare;
    const byReading = judge(gap, uncertainty, limit_Pa);
    const strength = byReading === 'fails' && test.shares.glue > 0 ? 'undecided' : byReading;
    return {
      reasons: [
        ...(byReading === 'undecided' ? ['the gauge cannot tell'] : []),
        ...(test.shares.glue > 0 ? ['the glue gave way first'] : []),
      ],
      gap,
      uncertainty,
      limit: limit_Pa,
      verdict: accepted(strength, test.shares, acceptance, leastShare),
      ...test,
    };
  });
  const stress = (value_Pa: number) => write(fn, value_Pa, PRESSURE, limit.unit);
  const answered = (test: (typeof judged)[number]): PullOffFinding<U> => ({
    name: test.name,
    verdict: test.verdict,
    measured: stress(test.stress_Pa),
    limit: echo(limit),
    gap: stress(test.gap),
    ...(test.uncertainty > 0 && { uncertainty: stress(test.uncertainty) }),
    mode: test.mode,
    lowerBound: test.shares.glue > 0 || test.shares.substrate > 0,
  });
  const worst = (worstFinding(judged) ?? judged[0]) as (typeof judged)[number];
  const governing = answered(worst);
  const { name, measured, gap, uncertainty } = governing;
  const tooFew = judged.length < needed;
  const verdict = worstOf([governing.verdict, tooFew ? 'undecided' : 'meets']);

  const about = (
    code: CautionCode,
    params: Caution['params'],
    severity: Caution['severity'] = 'caution',
  ): Caution => ({
    code,
    severity,
    params,
    ...cited,
  });
  const names = (list: readonly { readonly name: string }[]) => list.map((one) => one.name).join(', ');
  const glued = judged.filter(({ shares }) => shares.glue > 0);
  const broken = judged.filter(({ mode, gap: room }) => mode === 'substrate' && room < 0);
  return {
    verdict,
    name,
    measured,
    limit: echo(limit),
    gap,
    ...(uncertainty && { uncertainty }),
    findings: judged.map(answered),
    means: meansOf(judged).map(({ mode, count, mean_Pa }) => ({ mode, count, mean: stress(mean_Pa) })),
    cautions: [
      ...(governing.verdict === 'fails'
        ? [about('bond-not-accepted', { name, measured, limit: echo(limit) })]
        : []),
      ...(governing.verdict === 'undecided'
        ? [
            about('bond-undecided', {
              name,
              measured,
              limit: echo(limit),
              reason: worst.reasons.join(' and '),
            }),
          ]
        : []),
      ...(tooFew
        ? [about('too-few-pull-offs', { missing: needed - judged.length, testsNeeded: needed })]
        : []),
      ...(glued.length > 0 ? [about('glue-gave-way', { names: names(glued) })] : []),
      ...(broken.length > 0 ? [about('substrate-broke-first', { names: names(broken) })] : []),
      about('dolly-under-load', {}, 'danger'),
      ...(substrate === 'concrete' ? [TEST_DUST] : []),
    ],
    basis: [
      basis('measured', `inspect.${fn}`, 'stress = 4 · force / (π · diameter²), worst test', cited, {
        method,
        substrate,
        tests: judged.length,
        limit,
        acceptance,
        leastSubstrateShare,
        loadError: given.loadError,
        testsNeeded,
      }),
      ...uncertaintyBasis(`inspect.${fn}`, { loadError: given.loadError }, given),
    ],
  };
}

/** A test in base units. */
interface BaseTest {
  readonly name: string;
  readonly stress_Pa: number;
  readonly shares: Readonly<Record<FailureMode, number>>;
  readonly mode: FailureMode | 'mixed';
}

/** Reads one dolly. */
function readTest(fn: string, test: PullOffTest, i: number): BaseTest {
  const path = ['tests', i];
  const { base, dimension } = readOneOf(fn, 'load', test.load, [FORCE, PRESSURE], POSITIVE, path);
  const area_m2 = dollyArea(read(fn, 'dollyDiameter', test.dollyDiameter, LENGTH, POSITIVE, path));
  const byStress = dimension.kind === PRESSURE.kind;
  if (!byStress && test.scaleDiameter !== undefined) {
    refuse(fn, 'conflict', [...path, 'scaleDiameter'], 'nothing without a stress', test.scaleDiameter);
  }
  const force_N = byStress
    ? base * dollyArea(read(fn, 'scaleDiameter', test.scaleDiameter, LENGTH, POSITIVE, path))
    : base;
  const failure = readObject(fn, 'failure', test.failure, path);
  const share = (mode: FailureMode) => readOr(0, fn, mode, failure[mode], SHARE, FACE, [...path, 'failure']);
  const shares = {
    substrate: share('substrate'),
    adhesive: share('adhesive'),
    cohesive: share('cohesive'),
    glue: share('glue'),
  };
  const sum = MODES.reduce((all, mode) => all + shares[mode], 0);
  if (Math.abs(sum - 1) > 1e-9) {
    refuse(fn, 'conflict', [...path, 'failure'], 'shares that add up to 100 %', `${sum * 100} %`);
  }
  const mode = MODES.find((one) => shares[one] > 0.5) ?? 'mixed';
  return { name: test.name, stress_Pa: force_N / area_m2, shares, mode };
}

/** What a test says by the acceptance of the specification. */
function accepted(
  strength: Verdict,
  { substrate, glue }: BaseTest['shares'],
  acceptance: PullOffAcceptance,
  leastShare = 0,
): Verdict {
  if (acceptance === 'strength') return strength;
  const enough = leastShare - 1e-9;
  // Where the glue gave way nobody knows where the rest would have broken.
  const place =
    substrate >= enough ? 'meets' : glue > 0 && substrate + glue >= enough ? 'undecided' : 'fails';
  if (acceptance === 'strength and substrate failure') return worstOf([strength, place]);
  if (strength === 'meets' || place === 'meets') return 'meets';
  return strength === 'fails' && place === 'fails' ? 'fails' : 'undecided';
}

/** Means of tests that broke alike. */
function meansOf(tests: readonly BaseTest[]) {
  return MODES.flatMap((mode) => {
    const alike = tests.filter((test) => test.mode === mode && test.shares.glue === 0);
    const mean_Pa = meanOf(alike.map(({ stress_Pa }) => stress_Pa));
    return alike.length === 0 ? [] : [{ mode, count: alike.length, mean_Pa }];
  });
}
