import { judge, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { AREA } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Area, Mass, Quantity, Volume } from '../core/quantity.ts';
import type { LikelyRange } from '../core/range.ts';
import { fields, read, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { AreaUnit, MassUnit, VolumeUnit } from '../core/unitCodes.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { readSquares, type AppliedSquare } from './appliedSquares.ts';

/** Input of {@link materialForecast}. */
export interface MaterialForecastInput<
  U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit,
  A extends AreaUnit = AreaUnit,
> extends Confidence {
  /** The squares that are done, with what was used on each. */
  readonly squares: readonly AppliedSquare[];
  /** Area that is still to be done. */
  readonly areaLeft: Area;
  /** What there still is, by volume or by mass as the squares. */
  readonly amountLeft: Volume | Mass;
  /** What that may be off by: pails dipped with a stick, or weighed. Taken as exact where not given. */
  readonly amountLeftError?: ReadingError<Volume | Mass> | undefined;
  /** Units of the answer. */
  readonly units: { readonly amount: U; readonly area: A };
}

/** Whether the material lasts to the last wall. */
export interface MaterialForecast<
  U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit,
  A extends AreaUnit = AreaUnit,
> {
  /**
   * Meets: it lasts even at the rate of the thirstiest square, and by the least that may be left. Fails: not even at that
   * of the tightest one, by the most.
   */
  readonly verdict: Verdict;
  /** Half the width in which the amount left lies, where its error was given. */
  readonly uncertainty?: Quantity<U> | undefined;
  /** What the rest of the floor takes: at the rates of the tightest square, of all, and of the thirstiest one. */
  readonly need: LikelyRange<U>;
  /** What will be missing; 0 where nothing is. */
  readonly missing: LikelyRange<U>;
  /** How far it reaches: at the rates of the thirstiest square, of all, and of the tightest one. */
  readonly reach: LikelyRange<A>;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Whether what is left of the material lasts for the rest of the floor, by what the floor has taken so far.
 *
 * @formula
 * ```math
 * V_{need} = A_{left} \frac{\sum V_i}{\sum A_i} \qquad A_{reach} = V_{left} \frac{\sum A_i}{\sum V_i}
 * ```
 * @units areas, volumes or masses; answers the same kind and areas.
 * @validRange areas and amounts of the squares above 0; areaLeft above 0, amountLeft 0 or more. The floor ahead drinks as
 * the squares behind: a change of concrete changes it. amountLeftError 0 or more.
 * @accuracy Exact up to round-off. What lasts exactly meets. No published figure: it is a proportion.
 * @source common-practice, jcgm-100-2008
 * @param input - Squares, what is left of floor and material, what that may be off by, and the units wanted.
 * @returns Need, shortage and reach as ranges over the squares.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const square = (name: string, used: number) => ({
 *   name,
 *   area: { value: 200, unit: 'ft2' } as const,
 *   used: { value: used, unit: 'usgal' } as const,
 * });
 * const forecast = inspect.materialForecast({
 *   squares: [square('1', 2.4), square('2', 2.6)],
 *   areaLeft: { value: 1000, unit: 'ft2' },
 *   amountLeft: { value: 12.25, unit: 'usgal' },
 *   units: { amount: 'usgal', area: 'ft2' },
 * });
 * forecast.verdict; // => 'undecided'
 * forecast.reach.likely.value.toFixed(0); // => '980'
 * ```
 */
export function materialForecast<U extends VolumeUnit | MassUnit, A extends AreaUnit>(
  input: MaterialForecastInput<U, A>,
): MaterialForecast<U, A> {
  const fn = 'materialForecast';
  const { squares: given, areaLeft, amountLeft, amountLeftError, units } = fields(fn, input);
  const { squares, kind } = readSquares(fn, given);
  const areaLeft_m2 = read(fn, 'areaLeft', areaLeft, AREA, POSITIVE);
  const left = read<string>(fn, 'amountLeft', amountLeft, kind, NOT_NEGATIVE);
  const coverage = readCoverage(fn, input);
  const error = readError<string>(fn, 'amountLeftError', amountLeftError, coverage, kind, NOT_NEGATIVE);
  const off = halfWidthOf(error, coverage);
  const { amount, area } = readObject(fn, 'units', units);

  const perArea = squares.map(({ used, area_m2 }) => used / area_m2);
  const used = squares.reduce((sum, square) => sum + square.used, 0);
  const done_m2 = squares.reduce((sum, square) => sum + square.area_m2, 0);
  const rates = { low: Math.min(...perArea), likely: used / done_m2, high: Math.max(...perArea) };
  const lasts = (rate: number) => judge(left - areaLeft_m2 * rate, off, areaLeft_m2 * rate);
  const verdict =
    lasts(rates.high) === 'meets' ? 'meets' : lasts(rates.low) === 'fails' ? 'fails' : 'undecided';

  const range = <V extends string>(
    figure: (rate: number) => Quantity<V>,
    from = rates.low,
    to = rates.high,
  ) => ({
    low: figure(from),
    likely: figure(rates.likely),
    high: figure(to),
  });
  const ofAmount = (base: number) => write<U, string>(fn, base, kind, amount, ['units', 'amount']);
  const need = range((rate) => ofAmount(areaLeft_m2 * rate));
  const missing = range((rate) => ofAmount(Math.max(0, areaLeft_m2 * rate - left)));
  const about = (code: CautionCode, severity: Caution['severity']): Caution => ({
    code,
    severity,
    params: { need: need.likely, missing: missing.likely, worst: missing.high },
    source: 'common-practice',
  });
  return {
    verdict,
    ...(off > 0 && { uncertainty: ofAmount(off) }),
    need,
    missing,
    reach: range((rate) => write(fn, left / rate, AREA, area, ['units', 'area']), rates.high, rates.low),
    cautions: [
      ...(verdict === 'fails' ? [about('material-runs-out', 'caution')] : []),
      ...(verdict === 'undecided' ? [about('material-may-run-out', 'caution')] : []),
      ...(squares.length === 1 ? [about('forecast-of-one-square', 'note')] : []),
    ],
    basis: [
      basis('need', `inspect.${fn}`, 'area left · used / area done', 'common-practice', {
        squares: squares.length,
        areaLeft,
        amountLeft,
        amountLeftError,
      }),
      ...uncertaintyBasis(`inspect.${fn}`, { amountLeftError }, input),
    ],
  };
}
