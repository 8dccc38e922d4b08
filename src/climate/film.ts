/** How long a film may go on being sensitive to dew. */
import type { Series } from './series.ts';
import { lineReader, moment, type Span } from './spans.ts';

/** A time through which the margin holds that the film asks for. */
export interface DrySpan extends Span {
  /** The last moment at which a film can be laid and be through in time, whatever else is asked. */
  readonly startBy: number;
}

/** Adds to each span until when a film must be laid: one whole sensitive time before its end. */
export function drySpans({ ms, cured }: Series, spans: readonly Span[]): DrySpan[] {
  const curedAt = lineReader(ms, cured);
  const timeAt = lineReader(cured, ms);
  return spans.map(({ from, to }) => ({ from, to, startBy: moment(timeAt(curedAt(to) - 1)) }));
}
