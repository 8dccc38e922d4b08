import type { Outline } from './outline.ts';

/**
 * Whether no two walls of an outline and its holes cross or touch, and every hole lies inside.
 *
 * A line sweeps over the corners from left to right and keeps the walls it cuts in order from bottom to top; walls
 * that meet must be neighbours in that order before they do, so only neighbours are compared (Shamos and Hoey, 1976).
 * The corners are sorted as runs, which a floor has few of, so the work grows with the number of corners.
 */
export function isSimple({ x, y, ends }: Pick<Outline, 'x' | 'y' | 'ends'>): boolean {
  const count = x.length;
  const at = (values: Float64Array | Int32Array, i: number) => values[i] as number;
  const order = sweepOrder(x, y);
  const rank = new Int32Array(count);
  for (let i = 0; i < count; i++) rank[at(order, i)] = i;
  for (let i = 1; i < count; i++) {
    const corner = at(order, i);
    const previous = at(order, i - 1);
    if (at(x, corner) === at(x, previous) && at(y, corner) === at(y, previous)) return false;
  }
  // A hole that begins before the outer ring sticks out of it.
  if (at(order, 0) >= (ends[0] as number)) return false;

  // Wall i runs from corner i to the next one of its ring, and each wall from its left end to its right end.
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
  /** Whether the wall at a place meets the one below it. */
  const meetBelow = (place: number) => place > 0 && place < size && meet(at(cut, place - 1), at(cut, place));

  for (let i = 0; i < count; i++) {
    const corner = at(order, i);
    // The lowest wall that does not run below the corner.
    let place = 0;
    for (let top = size; place < top;) {
      const middle = (place + top) >> 1;
      if (over(at(cut, middle), corner) > 0) place = middle + 1;
      else top = middle;
    }
    const one = at(before, corner);
    const other = corner;
    const oneStarts = at(left, one) === corner;
    const otherStarts = at(left, other) === corner;
    if (oneStarts && otherStarts) {
      if (place < size && over(at(cut, place), corner) === 0) return false;
      if (place % 2 === 0 && firstOfHole.has(corner)) return false;
      const opening = turn(corner, at(right, one), at(right, other));
      if (opening === 0) return false;
      cut.copyWithin(place + 2, place, size);
      size += 2;
      cut[place] = opening > 0 ? one : other;
      cut[place + 1] = opening > 0 ? other : one;
      if (meetBelow(place) || meetBelow(place + 2)) return false;
    } else if (oneStarts || otherStarts) {
      const [starting, ending] = oneStarts ? [one, other] : [other, one];
      if (place >= size || at(cut, place) !== ending) return false;
      cut[place] = starting;
      if (meetBelow(place) || meetBelow(place + 1)) return false;
    } else {
      const low = at(cut, place);
      const high = at(cut, place + 1);
      const areBoth = (low === one && high === other) || (low === other && high === one);
      if (place + 1 >= size || !areBoth) return false;
      cut.copyWithin(place, place + 2, size);
      size -= 2;
      if (meetBelow(place)) return false;
    }
  }
  return true;
}

/** The corners from left to right, those above each other from bottom to top. */
function sweepOrder(x: Float64Array, y: Float64Array): Int32Array {
  const at = (values: Float64Array, i: number) => values[i] as number;
  const order = Array.from(x, (_, i) => i);
  order.sort((a, b) => at(x, a) - at(x, b) || at(y, a) - at(y, b));
  return Int32Array.from(order);
}
