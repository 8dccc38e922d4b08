import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { SameKind, Unit } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import { inside } from '../core/inside.ts';
import { fields, refuse } from '../core/read.ts';
import { readObject, readObjects } from '../core/readPlain.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer, valueIn } from '../units/valueIn.ts';
import { lineThrough } from './lineThrough.ts';
import { stepUnitOf, type StepUnit, type Uncertain } from './uncertain.ts';

/** One point of a line. */
export interface LinePoint<X extends Unit = Unit, Y extends Unit = Unit> {
  /** What is known exactly: the day, the temperature of the standard. */
  readonly x: Quantity<SameKind<X>>;
  /** What was read there. */
  readonly y: Quantity<SameKind<Y>>;
}

/** Input of {@link leastSquaresLine}. */
export interface LeastSquaresLineInput<X extends Unit = Unit, Y extends Unit = Unit> {
  /** Three points or more, not all at one x. */
  readonly points: readonly LinePoint<X, Y>[];
  /** Where the intercept is taken. */
  readonly origin: Quantity<SameKind<X>>;
  /** Where else the line is asked for. */
  readonly at?: Quantity<SameKind<X>> | undefined;
  /** Units of the answer, which say what kinds x and y are. */
  readonly units: { readonly x: X; readonly y: Y };
}

/** A line through points, and how well it is known. */
export interface LeastSquaresLine<Y extends Unit = Unit> {
  /** The line at the origin. */
  readonly intercept: Uncertain<Y>;
  /** How much y grows with one unit of x, in the units of the answer. */
  readonly slope: number;
  /** Standard uncertainty of the slope. */
  readonly slopeUncertainty: number;
  /** Correlation of intercept and slope. */
  readonly correlation: number;
  /** Standard deviation of the points about the line. */
  readonly residualDeviation: Quantity<StepUnit<Y>>;
  /** Points less two. */
  readonly degreesOfFreedom: number;
  /** The line where it was asked for. */
  readonly predicted?: Uncertain<Y> | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The straight line that comes closest to some points, and what it says elsewhere, with how well that is known.
 *
 * @formula
 * ```math
 * b = \frac{\sum (x_i - \bar{x})(y_i - \bar{y})}{S}, \quad S = \sum (x_i - \bar{x})^2, \quad
 * u^2(x) = s^2 \left( \frac{1}{n} + \frac{(x - \bar{x})^2}{S} \right)
 * ```
 * @units any two kinds; answers the kind of y, of temperatures also temperature differences.
 * @validRange three points or more, not all at one x; x known exactly, y with the same uncertainty everywhere.
 * @accuracy Relative error below 1e-12 for points that do not lie far from the origin for their width.
 * @source jcgm-100-2008
 * @param input - The points, the origin, where the line is asked for, and the units wanted.
 * @returns Intercept and slope with their uncertainties and correlation, and the line where it was asked for.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * // Humidity of a slab, week by week.
 * const weeks = [94, 92, 91, 88, 87].map((percent, week) => ({
 *   x: { value: 7 * week, unit: 'd' } as const,
 *   y: { value: percent, unit: '%' } as const,
 * }));
 * const line = statistics.leastSquaresLine({
 *   points: weeks,
 *   origin: { value: 0, unit: 'd' },
 *   at: { value: 35, unit: 'd' },
 *   units: { x: 'd', y: '%' },
 * });
 * [line.slope.toFixed(3), line.predicted?.value.toFixed(1)]; // => ['-0.257', '85.0']
 * line.cautions.map(({ code }) => code); // => ['beyond-fitted-points']
 * ```
 */
export function leastSquaresLine<X extends Unit, Y extends Unit>(
  input: LeastSquaresLineInput<X, Y>,
): LeastSquaresLine<Y> {
  const fn = 'leastSquaresLine';
  const { points, origin, at, units } = fields(fn, input);
  const wanted = readObject(fn, 'units', units);
  const [xKind, yKind] = inside(
    fn,
    ['units'],
    () => [dimensionOfUnit(fn, wanted.x, 'x'), dimensionOfUnit(fn, wanted.y, 'y')] as const,
  );
  const list = readObjects(fn, 'points', points, 0);
  if (list.length < 3) {
    refuse(
      fn,
      'out-of-range',
      ['points'],
      `3 points or more, ${3 - list.length} more than came`,
      `${list.length} points`,
    );
  }
  const x = list.map((point, i) => valueIn(fn, 'x', point.x, xKind, wanted.x, ['points', i]));
  const y = list.map((point, i) => valueIn(fn, 'y', point.y, yKind, wanted.y, ['points', i]));
  const from = valueIn(fn, 'origin', origin, xKind, wanted.x);

  const { middle, height, width, slope, off } = lineThrough(x, y);
  if (!(width > 0)) refuse(fn, 'conflict', ['points'], 'at more than one x', 'all at one x');
  const freedom = x.length - 2;
  const deviation = Math.sqrt(off / freedom);

  const step = stepUnitOf(wanted.y, yKind);
  const lineAt = (place: number): Uncertain<Y> => ({
    ...answer(fn, height + slope * (place - middle), wanted.y),
    standardUncertainty: answer(
      fn,
      deviation * Math.sqrt(1 / x.length + (place - middle) ** 2 / width),
      step,
    ),
    degreesOfFreedom: freedom,
  });
  const asked = at === undefined ? undefined : valueIn(fn, 'at', at, xKind, wanted.x);
  const ends = [Math.min(...x), Math.max(...x)] as const;
  const outside = asked !== undefined && (asked < ends[0] || asked > ends[1]);
  const finite = (value: number) => answer(fn, value, 'fraction').value;
  const inX = (value: number) => ({ value: value + 0, unit: wanted.x });
  const params = { at: inX(asked ?? 0), first: inX(ends[0]), last: inX(ends[1]) };
  return {
    intercept: lineAt(from),
    slope: finite(slope),
    slopeUncertainty: finite(deviation / Math.sqrt(width)),
    correlation: (from - middle) / Math.hypot(Math.sqrt(width / x.length), from - middle) + 0,
    residualDeviation: answer(fn, deviation, step),
    degreesOfFreedom: freedom,
    ...(asked !== undefined && { predicted: lineAt(asked) }),
    cautions: outside
      ? [{ code: 'beyond-fitted-points', severity: 'caution', params, source: 'common-practice' }]
      : [],
    basis: [
      basis(
        'slope',
        `statistics.${fn}`,
        'Σ (x − x̄)(y − ȳ) / Σ (x − x̄)²',
        'jcgm-100-2008',
        { points, origin, at },
        'x known exactly, y with the same uncertainty everywhere',
      ),
    ],
  };
}
