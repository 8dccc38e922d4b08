import { LENGTH } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { refuse } from '../core/read.ts';
import { readList, readObject, readUnit } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { meetingWalls } from './meetingWalls.ts';

/** The corners of an outline in walking order, either way round. The last one joins the first, and may repeat it. */
export interface Corners {
  /** Unit of all coordinates. */
  readonly unit: LengthUnit;
  /** The corners, as two distances at right angles each, such as east and north of any point. */
  readonly points: readonly Point[];
}

/** One corner: two distances at right angles, such as east and north of any point. */
type Point = readonly [x: number, y: number];

/** Input of the functions of an outline, but for the unit of the answer. */
export interface OutlineInput {
  /** The outline. */
  readonly corners: Corners;
  /** Outlines cut out of it, each wholly inside, in the same unit. */
  readonly holes?: readonly Corners[] | undefined;
}

/** An outline and its holes as read, in the unit of its corners, with the first corner as the origin. */
export interface Outline {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Where the corners of each ring end in `x` and `y`; the outer ring comes first. */
  readonly ends: readonly number[];
  /** One unit of the coordinates in metres. */
  readonly unit_m: number;
}

/** Reads an outline with its holes; refuses lines that cross or touch and holes that are not inside. */
export function readOutline(fn: string, { corners, holes = [] }: OutlineInput): Outline {
  const unit_m = readScale(fn, corners, ['corners']);
  const lines: [Corners, InputPath][] = [
    [corners, ['corners']],
    ...readList(fn, 'holes', holes, 0).map((hole, i): [Corners, InputPath] => [hole, ['holes', i]]),
  ];
  for (const [line, path] of lines) {
    if (readScale(fn, line, path) !== unit_m) {
      refuse(fn, 'conflict', [...path, 'unit'], 'the unit of the outline', line.unit);
    }
  }

  const room = lines.reduce((sum, [{ points }]) => sum + points.length, 0);
  const x = new Float64Array(room);
  const y = new Float64Array(room);
  const ends: number[] = [];
  /** The sides by the corners they start from, as the caller counts them: from 1 on and through the holes. */
  const numbers: number[] = [];
  let number = 0;
  let end = 0;
  const isSame = (one: number, other: number) => x[one] === x[other] && y[one] === y[other];
  for (const [{ points }, path] of lines) {
    const start = end;
    for (let i = 0; i < points.length; i++) {
      const point = points[i];
      if (!isCorner(point)) {
        refuse(fn, 'wrong-type', [...path, 'points', i], CORNER_WORDS, point);
      }
      // Taken from the first corner before anything is multiplied: far from the origin nothing is lost.
      const [originX, originY] = corners.points[0] as Point;
      x[end] = point[0] - originX;
      y[end] = point[1] - originY;
      // A corner that comes twice in a row is one corner.
      if (end === start || !isSame(end, end - 1)) end++;
      numbers[end - 1] = ++number;
    }
    if (end > start + 1 && isSame(end - 1, start)) end--;
    if (end - start < 3) {
      refuse(fn, 'conflict', [...path, 'points'], 'at least 3 corners, all different', points);
    }
    ends.push(end);
  }

  const outline = { x: x.subarray(0, end), y: y.subarray(0, end), ends, unit_m };
  const walls = meetingWalls(outline);
  if (!walls) return outline;
  const expected = 'lines that nowhere cross or touch, with every hole inside';
  const sides = walls.map((wall) => 'side ' + String(numbers[wall])).join(' and ');
  return refuse(fn, 'conflict', ['corners'], expected, sides);
}

/** One unit of the coordinates in metres; refuses what has not the form of corners. */
function readScale(fn: string, corners: Corners | undefined, path: InputPath): number {
  const { unit, points } = readObject(fn, path.at(-1) as string, corners, path.slice(0, -1));
  if (!Array.isArray(points)) {
    const code = (points as unknown) === undefined ? 'missing' : 'wrong-type';
    refuse(fn, code, [...path, 'points'], 'a list of corners', points);
  }
  return readUnit(fn, 'unit', unit, LENGTH, path);
}

/** What a corner must be, for a message. */
export const CORNER_WORDS = 'a corner as [x, y], both finite';

/** Whether a corner is two finite numbers. */
export function isCorner(point: unknown): point is Point {
  return Array.isArray(point) && point.length === 2 && Number.isFinite(point[0]) && Number.isFinite(point[1]);
}
