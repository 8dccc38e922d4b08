/** Guards of the pieces of a take-off, field by field, so that every mistake in a piece is found at once. */
import { CORNER_WORDS, isCorner } from '../area/outline.ts';
import type { ShapeName } from '../area/shape.ts';
import { AREA, LENGTH, SHARE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import {
  count,
  issue,
  kindOf,
  list,
  object,
  quantity,
  text,
  unitOf,
  type FieldsOfKind,
  type Guard,
} from './guards.ts';

const length = quantity(LENGTH, POSITIVE);
const orNone = quantity(LENGTH, NOT_NEGATIVE);

const piece = { name: text, count };
const flat = { ...piece, slope: quantity(SHARE, NOT_NEGATIVE), outline: length, open: orNone };

const corner: Guard = (value, path, issues) => {
  if (!isCorner(value)) issues.push(issue('wrong-type', path, CORNER_WORDS, value));
};
const corners = object({ unit: unitOf(LENGTH), points: list(corner, 0) });

/** A piece of a take-off. */
export const shape = kindOf('shape', {
  rectangle: [{ length, width: length }, flat],
  triangle: [{ base: length, height: length }, flat],
  'triangle-by-sides': [{ a: length, b: length, c: length }, flat],
  trapezoid: [{ base: length, top: length, height: length }, flat],
  quadrilateral: [{ a: length, b: length, c: length, d: length, diagonal: length }, flat],
  circle: [{ diameter: length }, flat],
  ring: [{ outerDiameter: length, innerDiameter: length }, flat],
  segment: [{ chord: length, rise: length }, flat],
  polygon: [{ corners }, { ...flat, holes: list(corners, 0) }],
  stair: [
    { steps: count, tread: length, riser: length, width: length },
    { ...piece, risers: count, nosingWrap: orNone, landings: count, landing: length },
  ],
  'pad-sides': [{ length, width: length, height: length }, piece],
  wall: [
    { length, height: length },
    { ...piece, openings: quantity(AREA, NOT_NEGATIVE) },
  ],
  cove: [
    { length, height: length, radius: orNone },
    { ...piece, toe: orNone },
  ],
} satisfies Record<ShapeName, FieldsOfKind>);
