/** Spans of time in which something holds: sorted lists without overlap, each worked through once from end to end. */

/** From one moment to another, both included, in ms. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Two neighbouring readings; nothing where they are too far apart for anything to be known between them. */
export type Interval = Span | undefined;

/** A moment that was computed; one that is a whole ms but for round-off is that ms. */
export function moment(ms: number): number {
  const whole = Math.round(ms);
  return Math.abs(ms - whole) < 0.01 ? whole : ms;
}

/** The spans that the parts of all intervals make, joined where they touch. */
export function joined(
  intervals: readonly Interval[],
  part: (interval: Span, i: number) => Span | undefined,
): Span[] {
  const spans: Span[] = [];
  intervals.forEach((interval, i) => {
    const piece = interval && part(interval, i);
    if (!piece) return;
    const last = spans.at(-1);
    if (last?.to === piece.from) spans[spans.length - 1] = { from: last.from, to: piece.to };
    else spans.push(piece);
  });
  return spans;
}

/** The part of an interval in which a value that runs straight from `a` to `b` is 0 or more. */
export function notBelowZero(interval: Span, a: number, b: number): Span | undefined {
  if (a >= 0 && b >= 0) return interval;
  if (a < 0 && b < 0) return undefined;
  const { from, to } = interval;
  const crossing = moment(from + ((to - from) * a) / (a - b));
  return a >= 0 ? { from, to: crossing } : { from: crossing, to };
}

/** The parts that lie in both lists. */
export function intersect(a: readonly Span[], b: readonly Span[]): Span[] {
  const both: Span[] = [];
  let j = 0;
  for (const one of a) {
    for (; j < b.length; j++) {
      const other = b[j] as Span;
      const from = Math.max(one.from, other.from);
      const to = Math.min(one.to, other.to);
      if (from <= to) both.push({ from, to });
      // The other may reach on into the next one.
      if (other.to > one.to) break;
    }
  }
  return both;
}

/** Looks up spans by moments that only grow from call to call. */
export function spanFinder<S extends Span>(spans: readonly S[]): (ms: number) => S | undefined {
  let i = 0;
  return (ms) => {
    while (i < spans.length && (spans[i] as S).to < ms) i++;
    const span = spans[i];
    return span && span.from <= ms ? span : undefined;
  };
}

/** Reads a line through points at places that only grow from call to call. It goes on straight beyond its ends. */
export function lineReader(xs: Float64Array, ys: Float64Array): (x: number) => number {
  let i = 0;
  return (x) => {
    while (i < xs.length - 2 && (xs[i + 1] as number) < x) i++;
    const [x0, x1, y0, y1] = [xs[i], xs[i + 1], ys[i], ys[i + 1]] as [number, number, number, number];
    return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  };
}

/** Place of the last number of a growing column that is not above `x`; the first where all are. */
export function lastNotAbove(column: Float64Array, x: number): number {
  let [low, high] = [0, column.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((column[middle] as number) <= x) low = middle;
    else high = middle;
  }
  return low;
}
