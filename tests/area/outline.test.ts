/** Areas by corners: against an oracle of pairs, under every move that leaves an area alone, and far from the origin. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as area from '../../src/area/index.ts';
import { meetingWalls } from '../../src/area/meetingWalls.ts';
import { attempt } from '../../src/core/attempt.ts';
import { decimal, double, minus, plus, times, toNumber, type Rational } from '../support/rational.ts';

type Point = readonly [number, number];

/** Twice the area of a triangle of whole numbers, exact. */
const turn = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point) =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** Whether two walls with ends at whole numbers share a point. */
function share([a, b]: [Point, Point], [c, d]: [Point, Point]): boolean {
  const inBox = ([p, q]: [Point, Point], [x, y]: Point) =>
    Math.min(p[0], q[0]) <= x &&
    x <= Math.max(p[0], q[0]) &&
    Math.min(p[1], q[1]) <= y &&
    y <= Math.max(p[1], q[1]);
  const [s1, s2, s3, s4] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)].map(Math.sign) as [
    number,
    number,
    number,
    number,
  ];
  if (s1 !== s2 && s3 !== s4 && s1 * s2 <= 0 && s3 * s4 <= 0) return true;
  return (
    (s1 === 0 && inBox([a, b], c)) ||
    (s2 === 0 && inBox([a, b], d)) ||
    (s3 === 0 && inBox([c, d], a)) ||
    (s4 === 0 && inBox([c, d], b))
  );
}

/** A wall, and where it stands in its ring. */
interface Wall {
  readonly r: number;
  readonly i: number;
  readonly n: number;
  readonly ends: [Point, Point];
}

/** All walls, ring after ring. */
function wallsOf(rings: readonly Point[][]): Wall[] {
  return rings.flatMap((ring, r) =>
    ring.map((corner, i) => ({
      r,
      i,
      n: ring.length,
      ends: [corner, ring[(i + 1) % ring.length]] as [Point, Point],
    })),
  );
}

/** Whether two walls cross or touch, other than in a corner they share. */
function meet(one: Wall, other: Wall): boolean {
  const follows = one.r === other.r && (one.i + 1) % one.n === other.i;
  const precedes = one.r === other.r && (other.i + 1) % one.n === one.i;
  if (!follows && !precedes) return share(one.ends, other.ends);
  // Neighbours share a corner and nothing else: they must not fold back.
  const [a, b, c] = follows
    ? [one.ends[0], one.ends[1], other.ends[1]]
    : [other.ends[0], other.ends[1], one.ends[1]];
  const back = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
  return turn(a, b, c) === 0 && back;
}

/** Compares every pair of walls, and looks up where each hole lies. */
function isSimpleByPairs(rings: readonly Point[][]): boolean {
  const walls = wallsOf(rings);
  if (walls.some((one) => walls.some((other) => one !== other && meet(one, other)))) return false;
  const [outer, ...holes] = rings;
  return holes.every((hole, i) => isOnFloor(hole[0] as Point, outer as Point[], holes.toSpliced(i, 1)));
}

/** Whether a corner of a hole lies inside the outline and outside the other holes. */
function isOnFloor(corner: Point, outer: Point[], others: Point[][]): boolean {
  const isInside = ([x, y]: Point, ring: Point[]) => {
    let inside = false;
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] as Point;
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    });
    return inside;
  };
  return isInside(corner, outer) && !others.some((other) => isInside(corner, other));
}

/** Whether what the sweep found is there: two walls that meet, or a wall of a hole that begins off the floor. */
function isThere(found: readonly number[], rings: readonly Point[][]): boolean {
  const walls = wallsOf(rings);
  const [one, other] = found.map((wall) => walls[wall] as Wall) as [Wall, Wall?];
  if (other) return one !== other && meet(one, other);
  const [outer, ...holes] = rings;
  return one.r > 0 && !isOnFloor(one.ends[0], outer as Point[], holes.toSpliced(one.r - 1, 1));
}

/** Rings as the sweep takes them. */
function flat(rings: readonly Point[][]): { x: Float64Array; y: Float64Array; ends: number[] } {
  const all = rings.flat();
  let end = 0;
  return {
    x: Float64Array.from(all, ([x]) => x),
    y: Float64Array.from(all, ([, y]) => y),
    ends: rings.map((ring) => (end += ring.length)),
  };
}

const gridPoint = (most: number) =>
  fc.tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 0, max: most }));
/** Corners that may come twice, as long as no two neighbours are the same: such are read as one. */
const pinched = (most: number, corners: number) =>
  fc
    .array(gridPoint(most), { minLength: 3, maxLength: corners })
    .filter((points) =>
      points.every((point, i) => String(point) !== String(points[(i + 1) % points.length])),
    );
const ring = (most: number, corners: number) =>
  fc.uniqueArray(gridPoint(most), { minLength: 3, maxLength: corners, selector: String });
const isFlatTriangle = (points: readonly Point[]) =>
  points.length === 3 && turn(points[0] as Point, points[1] as Point, points[2] as Point) === 0;

describe('outlines that cross or touch', () => {
  it('are found as by comparing every pair of walls', () => {
    let simple = 0;
    fc.assert(
      fc.property(fc.oneof(ring(6, 8), pinched(5, 8)), (points) => {
        fc.pre(!isFlatTriangle(points));
        const wanted = isSimpleByPairs([points]);
        if (wanted) simple++;
        const found = meetingWalls(flat([points]));
        expect(found === undefined).toBe(wanted);
        if (found)
          expect(isThere(found, [points]), `${String(found)} of ${JSON.stringify(points)}`).toBe(true);
      }),
      { numRuns: 20000, seed: 11 },
    );
    expect(simple).toBeGreaterThan(2000);
  });

  it('are found between an outline and its holes', () => {
    let simple = 0;
    const outer = fc.constantFrom<Point[][]>(
      [
        [0, 0],
        [9, 0],
        [9, 9],
        [0, 9],
      ] as never,
      [
        [0, 0],
        [9, 0],
        [4, 4],
        [0, 9],
      ] as never,
    );
    fc.assert(
      fc.property(outer, ring(9, 4), ring(9, 3), (around, one, two) => {
        fc.pre(!isFlatTriangle(one) && !isFlatTriangle(two));
        const rings = [around as unknown as Point[], one, two];
        const wanted = isSimpleByPairs(rings);
        if (wanted) simple++;
        const found = meetingWalls(flat(rings));
        expect(found === undefined).toBe(wanted);
        if (found) expect(isThere(found, rings), `${String(found)} of ${JSON.stringify(rings)}`).toBe(true);
      }),
      { numRuns: 20000, seed: 12 },
    );
    expect(simple).toBeGreaterThan(100);
  });

  it.each([
    ['a bow tie', 'side 1 and side 3', '0 0, 10 10, 10 0, 0 10'],
    [
      'a bow tie with corners that come twice',
      'side 2 and side 5',
      '0 0, 0 0, 10 10, 10 10, 10 0, 0 10, 0 0',
    ],
    ['corners on one line', 'side 3 and side 1', '0 0, 1 1, 2 2'],
    ['a spike', 'side 4 and side 6', '0 0, 10 0, 10 10, 5 10, 5 3, 5 10, 0 10'],
    ['a corner on a wall', 'side 1 and side 4', '0 0, 10 0, 10 10, 5 0, 0 10'],
    ['a pinch', 'side 3 and side 6', '0 0, 4 0, 2 2, 4 4, 0 4, 2 2'],
  ])('%s is refused', (_, sides, corners) => {
    const points = corners.split(', ').map((corner) => corner.split(' ').map(Number));
    const input = { corners: { unit: 'ft', points }, unit: 'ft2' };
    const result = attempt(area.polygonArea, input);
    expect(result.ok ? undefined : result.issues[0]).toMatchObject({
      code: 'conflict',
      path: ['corners'],
      received: `'${sides}'`,
    });
    const around = attempt(area.polygonPerimeter, { ...input, unit: 'ft' });
    expect(around.ok).toBe(false);
  });
});

/** Corners around a point at growing angles: never crossing. */
const star = fc
  .array(fc.double({ min: 1, max: 30, noNaN: true }), { minLength: 3, maxLength: 40 })
  .map((radii) =>
    radii.map((radius, i): Point => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    }),
  );
const measured = (points: readonly Point[]) =>
  area.polygonArea({ corners: { unit: 'm', points }, unit: 'm2' }).value;

describe('the area of an outline', () => {
  it('stays under rotation, shift, another first corner and the other way round', () => {
    const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    const far = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(star, angle, far, far, fc.nat(40), (points, turned, east, north, first) => {
        const before = measured(points);
        const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
        const moved = points.map(([x, y]): Point => [x * cos - y * sin + east, x * sin + y * cos + north]);
        const from = first % points.length;
        // The moved corners are rounded to the digits left that far out.
        expect(measured(moved) / before).toBeCloseTo(1, 8);
        expect(measured([...points.slice(from), ...points.slice(0, from)]) / before).toBeCloseTo(1, 12);
        expect(measured([...points].reverse()) / before).toBeCloseTo(1, 12);
        expect(measured([...points, points[0] as Point])).toBe(before);
      }),
      { seed: 13 },
    );
  });

  it('is that of its triangles', () => {
    fc.assert(
      fc.property(star, (points) => {
        const triangles = points.map(([x, y], i) => {
          const [nextX, nextY] = points[(i + 1) % points.length] as Point;
          return (x * nextY - nextX * y) / 2;
        });
        expect(measured(points) / triangles.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
      }),
      { seed: 14 },
    );
  });

  it('keeps 12 digits in the coordinates of a national grid', () => {
    const shape: Point[] = [
      [0, 0],
      [20.25, 0.5],
      [21.5, 12.75],
      [9.125, 30.375],
      [0.25, 18.5],
    ];
    const moved = shape.map(([x, y]): Point => [x + 500000.5, y + 5400000.25]);
    expect(Math.abs(measured(moved) / measured(shape) - 1)).toBeLessThan(1e-12);
    // Fifths of a metre are not exact in doubles; what they round to is what is measured.
    const exact = 21.5 * 12.75;
    expect(
      Math.abs(
        measured([
          [4e6, 8e6],
          [4e6 + 21.5, 8e6],
          [4e6 + 21.5, 8e6 + 12.75],
          [4e6, 8e6 + 12.75],
        ]) /
          exact -
          1,
      ),
    ).toBeLessThan(1e-12);
  });

  it.each([
    ['a hall', 60, 35],
    ['a corridor', 100, 2],
    ['a trench', 100, 0.1],
    ['a strip of a ten-thousandth of its length', 100, 0.01],
  ])('is that of whole fractions on a national grid: %s', (_, length, width) => {
    const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    const east = fc.double({ min: 1e5, max: 9e5, noNaN: true });
    const north = fc.double({ min: 1e6, max: 9.9e6, noNaN: true });
    fc.assert(
      fc.property(angle, east, north, (turned, x0, y0) => {
        const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
        const points = (
          [
            [0, 0],
            [length, 0],
            [length, width],
            [0, width],
          ] as const
        ).map(([x, y]): Point => [x0 + x * cos - y * sin, y0 + x * sin + y * cos]);
        // The area of the corners as they were rounded, in fractions that lose nothing.
        const exact = points.map(([x, y]) => [double(x), double(y)] as const);
        const twice = exact.reduce<Rational>((sum, [x, y], i) => {
          const [nextX, nextY] = exact[(i + 1) % exact.length] as readonly [Rational, Rational];
          return plus(sum, minus(times(x, nextY), times(nextX, y)));
        }, decimal(0));
        expect(Math.abs(measured(points) / (toNumber(twice) / 2) - 1)).toBeLessThan(1e-12);
      }),
      { seed: 15 },
    );
  });

  it.each([
    ['at the origin', 0, 0],
    ['on a national grid', 524288, 5242880],
  ])('keeps 12 digits over 100,000 corners %s', (_, east, north) => {
    const corners = 100_000;
    // Radii and centres in powers of two, so that moving the corners rounds them as little as can be.
    const radius = 1024;
    const points = Array.from({ length: corners }, (_, i): Point => {
      const angle = (2 * Math.PI * i) / corners;
      return [east + radius * Math.cos(angle), north + radius * Math.sin(angle)];
    });
    const wanted = (corners / 2) * radius ** 2 * Math.sin((2 * Math.PI) / corners);
    expect(Math.abs(measured(points) / wanted - 1)).toBeLessThan(1e-12);
    const around = area.polygonPerimeter({ corners: { unit: 'm', points }, unit: 'm' }).value;
    const wantedAround = 2 * corners * radius * Math.sin(Math.PI / corners);
    expect(Math.abs(around / wantedAround - 1)).toBeLessThan(east === 0 ? 1e-12 : 1e-10);
  });

  it('is the same in every unit of its corners', () => {
    const inFeet = area.polygonArea({
      corners: {
        unit: 'ft',
        points: [
          [0, 0],
          [30, 1],
          [40, 19],
          [9, 21],
        ],
      },
      unit: 'ft2',
    });
    const points = [
      [0, 0],
      [360, 12],
      [480, 228],
      [108, 252],
    ] as Point[];
    const inInches = area.polygonArea({ corners: { unit: 'in', points }, unit: 'ft2' });
    expect(inInches.value).toBeCloseTo(inFeet.value, 9);
    expect(inFeet.value).toBeCloseTo(599.5, 9);
  });
});

describe('corners that cannot be read', () => {
  const square = {
    unit: 'm',
    points: [
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ],
  };
  it.each([
    ['no corners', undefined, 'missing', ['corners']],
    ['nothing in them', {}, 'missing', ['corners', 'points']],
    ['no list of them', { unit: 'm', points: 4 }, 'wrong-type', ['corners', 'points']],
    ['null', null, 'wrong-type', ['corners']],
    ['an unknown unit', { ...square, unit: 'gal' }, 'wrong-unit', ['corners', 'unit']],
    [
      'two corners',
      {
        unit: 'm',
        points: [
          [0, 0],
          [1, 0],
        ],
      },
      'conflict',
      ['corners', 'points'],
    ],
    [
      'two corners, one of them twice',
      {
        unit: 'm',
        points: [
          [0, 0],
          [1, 0],
          [1, 0],
          [0, 0],
        ],
      },
      'conflict',
      ['corners', 'points'],
    ],
    ['none', { unit: 'm', points: [] }, 'conflict', ['corners', 'points']],
    [
      'a number for a corner',
      { unit: 'm', points: [[0, 0], 3, [1, 1]] },
      'wrong-type',
      ['corners', 'points', 1],
    ],
    [
      'NaN',
      {
        unit: 'm',
        points: [
          [0, 0],
          [1, 0],
          [1, NaN],
        ],
      },
      'wrong-type',
      ['corners', 'points', 2],
    ],
    [
      'text',
      {
        unit: 'm',
        points: [
          ['0', 0],
          [1, 0],
          [1, 1],
        ],
      },
      'wrong-type',
      ['corners', 'points', 0],
    ],
    [
      'three numbers',
      {
        unit: 'm',
        points: [
          [0, 0, 0],
          [1, 0],
          [1, 1],
        ],
      },
      'wrong-type',
      ['corners', 'points', 0],
    ],
  ])('%s', (_, corners, code, path) => {
    const result = attempt(area.polygonArea, { corners, unit: 'm2' });
    expect(result.ok ? undefined : result.issues[0]).toMatchObject({ code, path, function: 'polygonArea' });
  });

  it.each([
    ['no list', {}, 'wrong-type', ['holes']],
    [
      'another unit',
      [
        {
          unit: 'ft',
          points: [
            [1, 1],
            [2, 1],
            [2, 2],
          ],
        },
      ],
      'conflict',
      ['holes', 0, 'unit'],
    ],
    ['no corners', [{ unit: 'm', points: [[1, 1]] }], 'conflict', ['holes', 0, 'points']],
    [
      'a hole outside',
      [
        {
          unit: 'm',
          points: [
            [11, 1],
            [12, 1],
            [12, 2],
          ],
        },
      ],
      'conflict',
      ['corners'],
    ],
    [
      'a hole around',
      [
        {
          unit: 'm',
          points: [
            [-1, -1],
            [10, -1],
            [10, 10],
            [-1, 10],
          ],
        },
      ],
      'conflict',
      ['corners'],
    ],
  ])('holes: %s', (_, holes, code, path) => {
    const result = attempt(area.polygonArea, { corners: square, holes, unit: 'm2' });
    expect(result.ok ? undefined : result.issues[0]).toMatchObject({ code, path });
  });

  it.each([
    [
      'crosses the outline',
      'side 2 and side 8',
      [
        [5, 5],
        [11, 5],
        [11, 6],
        [5, 6],
      ],
    ],
    [
      'lies in the other',
      'side 8',
      [
        [1.2, 1.1],
        [1.9, 1.1],
        [1.9, 1.5],
      ],
    ],
  ])('the sides of a hole that %s are counted on', (_, sides, points) => {
    const first = {
      unit: 'm',
      points: [
        [1, 1],
        [2, 1],
        [2, 2],
      ],
    };
    const holes = [first, { unit: 'm', points }];
    const result = attempt(area.polygonArea, { corners: square, holes, unit: 'm2' });
    expect(result.ok ? undefined : result.issues[0].received).toBe(`'${sides}'`);
  });

  it('what no double can hold', () => {
    const points = [
      [-1.5e308, 0],
      [1.5e308, 0],
      [0, 1.5e308],
    ];
    expect(attempt(area.polygonArea, { corners: { unit: 'm', points }, unit: 'm2' }).ok).toBe(false);
  });
});
