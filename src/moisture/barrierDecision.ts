import { judge, VERDICTS, worstOf, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { SHARE, VAPOUR_EMISSION } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE } from '../core/limits.ts';
import type { Share, VapourEmission } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readChoice, readNumber, readObject } from '../core/readPlain.ts';
import {
  halfWidthOf,
  readCoverage,
  readErrorBy,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { PH, readPhError } from './ph.ts';

/** The worst result of one method, with the limits of system and barrier for that same method. */
export interface MoistureFinding<Q> {
  /** The worst reading. */
  readonly measured: Q;
  /** What it may be off by. */
  readonly error?: ReadingError<Q> | undefined;
  /** Highest that the instructions of the flooring system allow without a barrier. */
  readonly systemLimit: Q;
  /** Verdict of the test against `systemLimit`: it also knows of doubtful and missing readings and of a lowest pH. */
  readonly verdict?: Verdict | undefined;
  /** Highest that the instructions of the barrier allow under it, where a barrier is considered. */
  readonly barrierLimit?: Q | undefined;
  /** Verdict of the same test against `barrierLimit`. */
  readonly barrierVerdict?: Verdict | undefined;
}

/** Input of {@link barrierDecision}: at least one method. */
export interface BarrierDecisionInput extends Confidence {
  /** Relative humidity in the slab. */
  readonly inSlabHumidity?: MoistureFinding<Share> | undefined;
  /** Relative humidity in a box on the surface: another test than in the slab, with limits of its own. */
  readonly surfaceHumidity?: MoistureFinding<Share> | undefined;
  /** Vapour emission by calcium chloride. */
  readonly emission?: MoistureFinding<VapourEmission> | undefined;
  /** pH of the surface. */
  readonly alkalinity?: MoistureFinding<number> | undefined;
}

/** A method of the decision. */
export type BarrierMethod = Exclude<keyof BarrierDecisionInput, keyof Confidence>;

/** What one method says. */
export interface BarrierFinding {
  /** Which method. */
  readonly method: BarrierMethod;
  /** Against the limit of the system without a barrier. */
  readonly system: Verdict;
  /** Against the limit of the barrier, where it was given. */
  readonly barrier?: Verdict | undefined;
  /** Half the width in which the true value lies, where its error was given, in the unit of `systemLimit`. */
  readonly uncertainty?: Share | VapourEmission | number | undefined;
}

/** Three answers, which are not the same. */
export interface BarrierDecision {
  /** Whether the slab is wetter than the system bears without a barrier. */
  readonly barrierNeeded: 'yes' | 'no' | 'undecided';
  /** Whether the slab is within what the barrier itself bears, by every method that the system does not bear. */
  readonly withinBarrierLimit: Verdict | 'no limit given';
  /** Whether, as far as moisture goes, the floor may be built on: by the system alone, or by the barrier under it. */
  readonly fitToCoat: Verdict;
  /** What that rests on; nothing where the floor is not fit. */
  readonly by?: 'system alone' | 'barrier' | undefined;
  /** What each method says. */
  readonly findings: readonly BarrierFinding[];
  /** What belongs with the answer; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** How the figures of a method are read, and the size of the numbers that are subtracted. */
interface Reader {
  readonly words: string;
  readonly figure: (fn: string, key: string, given: never, path: InputPath) => number;
  readonly error: (fn: string, key: string, given: never, path: InputPath) => number;
  /** A figure in the unit of another. */
  readonly like: (fn: string, base: number, given: never) => Share | VapourEmission | number;
  readonly scale: number;
}
function humidity(words: string): Reader {
  return {
    words,
    figure: (fn, key, given: Share, path) => read(fn, key, given, SHARE, PART_OR_WHOLE, path),
    error: (fn, key, given: Share, path) => read(fn, key, given, SHARE, NOT_NEGATIVE, path),
    like: (fn, base, { unit }: Share) => write(fn, base, SHARE, unit),
    scale: 1,
  };
}
const READERS: Readonly<Record<BarrierMethod, Reader>> = {
  inSlabHumidity: /* @__PURE__ */ humidity('humidity in the slab'),
  surfaceHumidity: /* @__PURE__ */ humidity('humidity at the surface'),
  emission: {
    words: 'vapour emission',
    figure: (fn, key, given: VapourEmission, path) =>
      read(fn, key, given, VAPOUR_EMISSION, NOT_NEGATIVE, path),
    error: (fn, key, given: VapourEmission, path) =>
      read(fn, key, given, VAPOUR_EMISSION, NOT_NEGATIVE, path),
    like: (fn, base, { unit }: VapourEmission) => write(fn, base, VAPOUR_EMISSION, unit),
    scale: 100,
  },
  alkalinity: {
    words: 'pH',
    figure: (fn, key, given: number, path) => readNumber(fn, key, given, PH, path),
    error: (fn, key, given: number, path) => readPhError(fn)(key, given, path),
    like: (_, base) => base,
    scale: 14,
  },
};

/**
 * Whether a moisture barrier is needed, whether the barrier itself bears the slab, and whether the floor is fit to coat
 * at all: three answers.
 *
 * Every method is judged against limits for that same method; none is converted into another, and the worst one
 * governs. The limits come from the instructions of the system and of the barrier.
 *
 * Hand over the verdict of each test with its figure: holes that were too few or read too early leave a figure that
 * looks dry. A test that is undecided or fails never comes out better, and leaves the barrier undecided as well until
 * `barrierVerdict` tells what the same test says against the limit of the barrier.
 *
 * @formula
 * ```math
 * x_{worst} + u \le x_{limit} \;\; \text{for every method}
 * ```
 * @units shares, mass per area and time, pH without unit; answers verdicts.
 * @validRange at least one method; humidities above 0 and up to 100 %, emissions 0 or more, pH from 0 to 14; a barrier
 * limit at or above the system limit.
 * @accuracy Exact. A reading exactly on a limit meets it. Without a verdict the figure is taken as one of a test by the
 * book, with enough readings.
 * @source astm-f2170, astm-f1869, astm-f3010, common-practice
 * @param input - The worst reading of each method with its limits and the verdicts of its test.
 * @returns The three answers with the verdict of each method.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const wet = moisture.barrierDecision({
 *   inSlabHumidity: {
 *     measured: { value: 97, unit: '%' },
 *     systemLimit: { value: 85, unit: '%' },
 *     barrierLimit: { value: 99, unit: '%' },
 *   },
 * });
 * [wet.barrierNeeded, wet.withinBarrierLimit, wet.fitToCoat, wet.by]; // => ['yes', 'meets', 'meets', 'barrier']
 * ```
 */
export function barrierDecision(input: BarrierDecisionInput): BarrierDecision {
  const fn = 'barrierDecision';
  const given = fields(fn, input);
  const methods = (Object.keys(READERS) as BarrierMethod[]).filter((method) => given[method] !== undefined);
  if (methods.length === 0) {
    refuse(fn, 'missing', ['inSlabHumidity'], 'a test, or another method in its place', 'no method at all');
  }
  const coverage = readCoverage(fn, given);
  const findings = methods.map((method): BarrierFinding => {
    const finding = readObject(fn, method, given[method] as MoistureFinding<unknown>);
    const { figure, error, like, scale } = READERS[method];
    const path = [method];
    const measured = figure(fn, 'measured', finding.measured as never, path);
    const system = figure(fn, 'systemLimit', finding.systemLimit as never, path);
    const size = (key: string, size: unknown, at: InputPath) => error(fn, key, size as never, at);
    const off = halfWidthOf(readErrorBy(fn, 'error', finding.error, coverage, size, path), coverage);
    const against = (limit: number) => judge(limit - measured, off, scale);
    const byFigure = against(system);
    const byTest = verdictOr('meets', fn, 'verdict', finding.verdict, path);
    const atBest = byTest === 'meets' ? 'meets' : 'undecided';
    const byBarrierTest = verdictOr(atBest, fn, 'barrierVerdict', finding.barrierVerdict, path);
    const uncertainty = off > 0 ? { uncertainty: like(fn, off, finding.systemLimit as never) } : {};
    const bySystem = { method, system: worstOf([byFigure, byTest]), ...uncertainty };
    if (finding.barrierLimit === undefined) return bySystem;
    const barrier = figure(fn, 'barrierLimit', finding.barrierLimit as never, path);
    if (barrier < system - 1e-12 * scale) {
      refuse(fn, 'conflict', [method, 'barrierLimit'], 'at or above the system limit', finding.barrierLimit);
    }
    return { ...bySystem, barrier: worstOf([against(barrier), byBarrierTest]) };
  });

  const system = worstOf(findings.map((finding) => finding.system));
  // A method whose limit the slab meets without a barrier asks nothing of the barrier.
  const asked = findings.filter((finding) => finding.barrier !== undefined || finding.system !== 'meets');
  const known = asked.some((finding) => finding.barrier !== undefined);
  const unlimited = asked.filter((finding) => finding.barrier === undefined);
  const barrier = worstOf(asked.map((finding) => finding.barrier ?? 'undecided'));
  const fitToCoat = system === 'meets' ? 'meets' : known ? barrier : system;

  const about = (
    code: CautionCode,
    severity: Caution['severity'],
    params: Caution['params'] = {},
  ): Caution => ({
    code,
    severity,
    params: { methods: methods.length, ...params },
    source: 'common-practice',
  });
  const words = unlimited.map(({ method }) => READERS[method].words).join(', ');
  return {
    barrierNeeded: system === 'meets' ? 'no' : system === 'fails' ? 'yes' : 'undecided',
    withinBarrierLimit: known ? barrier : 'no limit given',
    fitToCoat,
    ...(fitToCoat === 'meets' && { by: system === 'meets' ? 'system alone' : 'barrier' }),
    findings,
    cautions: [
      ...(system === 'fails' ? [about('barrier-needed', 'caution')] : []),
      ...(system === 'undecided' ? [about('barrier-undecided', 'caution')] : []),
      ...(system !== 'meets' && asked.some((finding) => (finding.barrier ?? 'meets') !== 'meets')
        ? [about('beyond-barrier', 'caution')]
        : []),
      ...(known && words ? [about('no-barrier-limit', 'caution', { without: words })] : []),
      about('methods-not-converted', 'note'),
      about('fit-by-moisture-only', 'note'),
    ],
    basis: [
      ...methods.map((method) =>
        basis(
          `findings.${method}`,
          `moisture.${fn}`,
          'measured + error ≤ limit',
          'common-practice',
          given[method] as object,
        ),
      ),
      ...uncertaintyBasis(
        `moisture.${fn}`,
        Object.fromEntries(methods.map((method) => [method, given[method]?.error])),
        given,
      ),
    ],
  };
}

/** Reads a verdict that may be left out. */
function verdictOr(
  otherwise: Verdict,
  fn: string,
  key: string,
  given: Verdict | undefined,
  path: InputPath,
): Verdict {
  return given === undefined ? otherwise : readChoice(fn, key, given, VERDICTS, path);
}
