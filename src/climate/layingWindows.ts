import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { TEMPERATURE_DIFFERENCE, TIME } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { writeInstant, type Instant } from '../core/instant.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Quantity, TemperatureDifference, Time } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import type { ReadingError } from '../statistics/readingError.ts';
import { closedReadings, type ClosedReading } from './closedReadings.ts';
import { readLimits, type LayingLimits } from './conditions.ts';
import { drySpans } from './film.ts';
import { errorsBasis, readErrors, type InstrumentErrors } from './instruments.ts';
import { readSeries, spansOf, type ClimateReading } from './series.ts';
import { intersect, joined, lastNotAbove, lineReader, moment, type Interval } from './spans.ts';
import { CONDENSATION, OUTGASSING, readBlind, trendOf, type Trend } from './trend.ts';

/** What the floor must be doing while it is laid. */
export type LayingTrend = 'falling or steady' | 'rising';

/** Input of {@link layingWindows}. */
export interface LayingWindowsInput extends InstrumentErrors {
  /** Readings or forecast hours, in order of time. */
  readonly readings: readonly ClimateReading[];
  /** Two readings further apart than this leave a gap, in which nothing is known and nothing is open. */
  readonly longestGap: Time;
  /** Margin over the dew point that laying asks for. */
  readonly marginToLay: TemperatureDifference;
  /** Margin that the film asks for until it is no longer sensitive to dew. */
  readonly marginWhileSensitive: TemperatureDifference;
  /** How long the film stays sensitive, for all readings that do not say so themselves. */
  readonly sensitiveFor?: Time | undefined;
  /** The limits in the instructions of the product. */
  readonly limits?: LayingLimits | undefined;
  /** What the floor must be doing while it is laid, where the product asks for it; left out, cautions name what it does. */
  readonly trend?: LayingTrend | undefined;
  /** A change of the floor between two readings that the thermometer cannot tell from none. */
  readonly changeError?: ReadingError<TemperatureDifference> | undefined;
}

/** A time in which laying may start, and the film then stays above the dew point for as long as it must. */
export interface LayingWindow {
  /** Earliest start. */
  readonly from: Instant;
  /** Latest start. */
  readonly until: Instant;
  /** From the one to the other. */
  readonly length: Quantity<'h'>;
  /** When the film of the latest start is no longer sensitive to dew. */
  readonly sensitiveUntil: Instant;
}

/** A time between two readings of which nothing is known. It counts as closed. */
export interface ReadingGap {
  /** Last reading before it. */
  readonly from: Instant;
  /** First reading after it. */
  readonly to: Instant;
}

/** When laying may start, and why not at all other readings. */
export interface LayingWindows {
  /** In order of time; none where the floor is never open. */
  readonly windows: readonly LayingWindow[];
  /** The latest start of all. */
  readonly latestStart?: Instant | undefined;
  /** Every reading outside the windows. */
  readonly closed: readonly ClosedReading[];
  /** Where readings are missing. */
  readonly gaps: readonly ReadingGap[];
  /** What belongs with the answer; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const TRENDS: Readonly<Record<LayingTrend, Readonly<Record<Trend, Verdict>>>> = {
  'falling or steady': OUTGASSING,
  rising: CONDENSATION,
};

/**
 * When laying may start so that the film is laid in a permitted climate and stays above the dew point until it is no
 * longer sensitive to it: not only at the hour of laying, but through the hours after.
 *
 * Between readings everything runs in straight lines. Instrument errors count against the floor. A film that is
 * sensitive for a time given with each reading ages by the mean speed of the two readings around it.
 *
 * @formula
 * ```math
 * m(s) \ge m_{lay}, \quad m(t) \ge m_{sensitive} \;\; \forall\, t \in [s, e(s)], \quad
 * \int_s^{e(s)} \frac{dt}{\tau(t)} = 1
 * ```
 * @units instants, temperatures, shares, temperature differences, times; answers instants.
 * @validRange two readings or more, in order of time; temperatures from −100 to 100 °C, humidity above 0 and up to
 * 100 %. Nothing is open in a gap, nor where the film would still be sensitive at the last reading.
 * @accuracy To the millisecond for straight lines between readings; a start is rounded into its window.
 * @source ufc-3-190-06, iapws-r7-97, murphy-koop-2005, common-practice
 * @param input - Readings, margins, the time of sensitivity, limits of the product and errors of the instruments.
 * @returns The windows, the latest start, and the reasons at every other reading.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * const reading = (hour: string, surface: number) => ({
 *   at: `2025-04-07T${hour}:00:00+02:00`,
 *   air: { value: 20, unit: 'degC' } as const,
 *   relativeHumidity: { value: 60, unit: '%' } as const,
 *   surface: { value: surface, unit: 'degC' } as const,
 * });
 * const day = climate.layingWindows({
 *   readings: [reading('08', 14), reading('12', 18), reading('16', 18), reading('20', 14)],
 *   longestGap: { value: 4, unit: 'h' },
 *   marginToLay: { value: 3, unit: 'deltaC' },
 *   marginWhileSensitive: { value: 3, unit: 'deltaC' },
 *   sensitiveFor: { value: 5, unit: 'h' },
 * });
 * day.windows.map((window) => [window.from.slice(11, 16), window.until.slice(11, 16)]); // => [['09:00', '13:59']]
 * day.closed.map((hour) => hour.reasons[0]?.code); // => ['dew-margin', 'film-still-sensitive', 'dew-margin']
 * ```
 */
export function layingWindows(input: LayingWindowsInput): LayingWindows {
  const fn = 'layingWindows';
  const { readings, longestGap, marginToLay, marginWhileSensitive, sensitiveFor, trend, changeError } =
    fields(fn, input);
  const gap_ms = read(fn, 'longestGap', longestGap, TIME, POSITIVE) * 1000 * (1 + 1e-12);
  const toLay_K = read(fn, 'marginToLay', marginToLay, TEMPERATURE_DIFFERENCE, NOT_NEGATIVE);
  const after_K = read(
    fn,
    'marginWhileSensitive',
    marginWhileSensitive,
    TEMPERATURE_DIFFERENCE,
    NOT_NEGATIVE,
  );
  const limits = input.limits === undefined ? [] : readLimits(fn, input.limits);
  const rule = trend === undefined ? undefined : TRENDS[readKey(fn, 'trend', trend, TRENDS)];
  const errors = readErrors(fn, input);
  const blind_K = readBlind(fn, changeError, errors.coverage);
  const series = readSeries(fn, readings, limits, errors, sensitiveFor);
  const { at, ms, surface_C, margin } = series;

  const intervals = Array.from({ length: at.length - 1 }, (_, i): Interval => {
    const [from, to] = [ms[i], ms[i + 1]] as [number, number];
    return to - from > gap_ms ? undefined : { from, to };
  });
  const trendAt = (i: number) => trendOf((surface_C[i + 1] as number) - (surface_C[i] as number), blind_K);
  const wayOf = (i: number) => rule?.[trendAt(i)] ?? 'meets';

  const dry = drySpans(series, spansOf(intervals, margin, after_K));
  const open = [
    spansOf(intervals, margin, toLay_K),
    ...series.limits.map((room) => spansOf(intervals, room, 0)),
    joined(intervals, (interval, i) => (wayOf(i) === 'meets' ? interval : undefined)),
    dry.filter(({ from, startBy }) => from <= startBy).map(({ from, startBy }) => ({ from, to: startBy })),
  ]
    .reduce(intersect)
    .filter(({ from, to }) => Math.ceil(from) <= Math.floor(to));

  const instant = (t: number) =>
    writeInstant({ ms: t, offset_min: series.offset_min[lastNotAbove(ms, t)] as number });
  const closed = closedReadings({
    fn,
    series,
    intervals,
    limits,
    toLay_K,
    unit: marginToLay.unit,
    wayOf,
    open,
    dry,
    instant,
  });

  const curedAt = lineReader(ms, series.cured);
  const timeAt = lineReader(series.cured, ms);
  const windows = open.map(({ from, to }): LayingWindow => ({
    from: instant(Math.ceil(from)),
    until: instant(Math.floor(to)),
    length: write(fn, (to - from) / 1000, TIME, 'h'),
    sensitiveUntil: instant(Math.ceil(moment(timeAt(curedAt(to) + 1)))),
  }));
  const gaps = intervals.flatMap((interval, i): ReadingGap[] =>
    interval ? [] : [{ from: at[i] as Instant, to: at[i + 1] as Instant }],
  );
  /** Whether a window is open somewhere while a rule is not met, where none was asked for. */
  const breaks = (way: LayingTrend) => {
    const spans = joined(intervals, (interval, i) =>
      TRENDS[way][trendAt(i)] === 'meets' ? undefined : interval,
    );
    return trend === undefined && intersect(spans, open).some(({ from, to }) => from < to);
  };
  return {
    windows,
    ...(windows.length > 0 && { latestStart: windows.at(-1)?.until }),
    closed,
    gaps,
    cautions: cautionsOf(windows.length, gaps.length, echo(longestGap), breaks),
    basis: [
      basis(
        'windows',
        `climate.${fn}`,
        'marginToLay at the start, marginWhileSensitive until the sensitive time has passed',
        'ufc-3-190-06',
        {
          marginToLay,
          marginWhileSensitive,
          longestGap,
          sensitiveFor,
          limits: input.limits,
          trend,
        },
        'straight lines between readings',
      ),
      ...errorsBasis(fn, input, { changeError }),
    ],
  };
}

function cautionsOf(
  windows: number,
  gaps: number,
  longestGap: Time,
  breaks: (way: LayingTrend) => boolean,
): Caution[] {
  const about = (code: CautionCode, severity: Caution['severity'], source = 'ufc-3-190-06'): Caution => ({
    code,
    severity,
    params: { windows, gaps, longestGap },
    source,
  });
  return [
    ...(windows === 0 ? [about('no-laying-window', 'caution')] : []),
    ...(gaps > 0 ? [about('gap-in-readings', 'caution')] : []),
    ...(breaks('falling or steady')
      ? [about('window-on-rising-slab', 'caution', 'jpcl-blistering-2007')]
      : []),
    ...(breaks('rising') ? [about('window-on-falling-slab', 'caution')] : []),
    about('measure-before-laying', 'note'),
  ];
}
