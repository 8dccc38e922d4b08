/** Shapes against each other: what two functions must agree on, and what none may answer. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as area from '../../src/area/index.ts';
import { attempt } from '../../src/core/attempt.ts';

const m = (value: number) => ({ value, unit: 'm' as const });
const inch = (value: number) => ({ value, unit: 'in' as const });
const side = fc.double({ min: 0.01, max: 100, noNaN: true });
const near = (got: number, want: number, rel = 1e-12) => {
  expect(Math.abs(got - want)).toBeLessThanOrEqual(rel * Math.abs(want));
};

describe('shapes that are one', () => {
  it('a triangle by sides, by base and height, and by corners', () => {
    fc.assert(
      fc.property(side, side, fc.double({ min: 0, max: 1, noNaN: true }), (base, height, part) => {
        const foot = base * part;
        const wanted = area.triangleArea({ base: m(base), height: m(height), unit: 'm2' }).value;
        const sides = { a: m(base), b: m(Math.hypot(foot, height)), c: m(Math.hypot(base - foot, height)) };
        // The sides of a flat triangle, as doubles, tell its height to that many digits only.
        const loss = 1e-14 * (1 + 10 * (base / height) ** 2 + 10 * (height / base) ** 2);
        near(area.triangleAreaBySides({ ...sides, unit: 'm2' }).value, wanted, loss);
        const points: [number, number][] = [
          [0, 0],
          [base, 0],
          [foot, height],
        ];
        near(area.polygonArea({ corners: { unit: 'm', points }, unit: 'm2' }).value, wanted, 1e-11);
      }),
      { seed: 21 },
    );
  });

  it('a trapezoid of equal sides is a rectangle, a rectangle by its diagonal too', () => {
    fc.assert(
      fc.property(side, side, (a, b) => {
        const wanted = area.rectangleArea({ length: m(a), width: m(b), unit: 'm2' }).value;
        near(area.trapezoidArea({ base: m(a), top: m(a), height: m(b), unit: 'm2' }).value, wanted);
        const sides = { a: m(a), b: m(b), c: m(a), d: m(b), diagonal: m(Math.hypot(a, b)) };
        near(area.quadrilateralArea({ ...sides, unit: 'm2' }).value, wanted, 1e-8);
        near(area.wallArea({ length: m(a), height: m(b), unit: 'm2' }).value, wanted);
      }),
      { seed: 22 },
    );
  });

  it('a ring is the larger circle less the smaller', () => {
    fc.assert(
      fc.property(side, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (outer, part) => {
        const circle = (diameter: number) => area.circleArea({ diameter: m(diameter), unit: 'm2' }).value;
        const ring = area.ringArea({ outerDiameter: m(outer), innerDiameter: m(outer * part), unit: 'm2' });
        near(ring.value, circle(outer) - circle(outer * part), 1e-13 / (1 - part));
      }),
      { seed: 23 },
    );
  });

  it('two segments over one chord make the circle', () => {
    fc.assert(
      fc.property(side, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (diameter, part) => {
        const rise = diameter * part;
        const chord = 2 * Math.sqrt(rise * (diameter - rise));
        const segment = (r: number) => area.segmentArea({ chord: m(chord), rise: m(r), unit: 'm2' }).value;
        const circle = area.circleArea({ diameter: m(diameter), unit: 'm2' }).value;
        near(segment(rise) + segment(diameter - rise), circle, 1e-9);
      }),
      { seed: 24 },
    );
  });

  it('a flat segment is two thirds of chord and rise', () => {
    for (const rise of [1e-3, 1e-5, 1e-7, 1e-9]) {
      const flat = area.segmentArea({ chord: m(10), rise: m(rise), unit: 'm2' }).value;
      near(flat, (2 / 3) * 10 * rise, 2 * (rise / 10) ** 2 + 1e-14);
    }
  });

  it('a segment where its series begins joins the closed form', () => {
    // The angle is 1 rad where the rise is tan(1/4)/2 of the chord.
    const at = (part: number) => area.segmentArea({ chord: m(1), rise: m(part), unit: 'm2' }).value;
    const border = Math.tan(0.25) / 2;
    near(at(border * (1 + 1e-12)), at(border * (1 - 1e-12)), 1e-11);
  });

  it('joints: what a volume reaches takes that volume', () => {
    fc.assert(
      fc.property(side, side, side, fc.double({ min: 0, max: 50, noNaN: true }), (litres, w, d, over) => {
        const joint = {
          width: { value: w, unit: 'mm' as const },
          depth: { value: d, unit: 'mm' as const },
          overfill: { value: over, unit: '%' as const },
        };
        const length = area.jointLength({ volume: { value: litres, unit: 'l' }, ...joint, unit: 'm' });
        near(area.jointVolume({ length, ...joint, unit: 'l' }).value, litres);
      }),
      { seed: 25 },
    );
  });

  it('falls: a square to its drain, a frustum without a slope, a wedge of one depth', () => {
    // A point drain in a square, by two wedges that meet in its middle less what their corners share.
    const point = area.pointFallVolume({ area: { value: 9, unit: 'm2' }, depth: m(0.03), unit: 'l' }).value;
    const frustum = (top: number) =>
      area.frustumVolume({
        topArea: { value: top, unit: 'm2' },
        baseArea: { value: 9, unit: 'm2' },
        height: m(0.03),
        unit: 'l',
      }).value;
    near(point, 9 * 30 - frustum(1e-30), 1e-9);
    near(frustum(9), 270);
    const even = { length: m(3), width: m(3), depth: m(0.03), thinDepth: m(0.03), unit: 'l' as const };
    near(area.wedgeVolume(even).value, 270);
    const layer = area.layerVolume({ area: { value: 9, unit: 'm2' }, depth: m(0.03), unit: 'l' });
    near(layer.value, 270);
    const slope = area.slope({ rise: m(0.03), run: m(1.5), unit: '%' });
    near(area.fallHeight({ slope, run: m(1.5), unit: 'm' }).value, 0.03);
  });
});

describe('what cannot be', () => {
  const slabThickness = inch(4);
  const half = { value: 50, unit: '%' as const };
  const cases: [string, (input: never) => unknown, object, string, (string | number)[]][] = [
    [
      'sides that do not close',
      area.triangleAreaBySides,
      { a: m(1), b: m(2), c: m(3), unit: 'm2' },
      'conflict',
      [],
    ],
    [
      'a diagonal that does not close with the first sides',
      area.quadrilateralArea,
      { a: m(1), b: m(1), c: m(9), d: m(9), diagonal: m(3), unit: 'm2' },
      'conflict',
      ['diagonal'],
    ],
    [
      'a diagonal that does not close with the last sides',
      area.quadrilateralArea,
      { a: m(9), b: m(9), c: m(1), d: m(1), diagonal: m(3), unit: 'm2' },
      'conflict',
      ['diagonal'],
    ],
    [
      'a ring with nothing in it',
      area.ringArea,
      { outerDiameter: m(2), innerDiameter: m(2), unit: 'm2' },
      'conflict',
      ['innerDiameter'],
    ],
    [
      'more openings than wall',
      area.wallArea,
      { length: m(2), height: m(1), openings: { value: 3, unit: 'm2' }, unit: 'm2' },
      'conflict',
      ['openings'],
    ],
    [
      'a cove rounder than high',
      area.coveHeight,
      { height: inch(1), radius: inch(2), unit: 'in' },
      'conflict',
      ['radius'],
    ],
    [
      'a cove face rounder than high',
      area.coveVolume,
      { length: m(1), height: inch(1), thickness: inch(1), radius: inch(2), unit: 'l' },
      'conflict',
      ['radius'],
    ],
    [
      'a cove face without a thickness',
      area.coveVolume,
      { length: m(1), height: inch(4), radius: inch(1), unit: 'l' },
      'missing',
      ['thickness'],
    ],
    [
      'a cove face without a height',
      area.coveVolume,
      { length: m(1), thickness: inch(4), radius: inch(1), unit: 'l' },
      'missing',
      ['height'],
    ],
    [
      'a part of a step',
      area.stairArea,
      { steps: 2.5, tread: m(1), riser: m(1), width: m(1), unit: 'm2' },
      'wrong-type',
      ['steps'],
    ],
    [
      'steps in words',
      area.stairArea,
      { steps: 'two', tread: m(1), riser: m(1), width: m(1), unit: 'm2' },
      'wrong-type',
      ['steps'],
    ],
    ['no steps', area.stairArea, { tread: m(1), riser: m(1), width: m(1), unit: 'm2' }, 'missing', ['steps']],
    [
      'a crack deeper than the slab',
      area.crackVolume,
      { length: m(1), width: inch(1), depth: inch(5), section: 'box', slabThickness, unit: 'l' },
      'conflict',
      ['depth'],
    ],
    [
      'a joint deeper than the slab',
      area.jointVolume,
      { length: m(1), width: inch(1), depth: inch(5), slabThickness, unit: 'l' },
      'conflict',
      ['depth'],
    ],
    [
      'the reach in a joint deeper than the slab',
      area.jointLength,
      { volume: { value: 1, unit: 'l' }, width: inch(1), depth: inch(5), slabThickness, unit: 'm' },
      'conflict',
      ['depth'],
    ],
    [
      'a crack of no known section',
      area.crackVolume,
      { length: m(1), width: inch(1), depth: inch(1), section: 'round', slabThickness, unit: 'l' },
      'out-of-range',
      ['section'],
    ],
    [
      'a spall deeper than the slab',
      area.spallVolume,
      { count: 1, length: inch(1), width: inch(1), depth: inch(5), fullness: half, slabThickness, unit: 'l' },
      'conflict',
      ['depth'],
    ],
    [
      'a crack of no known class',
      area.repairVolume,
      {
        cracks: [{ class: 'wide', length: m(1), width: inch(1), depth: inch(1), section: 'vee' }],
        slabThickness,
        unit: 'l',
      },
      'out-of-range',
      ['cracks', 0, 'class'],
    ],
    [
      'a crack in a list deeper than the slab',
      area.repairVolume,
      {
        cracks: [{ class: 'chased', length: m(1), width: inch(1), depth: inch(5), section: 'vee' }],
        slabThickness,
        unit: 'l',
      },
      'conflict',
      ['cracks', 0, 'depth'],
    ],
    [
      'cracks that are no list',
      area.repairVolume,
      { cracks: {}, slabThickness, unit: 'l' },
      'wrong-type',
      ['cracks'],
    ],
    [
      'a sample larger than the floor',
      area.repairVolume,
      {
        spalls: [
          {
            count: 1,
            length: inch(1),
            width: inch(1),
            depth: inch(1),
            fullness: half,
            sampleArea: { value: 2, unit: 'm2' },
            floorArea: { value: 1, unit: 'm2' },
          },
        ],
        slabThickness,
        unit: 'l',
      },
      'conflict',
      ['spalls', 0, 'sampleArea'],
    ],
  ];
  it.each(cases)('%s', (_, run, input, code, path) => {
    const result = attempt(run, input);
    expect(result.ok ? undefined : result.issues[0]).toMatchObject({ code, path });
  });

  it('nothing to repair is nothing', () => {
    const none = area.repairVolume({ slabThickness, unit: 'l' });
    expect(none.rigid).toEqual({ value: 0, unit: 'l' });
    expect(none.cautions).toEqual([]);
  });
});

it('names sides that do not close in the units in which they came', () => {
  const sides = {
    a: { value: 18.1, unit: 'ft' },
    b: { value: 1.1, unit: 'ft' },
    c: { value: 2.3, unit: 'm' },
  };
  const result = attempt(area.triangleAreaBySides, { ...sides, unit: 'ft2' } as never);
  expect(result.ok ? '' : result.issues[0].received).toBe("'18.1 ft, 1.1 ft, 2.3 m'");
});
