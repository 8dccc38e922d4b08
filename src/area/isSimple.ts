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

  // Wall i runs from corner i to the next one of its ring.
  const next = Int32Array.from({ length: count }, (_, i) => i + 1);
  const before = Int32Array.from({ length: count }, (_, i) => i - 1);
  ends.forEach((end, ring) => {
    const start = ends[ring - 1] ?? 0;
    next[end - 1] = start;
    before[start] = end - 1;
  });

  const order = Array.from({ length: count }, (_, i) => i);
  order.sort((a, b) => at(x, a) - at(x, b) || at(y, a) - at(y, b));
  const rank = new Int32Array(count);
  order.forEach((corner, i) => (rank[corner] = i));
  const isBefore = (a: number, b: number) => at(rank, a) < at(rank, b);
  const left = (wall: number) => (isBefore(wall, at(next, wall)) ? wall : at(next, wall));
  const right = (wall: number) => (isBefore(wall, at(next, wall)) ? at(next, wall) : wall);

  /** Above 0 where `c` lies to the left of the way from `a` to `b`. */
  const turn = (a: number, b: number, c: number) =>
    (at(x, b) - at(x, a)) * (at(y, c) - at(y, a)) - (at(y, b) - at(y, a)) * (at(x, c) - at(x, a));
  /** Above 0 where a corner lies above a wall. */
  const over = (wall: number, corner: number) => turn(left(wall), right(wall), corner);
  /** Whether two walls that the line cuts at the same time meet other than in a corner they share. */
  const meet = (one: number, other: number) => {
    if (right(one) === right(other)) return turn(right(one), left(one), left(other)) === 0;
    const parts = (wall: number, by: number) =>
      Math.sign(over(wall, left(by))) * Math.sign(over(wall, right(by))) > 0;
    return !parts(one, other) && !parts(other, one);
  };

  /** The walls that the line cuts, from bottom to top. */
  const cut = new Int32Array(count);
  let size = 0;
  const meetAt = (place: number) => place > 0 && place < size && meet(at(cut, place - 1), at(cut, place));
  const shift = (place: number, by: number) => {
    cut.copyWithin(place + Math.max(by, 0), place + Math.max(-by, 0), size);
    size += by;
  };

  const firstOfHole = new Set(
    ends.slice(1).map((end, i) => {
      let first = ends[i] as number;
      for (let corner = first; corner < end; corner++) if (isBefore(corner, first)) first = corner;
      return first;
    }),
  );
  if ((order[0] as number) >= (ends[0] as number)) return false;

  for (const corner of order) {
    // The lowest wall that does not run below the corner.
    let place = 0;
    for (let top = size; place < top;) {
      const middle = (place + top) >> 1;
      if (over(at(cut, middle), corner) > 0) place = middle + 1;
      else top = middle;
    }
    const walls: [number, number] = [at(before, corner), corner];
    const starting = walls.filter((wall) => left(wall) === corner);
    if (starting.length === 2) {
      if (place < size && over(at(cut, place), corner) === 0) return false;
      if (firstOfHole.has(corner) && place % 2 === 0) return false;
      const opening = turn(corner, at(before, corner), at(next, corner));
      if (opening === 0) return false;
      shift(place, 2);
      cut.set(opening > 0 ? walls : [walls[1], walls[0]], place);
      if (meetAt(place) || meetAt(place + 2)) return false;
    } else if (starting.length === 1) {
      if (!walls.includes(at(cut, place)) || place >= size) return false;
      cut[place] = starting[0] as number;
      if (meetAt(place) || meetAt(place + 1)) return false;
    } else {
      if (place + 1 >= size || !walls.includes(at(cut, place)) || !walls.includes(at(cut, place + 1)))
        return false;
      shift(place, -2);
      if (meetAt(place)) return false;
    }
  }
  return true;
}
