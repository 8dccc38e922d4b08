import { judge, worstOf, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { SHARE } from '../core/dimensions.ts';
import { PART, type Limits } from '../core/limits.ts';
import type { Share } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** Input of {@link aggregateExposure}: what the surface shows, together 100 %. */
export interface AggregateExposureInput extends Confidence {
  /** Cement and fines. */
  readonly cementFines: Share;
  /** Sand. */
  readonly fineAggregate: Share;
  /** Stones. */
  readonly coarseAggregate: Share;
  /** What each share may be off by, in points of the surface. Taken as exact where not given. */
  readonly shareError?: ReadingError<Share> | undefined;
}

/** A class of exposure. */
export type ExposureClass = 'A' | 'B' | 'C';
/** What a surface shows. */
export type SurfacePart = 'cementFines' | 'fineAggregate' | 'coarseAggregate';

/** How deep a polished concrete was cut, by what it shows. */
export interface AggregateExposure {
  /** The class; nothing where the surface fits none, undecided where a share lies within its error of an end. */
  readonly exposureClass?: ExposureClass | 'undecided' | undefined;
  /** Every class that the surface may belong to, and whether it may belong to none. */
  readonly possible: readonly (ExposureClass | 'none')[];
  /** What takes most of the surface; undecided where two shares lie within their errors of each other. */
  readonly dominant: SurfacePart | 'undecided';
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

const SURFACE: Limits = { above: -5e-324, below: 1.000000000001, words: ' from 0 % to 100 %' };
/** Least and greatest share of what dominates. */
const CLASSES: Readonly<Record<SurfacePart, readonly [ExposureClass, least: number, most: number]>> = {
  cementFines: ['A', 0.85, 0.95],
  fineAggregate: ['B', 0.85, 0.95],
  coarseAggregate: ['C', 0.8, 0.9],
};

/** A part of the surface in base units. */
interface Part {
  readonly key: SurfacePart;
  readonly share: number;
}

/**
 * Which class of exposure a polished concrete has, by the shares of its surface that show fines, sand and stones.
 *
 * A share within its error of an end of its class is undecided between the class and none.
 *
 * @formula
 * ```math
 * A: 0.85 \le s_{fines} \le 0.95, \quad B: 0.85 \le s_{sand} \le 0.95, \quad C: 0.80 \le s_{stones} \le 0.90
 * ```
 * @units shares; answers a class.
 * @validRange shares from 0 to 100 %, together 100 %; shareError from 0 % to below 100 %.
 * @accuracy Exact, ends included. Classes of the chart of 2017; older charts with four classes and depths still circulate.
 * @source polished-concrete-2017, jcgm-100-2008
 * @param input - The three shares, and what they may be off by.
 * @returns The class or the classes between which it is undecided, and what dominates.
 * @throws An `InputError` that names the field, or `conflict` where the shares do not add up.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const percent = (value: number) => ({ value, unit: '%' }) as const;
 * inspect.aggregateExposure({
 *   cementFines: percent(7),
 *   fineAggregate: percent(88),
 *   coarseAggregate: percent(5),
 * }).exposureClass; // => 'B'
 * const near = inspect.aggregateExposure({
 *   cementFines: percent(7),
 *   fineAggregate: percent(86),
 *   coarseAggregate: percent(7),
 *   shareError: percent(2),
 * });
 * [near.exposureClass, near.possible]; // => ['undecided', ['B', 'none']]
 * ```
 */
export function aggregateExposure(input: AggregateExposureInput): AggregateExposure {
  const fn = 'aggregateExposure';
  const given = fields(fn, input);
  const keys = Object.keys(CLASSES) as SurfacePart[];
  const shares = keys.map((key): Part => ({ key, share: read(fn, key, given[key], SHARE, SURFACE) }));
  const sum = shares.reduce((all, { share }) => all + share, 0);
  if (Math.abs(sum - 1) > 1e-9) {
    refuse(fn, 'conflict', ['cementFines'], 'shares that add up to 100 %', `${sum * 100} %`);
  }
  const coverage = readCoverage(fn, given);
  const error = halfWidthOf(readError(fn, 'shareError', given.shareError, coverage, SHARE, PART), coverage);

  const fits = ({ key, share }: Part): Verdict => {
    const [, least, most] = CLASSES[key];
    return worstOf([judge(share - least, error, 1), judge(most - share, error, 1)]);
  };
  const fitting = shares.filter((part) => fits(part) !== 'fails');
  const sure = fitting.some((part) => fits(part) === 'meets');
  const names = fitting.map(({ key }) => CLASSES[key][0]);
  const possible = sure ? names : [...names, 'none' as const];
  const undecided = possible.length > 1;
  const [first, second] = [...shares].sort((a, b) => b.share - a.share) as [Part, Part];
  // What one share has too much another has too little.
  const leads = judge(first.share - second.share, 2 * error, 1) === 'meets';
  const { cementFines, fineAggregate, coarseAggregate, shareError } = given;
  const percent = (share: number) => write(fn, share, SHARE, '%');
  const about = (code: CautionCode, severity: Caution['severity'], params: Caution['params']): Caution => ({
    code,
    severity,
    params,
    source: 'polished-concrete-2017',
  });
  return {
    ...((undecided || sure) && {
      exposureClass: undecided ? ('undecided' as const) : names[0],
    }),
    possible,
    dominant: leads ? first.key : 'undecided',
    cautions: [
      ...(undecided
        ? [
            about('class-undecided', 'caution', {
              scale: 'the share that shows most',
              measured: percent(first.share),
              uncertainty: percent(error),
              classes: possible.join(', '),
            }),
          ]
        : []),
      ...(undecided || sure ? [] : [about('exposure-between-classes', 'note', {})]),
    ],
    basis: [
      basis(
        'exposureClass',
        `inspect.${fn}`,
        'share of what dominates, between its ends',
        'polished-concrete-2017',
        {
          cementFines,
          fineAggregate,
          coarseAggregate,
        },
      ),
      ...uncertaintyBasis(`inspect.${fn}`, { shareError }, given),
    ],
  };
}
