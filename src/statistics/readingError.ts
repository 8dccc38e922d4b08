/** What a reading may be off by, as a check reads it: a bound, or a standard uncertainty. */
import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import type { Dimension } from '../core/dimension.ts';
import type { InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { read, refuse } from '../core/read.ts';
import { coverageFactorOf, readConfidence, tableFreedom } from './confidence.ts';
import { effectiveFreedom } from './effectiveFreedom.ts';
import { isUncertainty, readFreedom } from './uncertain.ts';

/**
 * What a reading may be off by: a bound either way, or a standard uncertainty with its degrees of freedom, as
 * `typeAUncertainty` and the like answer it. A pH is a number, everything else a quantity.
 */
export type ReadingError<Q> =
  | Q
  | {
      /** Its uncertainty as a standard deviation. */
      readonly standardUncertainty: Q;
      /** How well that is known itself, 1 or more; left out where it is known exactly. */
      readonly degreesOfFreedom?: number | undefined;
    };

/** The level of confidence of a check whose errors are propagated by the GUM. */
export interface Confidence {
  /**
   * How sure the verdict is to be by its uncertainty. With it the errors are propagated by the GUM, bounds as
   * rectangular distributions; without it they are bounds, all of them against the reading at once.
   */
  readonly confidence?: Share | undefined;
}

/** The same in base units. */
export interface BaseError {
  /** As a bound; 0 where it was given as a standard uncertainty. */
  readonly bound: number;
  /** As a standard uncertainty. */
  readonly uncertainty: number;
  /** Degrees of freedom; nothing where there are infinitely many. */
  readonly freedom: number | undefined;
}

/** How the errors of a check are expanded to its level of confidence. */
export interface Coverage {
  /** Half the width that holds the true value, from what each error moves the judged figure by, and the errors. */
  readonly expanded: (...parts: readonly (readonly [sensitivity: number, error: BaseError])[]) => number;
}

const EXACT: BaseError = { bound: 0, uncertainty: 0, freedom: undefined };

/** An error of which nothing is known but that it lies between bounds: GUM 4.3.7. */
export function boundedError(bound: number): BaseError {
  return { bound, uncertainty: bound / Math.sqrt(3), freedom: undefined };
}

/** Reads the level of confidence of a check; nothing where its errors are bounds. */
export function readCoverage(fn: string, { confidence }: Confidence): Coverage | undefined {
  if (confidence === undefined) return undefined;
  const level = readConfidence(fn, confidence);
  return {
    expanded: (...parts) => {
      const groups = parts.map(([sensitivity, { uncertainty, freedom }]) => ({
        variance: (sensitivity * uncertainty) ** 2,
        freedom,
      }));
      const variance = groups.reduce((sum, group) => sum + group.variance, 0);
      const freedom = tableFreedom(effectiveFreedom(variance, groups));
      return coverageFactorOf(level, freedom) * Math.sqrt(variance);
    },
  };
}

/** Reads the error in the field `key`, which may be left out. How its size is read is for the caller to say. */
export function readErrorBy<Q>(
  fn: string,
  key: string,
  error: ReadingError<Q> | undefined,
  coverage: Coverage | undefined,
  size: (key: string, given: Q, path: InputPath) => number,
  path: InputPath = [],
): BaseError {
  if (error === undefined) return EXACT;
  if (!isUncertainty(error)) {
    return boundedError(size(key, error as Q, path));
  }
  if (!coverage)
    return refuse(fn, 'missing', ['confidence'], 'a level beside a standard uncertainty', undefined);
  const inner = [...path, key];
  const uncertainty = size('standardUncertainty', error.standardUncertainty as Q, inner);
  return { bound: 0, uncertainty, freedom: readFreedom(fn, error.degreesOfFreedom, inner) };
}

/** As {@link readErrorBy} for an error that is a quantity. */
export function readError<U extends string>(
  fn: string,
  key: string,
  error: ReadingError<Quantity<U>> | undefined,
  coverage: Coverage | undefined,
  dimension: Dimension<U>,
  limits: Limits,
  path?: InputPath,
): BaseError {
  const size = (at: string, given: Quantity<U>, outer: InputPath) =>
    read(fn, at, given, dimension, limits, outer);
  return readErrorBy(fn, key, error, coverage, size, path);
}

/** Half the width that an error gives a figure that it moves one for one. */
export function halfWidthOf(error: BaseError, coverage: Coverage | undefined): number {
  return coverage ? coverage.expanded([1, error]) : error.bound;
}

/** Says how the uncertainty of a verdict came about; nothing where no error was given. */
export function uncertaintyBasis(fn: string, errors: object, { confidence }: Confidence): Basis[] {
  if (Object.values(errors).every((error) => error === undefined)) return [];
  return confidence === undefined
    ? [basis('uncertainty', fn, 'all errors at once, as bounds', 'common-practice', errors)]
    : [
        basis(
          'uncertainty',
          fn,
          't_p(ν) · √Σ (c · u)²',
          'jcgm-100-2008',
          { confidence, ...errors },
          'independent errors; bounds as rectangular distributions',
        ),
      ];
}
