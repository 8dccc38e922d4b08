import { worstOf, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { LENGTH, SHARE } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import { readChoice, readList, readObject } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** A gauge with the tabs that the test method gives as its example: in mils, finer where the film is thin. */
export interface NotchSeries {
  /** Name of the series. */
  readonly series: 'ASTM D4414';
  /** Shortest tab on this gauge. */
  readonly shortest: Length;
  /** Longest tab on this gauge. */
  readonly longest: Length;
}

/** A film that was planned, wet. */
export interface PlannedFilm {
  /** Least thickness. */
  readonly least?: Length | undefined;
  /** Greatest thickness. */
  readonly most?: Length | undefined;
}

/** Input of {@link notchGaugeReading}. */
export interface NotchGaugeReadingInput<U extends LengthUnit = LengthUnit> {
  /** The gauge: the lengths of its tabs, or a part of the series of the test method. */
  readonly gauge: NotchSeries | readonly Length[];
  /** The longest tab that came out wet, or `none`. */
  readonly lastWetted: Length | 'none';
  /** Solids by volume of the mix as it was laid, for the film it will dry to. */
  readonly solidsByVolume?: Share | undefined;
  /** The wet film that was planned, to steer by. */
  readonly planned?: PlannedFilm | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Between which thicknesses a film lies. */
export interface FilmInterval<U extends LengthUnit = LengthUnit> {
  /** It is at least this thick; 0 where no tab was wetted. */
  readonly low: Quantity<U>;
  /** It is thinner than this; nothing where every tab was wetted. */
  readonly high?: Quantity<U> | undefined;
}

/** What a notch gauge says of a wet film: an interval, never a number. */
export interface NotchGaugeReading<U extends LengthUnit = LengthUnit> {
  /** Whether the film lies between two tabs, or beyond what the gauge can tell. */
  readonly reading: 'between tabs' | 'below all tabs' | 'above all tabs';
  /** The wet film. */
  readonly wet: FilmInterval<U>;
  /** What it is expected to dry to, where the solids were given. */
  readonly dry?: FilmInterval<U> | undefined;
  /** The wet film against the plan, where one was given. */
  readonly verdict?: Verdict | undefined;
  /** What belongs with it; never empty. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/** Tabs of the example in mils: up to a length, in steps of. */
const SERIES_MIL = [
  [6, 0.5],
  [10, 1],
  [30, 2],
  [100, 5],
] as const;
const MIL_M = 2.54e-5;
/** Two lengths that are the same tab. */
const SAME = 1e-9;

/** The example series, in m. */
function seriesTabs(): number[] {
  let from = 0;
  return SERIES_MIL.flatMap(([to, step]) => {
    const count = Math.round((to - from) / step);
    const tabs = Array.from({ length: count }, (_, i) => (from + (i + 1) * step) * MIL_M);
    from = to;
    return tabs;
  });
}
const SERIES_M = /* @__PURE__ */ seriesTabs();

/**
 * What a notch gauge (a comb with teeth of stepped lengths) says of a wet film: it lies between the last tab that came out
 * wet and the next one that stayed dry.
 *
 * The answer is an interval and stays one. Where all tabs are wet, or none, it is open on one side. It steers the laying
 * while resin can still be moved; it does not accept a floor.
 *
 * @formula
 * ```math
 * t_{wetted} \le w < t_{next} \qquad d = w \, s
 * ```
 * @units lengths, share; answers lengths.
 * @validRange tabs above 0, two or more, no two alike; the series of ASTM D4414 up to 100 mil; solidsByVolume above 0 %
 * and up to 100 %.
 * @accuracy The step of the gauge; its ends are exact up to round-off. Coats that hold air or flat pigment may dry thicker
 * than by solids.
 * @source astm-d4414, organic-finishing-2012, ufc-3-190-06
 * @param input - Gauge, last wetted tab, and the unit wanted.
 * @returns The wet film as an interval, what it dries to, and how it lies to the plan.
 * @throws An `InputError` that names the field, or `conflict` for a tab that the gauge does not have.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const mil = (value: number) => ({ value, unit: 'mil' }) as const;
 * const film = inspect.notchGaugeReading({
 *   gauge: { series: 'ASTM D4414', shortest: mil(2), longest: mil(30) },
 *   lastWetted: mil(16),
 *   planned: { least: mil(17) },
 *   unit: 'mil',
 * });
 * [film.wet.low.value, film.wet.high?.value].map((v) => v?.toFixed(0)); // => ['16', '18']
 * film.verdict; // => 'undecided'
 * ```
 */
export function notchGaugeReading<U extends LengthUnit>(
  input: NotchGaugeReadingInput<U>,
): NotchGaugeReading<U> {
  const fn = 'notchGaugeReading';
  const { gauge, lastWetted, solidsByVolume, planned, unit } = fields(fn, input);
  const tabs_m = readTabs(fn, gauge);
  const solids = readOptional(fn, 'solidsByVolume', solidsByVolume, SHARE, PART_OR_WHOLE);
  const plan = readPlan(fn, planned);

  const last = lastWetted === 'none' ? -1 : tabAt(fn, 'lastWetted', lastWetted, tabs_m);
  const low_m = tabs_m[last] ?? 0;
  const high_m = tabs_m[last + 1];
  const reading = last < 0 ? 'below all tabs' : high_m === undefined ? 'above all tabs' : 'between tabs';
  const interval = (share: number): FilmInterval<U> => ({
    low: write(fn, low_m * share, LENGTH, unit),
    ...(high_m !== undefined && { high: write(fn, high_m * share, LENGTH, unit) }),
  });
  const verdict = plan && verdictOf(low_m, high_m ?? Infinity, plan);
  const wet = interval(1);

  const about = (code: CautionCode, severity: Caution['severity'], source: string): Caution => ({
    code,
    severity,
    params: { low: wet.low, ...(wet.high && { high: wet.high }), reading },
    source,
  });
  return {
    reading,
    wet,
    ...(solids !== undefined && { dry: interval(solids) }),
    ...(verdict && { verdict }),
    cautions: [
      ...(verdict && verdict !== 'meets' ? [about('wet-film-off-plan', 'caution', 'common-practice')] : []),
      ...(reading === 'between tabs' ? [] : [about('beyond-the-gauge', 'caution', 'astm-d4414')]),
      about('wet-film-steers-only', 'note', 'ufc-3-190-06'),
      about('gauge-stands-on-peaks', 'note', 'common-practice'),
    ],
    basis: [
      basis('wet', `inspect.${fn}`, 'last wetted tab ≤ film < next tab', 'astm-d4414', {
        gauge,
        lastWetted,
        planned,
      }),
      ...(solids === undefined
        ? []
        : [
            basis('dry', 'film.dryThickness', 'wet film · solids by volume', 'ufc-3-190-06', {
              solidsByVolume,
            }),
          ]),
    ],
  };
}

/** Reads the tabs of the gauge in m, shortest first. */
function readTabs(fn: string, gauge: NotchSeries | readonly Length[]): readonly number[] {
  if (!Array.isArray(gauge)) {
    const { series, shortest, longest } = readObject(fn, 'gauge', gauge as NotchSeries);
    readChoice(fn, 'series', series, ['ASTM D4414'], ['gauge']);
    const first = tabAt(fn, 'shortest', shortest, SERIES_M, ['gauge']);
    const last = tabAt(fn, 'longest', longest, SERIES_M, ['gauge']);
    if (last > first) return SERIES_M.slice(first, last + 1);
    return refuse(fn, 'conflict', ['gauge', 'longest'], 'longer than the shortest', longest);
  }
  const tabs_m = readList(fn, 'gauge', gauge as readonly Length[], 2).map((tab, i) =>
    read(fn, i, tab, LENGTH, POSITIVE, ['gauge']),
  );
  tabs_m.sort((a, b) => a - b);
  if (tabs_m.some((tab_m, i) => tab_m <= (tabs_m[i - 1] ?? 0) * (1 + SAME))) {
    refuse(fn, 'conflict', ['gauge'], 'tabs of different lengths', gauge);
  }
  return tabs_m;
}

/** The place of a tab on the gauge. */
function tabAt(fn: string, key: string, tab: Length, tabs_m: readonly number[], path?: InputPath): number {
  const given_m = read(fn, key, tab, LENGTH, POSITIVE, path);
  const place = tabs_m.findIndex((tab_m) => Math.abs(tab_m - given_m) <= SAME * tab_m);
  return place >= 0 ? place : refuse(fn, 'conflict', [...(path ?? []), key], 'a tab of the gauge', tab);
}

/** The planned film in m; an end that is not given is not reached. */
interface BasePlan {
  readonly least_m: number;
  readonly most_m: number;
}

function readPlan(fn: string, planned: PlannedFilm | undefined): BasePlan | undefined {
  if (planned === undefined) return undefined;
  const { least, most } = readObject(fn, 'planned', planned);
  const least_m = readOptional(fn, 'least', least, LENGTH, POSITIVE, ['planned']);
  const most_m = readOptional(fn, 'most', most, LENGTH, POSITIVE, ['planned']);
  if (least_m === undefined && most_m === undefined) {
    refuse(fn, 'missing', ['planned', 'least'], 'a film, or most in its place', 'no planned film at all');
  }
  const plan = { least_m: least_m ?? 0, most_m: most_m ?? Infinity };
  if (plan.most_m >= plan.least_m) return plan;
  return refuse(fn, 'conflict', ['planned', 'most'], 'at or above least', most);
}

/** An interval against the plan: it decides only where all of it lies on one side of an end. */
function verdictOf(low_m: number, high_m: number, { least_m, most_m }: BasePlan): Verdict {
  // The next tab stayed dry, so a film that must be that thick is not there.
  const least =
    low_m >= least_m * (1 - SAME) ? 'meets' : high_m <= least_m * (1 + SAME) ? 'fails' : 'undecided';
  const most = high_m <= most_m * (1 + SAME) ? 'meets' : low_m > most_m * (1 + SAME) ? 'fails' : 'undecided';
  return worstOf([least, most]);
}
