import { LENGTH } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { read, readOr, refuse } from '../core/read.ts';
import { readChoice, readCount, readTextOr } from '../core/readPlain.ts';
import { arc } from './arc.ts';
import { circleArea } from './circleArea.ts';
import { coveHeight } from './coveHeight.ts';
import { padSideArea } from './padSideArea.ts';
import { polygonArea } from './polygonArea.ts';
import { polygonPerimeter } from './polygonPerimeter.ts';
import { quadrilateralArea } from './quadrilateralArea.ts';
import { rectangleArea } from './rectangleArea.ts';
import { ringArea } from './ringArea.ts';
import { segmentArea } from './segmentArea.ts';
import type { FlatFields, FlatShape, Shape, ShapeName } from './shape.ts';
import { slopedArea } from './slopedArea.ts';
import { stairArea } from './stairArea.ts';
import { trapezoidArea } from './trapezoidArea.ts';
import { triangleArea } from './triangleArea.ts';
import { triangleAreaBySides } from './triangleAreaBySides.ts';
import { wallArea } from './wallArea.ts';

/** One piece of a take-off as measured, each of its `count`. */
export interface Measured {
  /** Its name, or its form where it has none. */
  readonly name: string;
  readonly shape: ShapeName;
  readonly count: number;
  readonly area_m2: number;
  /** Whether it lies flat, so that its edge belongs to the outline of the floor. */
  readonly isFlat: boolean;
  /** Edge to be cut in, coved or masked; nothing where the sizes leave it open. */
  readonly edge_m: number | undefined;
}

/** How one form is measured. */
interface Form<S> {
  /** The sizes it is given by. */
  readonly sizes: readonly (keyof S & string)[];
  readonly area: (shape: S) => Quantity<'m2'>;
  /** Its edge in metres, from sizes that were read before. Nothing where they do not tell. */
  readonly edge?: (shape: S) => number;
  /** How much of that edge is open where nothing is said about it. */
  readonly open?: (shape: S) => Length;
}

const SQUARE_METRES = { unit: 'm2' } as const;
const metres = (length: Length | undefined) =>
  length ? read('takeOff', 'length', length, LENGTH, NOT_NEGATIVE) : 0;
const sum = (...lengths: Length[]) => lengths.reduce((total, length) => total + metres(length), 0);

const FORMS: { readonly [N in ShapeName]: Form<Extract<Shape, { shape: N }>> } = {
  rectangle: {
    sizes: ['length', 'width'],
    area: (shape) => rectangleArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ length, width }) => 2 * sum(length, width),
  },
  triangle: {
    sizes: ['base', 'height'],
    area: (shape) => triangleArea({ ...shape, ...SQUARE_METRES }),
  },
  'triangle-by-sides': {
    sizes: ['a', 'b', 'c'],
    area: (shape) => triangleAreaBySides({ ...shape, ...SQUARE_METRES }),
    edge: ({ a, b, c }) => sum(a, b, c),
  },
  trapezoid: {
    sizes: ['base', 'top', 'height'],
    area: (shape) => trapezoidArea({ ...shape, ...SQUARE_METRES }),
  },
  quadrilateral: {
    sizes: ['a', 'b', 'c', 'd', 'diagonal'],
    area: (shape) => quadrilateralArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ a, b, c, d }) => sum(a, b, c, d),
  },
  circle: {
    sizes: ['diameter'],
    area: (shape) => circleArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ diameter }) => Math.PI * metres(diameter),
  },
  ring: {
    sizes: ['outerDiameter', 'innerDiameter'],
    area: (shape) => ringArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ outerDiameter, innerDiameter }) => Math.PI * sum(outerDiameter, innerDiameter),
  },
  segment: {
    sizes: ['chord', 'rise'],
    area: (shape) => segmentArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ chord, rise }) => {
      const { radius, angle } = arc(metres(chord), metres(rise));
      return radius * angle + metres(chord);
    },
    open: ({ chord }) => chord,
  },
  polygon: {
    sizes: ['corners', 'holes'],
    area: (shape) => polygonArea({ ...shape, ...SQUARE_METRES }),
    edge: (shape) => polygonPerimeter({ ...shape, unit: 'm' }).value,
  },
  stair: {
    sizes: ['steps', 'risers', 'tread', 'riser', 'nosingWrap', 'landings', 'landing', 'width'],
    area: (shape) => stairArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ steps, risers = steps, tread, riser, landings = 0, landing }) =>
      2 * (steps * metres(tread) + risers * metres(riser) + landings * metres(landing)),
  },
  'pad-sides': {
    sizes: ['length', 'width', 'height'],
    area: (shape) => padSideArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ length, width }) => 2 * sum(length, width),
  },
  wall: {
    sizes: ['length', 'height', 'openings'],
    area: (shape) => wallArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ length }) => metres(length),
  },
  cove: {
    sizes: ['length', 'height', 'radius', 'toe'],
    area: ({ length, ...cove }) =>
      rectangleArea({ length, width: coveHeight({ ...cove, unit: 'm' }), ...SQUARE_METRES }),
    edge: ({ length }) => metres(length),
  },
};
const FLAT: readonly string[] = [
  'rectangle',
  'triangle',
  'triangle-by-sides',
  'trapezoid',
  'quadrilateral',
  'circle',
  'ring',
  'segment',
  'polygon',
] satisfies FlatShape['shape'][];
const PIECE_FIELDS = ['shape', 'name', 'count'];
const FLAT_FIELDS = ['slope', 'outline', 'open'];

/** Reads one piece of a take-off, whatever its form. */
export function measure(shape: Shape): Measured {
  const { shape: name, count = 1 } = shape;
  const form = FORMS[
    readChoice('takeOff', 'shape', name, Object.keys(FORMS) as ShapeName[])
  ] as unknown as Form<Shape>;
  const isFlat = FLAT.includes(name);
  const known = [...PIECE_FIELDS, ...form.sizes, ...(isFlat ? FLAT_FIELDS : [])];
  for (const key of Object.keys(shape)) {
    if (!known.includes(key)) refuse('takeOff', 'unknown-field', [key], `one of ${known.join(', ')}`, key);
  }

  const { slope, outline, open = outline ? undefined : form.open?.(shape) } = shape as FlatFields;
  const planArea = form.area(shape);
  const area = slope === undefined ? planArea : slopedArea({ planArea, slope, unit: 'm2' });
  const whole_m =
    outline === undefined ? form.edge?.(shape) : read('takeOff', 'outline', outline, LENGTH, POSITIVE);
  const open_m = readOr(0, 'takeOff', 'open', open, LENGTH, NOT_NEGATIVE);
  if (whole_m !== undefined && open_m > whole_m * (1 + 1e-12)) {
    refuse('takeOff', 'conflict', ['open'], 'no more than the outline', open);
  }
  return {
    name: readTextOr(name, 'takeOff', 'name', shape.name),
    shape: name,
    count: readCount('takeOff', 'count', count),
    area_m2: area.value,
    isFlat,
    edge_m: whole_m === undefined ? undefined : Math.max(whole_m - open_m, 0),
  };
}
