import type { Outline } from './outline.ts';

/**
 * Two walls of an outline and its holes that cross or touch, or one of a hole that does not lie inside; nothing where
 * there are none. Wall i runs from corner i to the next one of its ring.
 *
 * A line sweeps over the corners from left to right and keeps the walls it cuts in order from bottom to top; walls
 * that meet must be neighbours in that order before they do, so only neighbours are compared (Shamos and Hoey, 1976).
 * The corners are sorted as runs, which a floor has few of, so the work grows with the number of corners.
 */
export function meetingWalls({
  x,
  y,
  ends,
}: Pick<Outline, 'x' | 'y' | 'ends'>): readonly number[] | undefined {
  const count = x.length;
  const at = (values: Float64Array | Int32Array, i: number) => values[i] as number;
  // From left to right, those above each other from bottom to top.
  const order = Int32Array.from(
    Array.from(x, (_, i) => i).sort((a, b) => at(x, a) - at(x, b) || at(y, a) - at(y, b)),
  );
  // Where each corner comes in that order; the first keeps its 0.
  const rank = new Int32Array(count);
  for (let i = 1; i < count; i++) {
    const corner = at(order, i);
    const previous = at(order, i - 1);
    rank[corner] = i;
    if (at(x, corner) === at(x, previous) && at(y, corner) === at(y, previous)) return [previous, corner];
  }

  // Each wall runs from its left end to its right end.
  const before = new Int32Array(count);
  const left = new Int32Array(count);
  const right = new Int32Array(count);
  const firstOfHole = new Set<number>();
  ends.forEach((end, ring) => {
    const start = ends[ring - 1] ?? 0;
    let first = start;
    for (let corner = start, last = end - 1; corner < end; last = corner++) {
      const isForward = at(rank, last) < at(rank, corner);
      before[corner] = last;
      left[last] = isForward ? last : corner;
      right[last] = isForward ? corner : last;
      if (at(rank, corner) < at(rank, first)) first = corner;
    }
    if (ring > 0) firstOfHole.add(first);
  });

  /** Above 0 where corner `c` lies to the left of the way from `a` to `b`. */
  const turn = (a: number, b: number, c: number) =>
    (at(x, b) - at(x, a)) * (at(y, c) - at(y, a)) - (at(y, b) - at(y, a)) * (at(x, c) - at(x, a));
  /** Above 0 where a corner lies above a wall. */
  const over = (wall: number, corner: number) => turn(at(left, wall), at(right, wall), corner);
  /** Whether both ends of a wall lie on one side of another. */
  const isBeside = (wall: number, by: number) => {
    const [one, other] = [over(wall, at(left, by)), over(wall, at(right, by))];
    return (one > 0 && other > 0) || (one < 0 && other < 0);
  };
  /** Whether two walls that the line cuts at the same time meet, other than in a corner they share. */
  const meet = (one: number, other: number) =>
    at(right, one) === at(right, other)
      ? turn(at(right, one), at(left, one), at(left, other)) === 0
      : !isBeside(one, other) && !isBeside(other, one);

  /** The walls that the line cuts, from bottom to top. */
  const cut = new Int32Array(count);
  let size = 0;
  /** The wall at a place and the one below it, where they meet. */
  const meetBelow = (place: number) => {
    if (place === 0 || place >= size) return undefined;
    const [below, here] = [at(cut, place - 1), at(cut, place)];
    return meet(below, here) ? [below, here] : undefined;
  };
  /** Moves the line over the next corner. */
  const pass = (corner: number) => {
    // The lowest wall that does not run below the corner.
    let place = 0;
    for (let top = size; place < top;) {
      const middle = (place + top) >> 1;
      if (over(at(cut, middle), corner) > 0) place = middle + 1;
      else top = middle;
    }
    const low = at(cut, place);
    const one = at(before, corner);
    const other = corner;
    const oneStarts = at(left, one) === corner;
    const otherStarts = at(left, other) === corner;
    if (oneStarts && otherStarts) {
      if (place < size && over(low, corner) === 0) return [low, corner];
      if (place % 2 === 0 && firstOfHole.has(corner)) return [corner];
      const opening = turn(corner, at(right, one), at(right, other));
      if (opening === 0) return [one, other];
      cut.copyWithin(place + 2, place, size);
      size += 2;
      cut[place] = opening > 0 ? one : other;
      cut[place + 1] = opening > 0 ? other : one;
      return meetBelow(place) ?? meetBelow(place + 2);
    }
    if (oneStarts || otherStarts) {
      const [starting, ending] = oneStarts ? [one, other] : [other, one];
      if (place >= size || low !== ending) return [low, ending];
      cut[place] = starting;
      return meetBelow(place) ?? meetBelow(place + 1);
    }
    const high = at(cut, place + 1);
    const areBoth = (low === one && high === other) || (low === other && high === one);
    if (place + 1 >= size || !areBoth) return [low, high];
    cut.copyWithin(place, place + 2, size);
    size -= 2;
    return meetBelow(place);
  };

  for (const corner of order) {
    const met = pass(corner);
    if (met) return met;
  }
  return undefined;
}
