import { directionsOf, type Formula } from './monotone.ts';
import type { Quantity } from './quantity.ts';
import { checkOrder, isRange, middleOf, type Range } from './range.ts';
import { fields, refuse } from './read.ts';
import { readScale } from './readScale.ts';

/** The inputs of a formula, where each quantity may also be a range. */
export type AcrossInput<I> = {
  readonly [K in keyof I]: NonNullable<I[K]> extends Quantity<infer U> ? I[K] | Range<U> : I[K];
};

/** The answer of a formula over ranged inputs. */
export interface AcrossAnswer<U extends string = string> extends Range<U> {
  /** The input whose width moves the answer most; nothing where no input is a range. */
  readonly driver?: string | undefined;
  /**
   * `proven`: the formula declares how it moves with every ranged input, so no answer lies outside.
   * `corners only`: it was computed at the ends of the ranges, and at 0 where one holds it; between them it may go
   * further.
   */
  readonly enclosure: 'proven' | 'corners only';
}

/** More undeclared ranges than this would take too many corners. */
const MOST_CORNERS = 8;

/**
 * Runs a formula over ranges: the lowest and highest answer, the likely one, and which input is to blame.
 *
 * Where a formula declares how it moves with its inputs (see {@link monotone}) two evaluations prove the range;
 * otherwise every corner is tried. Never feed the answer of one call to another over the same range: compose one
 * formula instead, or the range grows without reason.
 *
 * @source ieee-1788-2015
 * @param formula - A formula of this library or your own.
 * @param input - Its input; any quantity in it may be a range.
 * @returns The range of answers, its driver and how far it is proven. `likely` where every range has one.
 * @throws An `InputError` of the formula, or `conflict` for a range out of order or more than 8 ranges without
 * a declared direction.
 * @example
 * ```ts
 * import { across, between } from 'coating-math/core';
 * import * as film from 'coating-math/film';
 *
 * const wet = across(film.wetThickness, { spreadRate: between(600, 800, 'ft2/usgal'), unit: 'mil' });
 * [wet.low.value.toFixed(2), wet.high.value.toFixed(2), wet.driver, wet.enclosure];
 * // => ['2.01', '2.67', 'spreadRate', 'proven']
 * ```
 */
export function across<F extends Formula, const U extends ReturnType<F>['unit']>(
  formula: F,
  input: AcrossInput<Parameters<F>[0]> & { readonly unit?: U },
): AcrossAnswer<U> {
  if (typeof formula !== 'function') refuse('across', 'wrong-type', ['formula'], 'a function', formula);
  const given = fields('across', input as object) as Readonly<Record<string, unknown>>;
  const at = (values: Readonly<Record<string, unknown>>) => {
    const answer = (formula as unknown as (input: object) => Quantity<U> | undefined)({
      ...given,
      ...values,
    });
    // Adding 0 turns −0 into 0.
    if (answer && Number.isFinite(answer.value)) return { ...answer, value: answer.value + 0 };
    return refuse('across', 'not-a-quantity', ['formula'], 'a function that answers a quantity', answer);
  };

  const ranges = Object.entries(given).filter((entry): entry is [string, Range] => isRange(entry[1]));
  for (const [key, range] of ranges) checkRange(key, range);

  const directions = directionsOf(formula);
  const free = ranges.filter(([key]) => directions[key] !== '+' && directions[key] !== '-');
  if (free.length > MOST_CORNERS) {
    refuse(
      'across',
      'conflict',
      [],
      `called with at most ${String(MOST_CORNERS)} ranges of no declared direction`,
      free.length,
    );
  }

  /** The inputs at which every declared one pulls the answer towards the end asked for. */
  const pulled = (end: 'low' | 'high'): Record<string, unknown> =>
    Object.fromEntries(
      ranges.map(([key, range]) => [
        key,
        (directions[key] === '-') === (end === 'low') ? range.high : range.low,
      ]),
    );
  /** Every choice of stops of the undeclared inputs. */
  const corners = free.reduce<Record<string, unknown>[]>(
    (chosen, [key, range]) =>
      chosen.flatMap((corner) => stopsOf(range).map((stop) => ({ ...corner, [key]: stop }))),
    [{}],
  );
  const answers = (end: 'low' | 'high') => corners.map((corner) => at({ ...pulled(end), ...corner }));
  const least = answers('low').reduce((a, b) => (b.value < a.value ? b : a));
  const most = answers('high').reduce((a, b) => (b.value > a.value ? b : a));

  const likely = ranges.every(([, range]) => range.likely)
    ? at(Object.fromEntries(ranges.map(([key, range]) => [key, range.likely])))
    : undefined;
  return {
    low: least,
    ...(likely && { likely }),
    high: most,
    ...(ranges.length > 0 && { driver: driverOf(ranges, at) }),
    enclosure: free.length > 0 ? 'corners only' : 'proven',
  };
}

/** Where an undeclared range is tried: at its ends, and at 0 between them, by which a formula may divide. */
function stopsOf({ low, high }: Range): Quantity[] {
  const holds0 = low.value < 0 && high.value > 0;
  return holds0 ? [low, { value: 0, unit: low.unit }, high] : [low, high];
}

/** Refuses ends that are no quantities of one kind, or out of order. */
function checkRange(key: string, range: Range): void {
  const end = (name: 'low' | 'likely' | 'high') => readScale('across', name, range[name], undefined, [key]);
  end('low');
  end('high');
  if (range.likely !== undefined) end('likely');
  checkOrder('across', range, [key]);
}

/** The ranged input whose width alone moves the answer most, with the others held in the middle. */
function driverOf(
  ranges: [string, Range][],
  at: (values: Record<string, unknown>) => Quantity,
): string | undefined {
  const middle = Object.fromEntries(ranges.map(([key, range]) => [key, range.likely ?? middleOf(range)]));
  let driver: string | undefined;
  let widest = -1;
  for (const [key, range] of ranges) {
    const width = Math.abs(
      at({ ...middle, [key]: range.high }).value - at({ ...middle, [key]: range.low }).value,
    );
    if (width > widest) {
      widest = width;
      driver = key;
    }
  }
  return driver;
}
