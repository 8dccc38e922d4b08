import { LENGTH } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readCount } from '../core/readPlain.ts';
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
    edge: ({ chord, rise }) => arc(metres(chord), metres(rise)),
  },
  polygon: {
    sizes: ['corners', 'holes'],
    area: (shape) => polygonArea({ ...shape, ...SQUARE_METRES }),
    edge: (shape) => polygonPerimeter({ ...shape, unit: 'm' }).value,
  },
  stair: {
    sizes: ['steps', 'risers', 'tread', 'riser', 'nosingWrap', 'width'],
    area: (shape) => stairArea({ ...shape, ...SQUARE_METRES }),
    edge: ({ steps, risers = steps, tread, riser }) => 2 * (steps * metres(tread) + risers * metres(riser)),
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

/** The round edge of a bay; its chord is the open side. */
function arc(chord_m: number, rise_m: number): number {
  return ((chord_m * (chord_m / rise_m)) / 8 + rise_m / 2) * 4 * Math.atan((2 * rise_m) / chord_m);
}

/** Reads one piece of a take-off, whatever its form. */
export function measure(shape: Shape): Measured {
  const { shape: name, count = 1, name: label = '' } = fields('takeOff', shape);
  const form = (Object.hasOwn(FORMS, name) ? FORMS[name] : undefined) as Form<Shape> | undefined;
  if (!form) {
    const code = (name as unknown) === undefined ? 'missing' : 'wrong-type';
    return refuse('takeOff', code, ['shape'], `one of ${Object.keys(FORMS).join(', ')}`, name);
  }
  const isFlat = FLAT.includes(name);
  const known = [...PIECE_FIELDS, ...form.sizes, ...(isFlat ? FLAT_FIELDS : [])];
  for (const key of Object.keys(shape)) {
    if (!known.includes(key)) refuse('takeOff', 'unknown-field', [key], `one of ${known.join(', ')}`, key);
  }
  if (typeof label !== 'string') refuse('takeOff', 'wrong-type', ['name'], 'a text', label);

  const { slope, outline, open } = shape as FlatFields;
  const planArea = form.area(shape);
  const area = slope ? slopedArea({ planArea, slope, unit: 'm2' }) : planArea;
  const whole_m = outline ? read('takeOff', 'outline', outline, LENGTH, POSITIVE) : form.edge?.(shape);
  const open_m = open ? read('takeOff', 'open', open, LENGTH, NOT_NEGATIVE) : 0;
  if (whole_m !== undefined && open_m > whole_m * (1 + 1e-12)) {
    refuse('takeOff', 'conflict', ['open'], 'no more than the outline', open);
  }
  return {
    count: readCount('takeOff', 'count', count),
    area_m2: area.value,
    isFlat,
    edge_m: whole_m === undefined ? undefined : Math.max(whole_m - open_m, 0),
  };
}
