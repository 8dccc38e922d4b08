/** Why laying may not start at a reading. */
import { judge, type Verdict } from '../core/assessment.ts';
import { TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import type { Instant } from '../core/instant.ts';
import type { TemperatureDifference } from '../core/quantity.ts';
import { write } from '../core/read.ts';
import type { TemperatureDifferenceUnit } from '../core/unitCodes.ts';
import type { BaseLimit, LayingCondition } from './conditions.ts';
import type { DrySpan } from './film.ts';
import type { Column, Series } from './series.ts';
import { lastNotAbove, spanFinder, type Interval, type Span } from './spans.ts';

/** Why laying may not start at a reading. */
export type ClosedReason =
  | {
      /** The margin over the dew point is too small to lay, or may be. */
      readonly code: 'dew-margin';
      readonly verdict: Verdict;
      /** Room to the margin asked for, in its unit. */
      readonly gap: TemperatureDifference;
    }
  | {
      /** A limit of the product is not met, or may not be. */
      readonly code: 'product-limit';
      readonly verdict: Verdict;
      readonly of: LayingCondition;
      readonly end: 'least' | 'most';
    }
  | {
      /** The floor is going the wrong way, or may be. */
      readonly code: 'slab-trend';
      readonly verdict: Verdict;
    }
  | {
      /** Laid now, the film would still be sensitive when the margin is lost, or when nothing more is known. */
      readonly code: 'film-still-sensitive';
      /** Up to when the margin is known to hold; nothing where it does not hold now. */
      readonly marginUntil?: Instant | undefined;
      /** What ends it. */
      readonly because: 'dew' | 'gap in readings' | 'end of readings';
      /** A film laid by then would no longer be sensitive in time; it may lie before the floor was open. */
      readonly startBy?: Instant | undefined;
    };

/** A reading at which laying may not start. */
export interface ClosedReading {
  /** When it was read. */
  readonly at: Instant;
  /** Why; never empty. */
  readonly reasons: readonly ClosedReason[];
}

/** What the reasons are found in. */
interface Search {
  readonly fn: string;
  readonly series: Series;
  readonly intervals: readonly Interval[];
  readonly limits: readonly BaseLimit[];
  readonly toLay_K: number;
  /** Unit in which the margin to lay was given. */
  readonly unit: TemperatureDifferenceUnit;
  /** What is said of the way of the floor from a reading to the next. */
  readonly wayOf: (i: number) => Verdict;
  /** When laying may start. */
  readonly open: readonly Span[];
  /** When the margin holds that the film asks for. */
  readonly dry: readonly DrySpan[];
  readonly instant: (ms: number) => Instant;
}

/** Every reading outside the open spans, with all its reasons. */
export function closedReadings(search: Search): ClosedReading[] {
  const { series, open, dry } = search;
  const filmReasons = new Map(dry.map((span) => [span, filmReason(search, span)]));
  const openAt = spanFinder(open);
  const dryAt = spanFinder(dry);
  const closed: ClosedReading[] = [];
  series.at.forEach((at, i) => {
    const t = series.ms[i] as number;
    if (openAt(t)) return;
    const reasons = reasonsOnTheSpot(search, i);
    const span = dryAt(t);
    const layable = reasons[0]?.code !== 'dew-margin';
    if (span && t > span.startBy) reasons.push(filmReasons.get(span) as ClosedReason);
    if (!span && layable) reasons.push(wettedAtOnce(search, i));
    closed.push({ at, reasons });
  });
  return closed;
}

/** What speaks against laying at the reading itself: margin, limits of the product, and the way of the floor. */
function reasonsOnTheSpot(
  { fn, series, intervals, limits, toLay_K, unit, wayOf }: Search,
  i: number,
): ClosedReason[] {
  const reasons: ClosedReason[] = [];
  const dew = verdictOf(series.margin, i, toLay_K);
  if (dew !== 'meets') {
    const gap = write(fn, (series.margin.room[i] as number) - toLay_K, TEMPERATURE_DIFFERENCE, unit);
    reasons.push({ code: 'dew-margin', verdict: dew, gap });
  }
  limits.forEach(({ of, end }, k) => {
    const verdict = verdictOf(series.limits[k] as Column, i, 0);
    if (verdict !== 'meets') reasons.push({ code: 'product-limit', verdict, of, end });
  });
  // Before a gap and at the end only the way to the reading is known.
  const way = intervals[i] ? i : i - 1;
  const trend = intervals[way] ? wayOf(way) : 'meets';
  if (trend !== 'meets') reasons.push({ code: 'slab-trend', verdict: trend });
  return reasons;
}

/** Of readings from which the margin holds for a while, but not for long enough. */
function filmReason({ series: { at, ms }, intervals, instant }: Search, span: DrySpan): ClosedReason {
  const last = lastNotAbove(ms, span.to);
  const atGap = span.to === ms[last] && !intervals[last];
  return {
    code: 'film-still-sensitive',
    because: last === at.length - 1 ? 'end of readings' : atGap ? 'gap in readings' : 'dew',
    marginUntil: instant(Math.floor(span.to)),
    ...(span.startBy >= (ms[0] as number) && { startBy: instant(Math.floor(span.startBy)) }),
  };
}

/** Of a reading from which no margin is known to hold for any time at all. */
function wettedAtOnce({ intervals }: Search, i: number): ClosedReason {
  const because = (intervals[i - 1] ?? intervals[i]) ? 'dew' : 'gap in readings';
  return { code: 'film-still-sensitive', because };
}

function verdictOf({ room, down, up, scale }: Column, i: number, least: number): Verdict {
  const gap = (room[i] as number) - least;
  return judge(gap, (gap < 0 ? up[i] : down[i]) as number, scale);
}
