/** Whatever is wrong with a floor is said in one answer, so that a form can show all of it at once. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shape } from '../../src/area/index.ts';
import type { InputIssue, InputPath } from '../../src/core/InputError.ts';
import { attempt } from '../../src/core/attempt.ts';
import { checkFloor } from '../../src/plan/checkFloor.ts';
import { planFloor, type FloorDocument } from '../../src/plan/index.ts';
import { floorDocument } from '../../src/schema/floorDocument.ts';
import { pathsIn, WRONG, type Path } from '../support/damage.ts';
import { floors } from '../support/floors.ts';
import { isQuantity, replaced } from '../support/values.ts';

const m = (value: number) => ({ value, unit: 'm' as const });
const square = (from: number, to: number) => ({
  unit: 'm' as const,
  points: [
    [from, from],
    [to, from],
    [to, to],
    [from, to],
  ] as const,
});
const flat = { name: 'piece', count: 2, slope: { value: 2, unit: '%' }, outline: m(60), open: m(1) } as const;
const standing = { name: 'piece', count: 2 } as const;

/** A piece of every form with all that it may say. */
const everyShape: readonly Shape[] = [
  { shape: 'rectangle', ...flat, length: m(8), width: m(6) },
  { shape: 'triangle', ...flat, base: m(4), height: m(3) },
  { shape: 'triangle-by-sides', ...flat, a: m(3), b: m(4), c: m(5) },
  { shape: 'trapezoid', ...flat, base: m(5), top: m(3), height: m(2) },
  { shape: 'quadrilateral', ...flat, a: m(3), b: m(4), c: m(3), d: m(4), diagonal: m(5) },
  { shape: 'circle', ...flat, diameter: m(2) },
  { shape: 'ring', ...flat, outerDiameter: m(3), innerDiameter: m(1) },
  { shape: 'segment', ...flat, chord: m(4), rise: m(1) },
  { shape: 'polygon', ...flat, corners: square(0, 9), holes: [square(1, 2), square(3, 4)] },
  {
    shape: 'stair',
    ...standing,
    steps: 9,
    risers: 10,
    tread: m(0.28),
    riser: m(0.17),
    nosingWrap: m(0.02),
    landings: 1,
    landing: m(1.2),
    width: m(1.1),
  },
  { shape: 'pad-sides', ...standing, length: m(2), width: m(1), height: m(0.2) },
  { shape: 'wall', ...standing, length: m(5), height: m(0.1), openings: { value: 0.1, unit: 'm2' } },
  { shape: 'cove', ...standing, length: m(20), height: m(0.1), radius: m(0.025), toe: m(0.05) },
];

const [, demo] = floors[0] as (typeof floors)[number];
const floor: FloorDocument = { ...demo, zones: [...demo.zones, { name: 'every form', add: everyShape }] };
const paths = pathsIn(floor);
const at = (path: InputPath) => path.reduce<unknown>((value, key) => (value as never)[key], floor);

const keys = (issues: readonly InputIssue[]) => issues.map(({ path }) => path.join('.'));

const isWithin = (path: InputPath, outer: InputPath) => outer.every((key, i) => path[i] === key);
/** The word that tells what else an object must have. */
const isKind = (path: InputPath) => ['shape', 'rule'].includes(String(path.at(-1)));

/**
 * Whether an issue can still be found with something else wrong: not where that has taken its place or has hidden what
 * an object must have, nor where a field is wanting that its own must fit.
 */
function isSeen({ code, path }: InputIssue, wrong: Path): boolean {
  const object = path.slice(0, -1);
  const needsOthers = code === 'conflict' || code === 'too-large';
  if (needsOthers && (isWithin(wrong, object) || isWithin(wrong, path))) return false;
  return !isWithin(path, isKind(wrong) ? wrong.slice(0, -1) : wrong);
}

/** What is read as one: a quantity, a name, a number, a corner. */
const isOne = (value: unknown) =>
  typeof value !== 'object' || isQuantity(value) || (Array.isArray(value) && typeof value[0] === 'number');
const fields = paths.filter(
  (path) => isOne(at(path)) && !isKind(path) && !path.some((_, i) => isOne(at(path.slice(0, i)))),
);

it('the floor of this test is one, and both take it', () => {
  expect(checkFloor(floor)).toEqual([]);
  expect(floorDocument.safeParse(floor).success).toBe(true);
});

it('every field is named when all of them are wrong', () => {
  const wrong = fields.reduce<unknown>((document, path) => replaced(document, path, [[]]), floor);
  expect(keys(checkFloor(wrong)).sort()).toEqual(fields.map((path) => path.join('.')).sort());
});

describe('two mistakes', () => {
  it('are both named where fields of one thing do not fit together', () => {
    const point = (temperature: number, time: number) => ({
      temperature: { value: temperature, unit: 'degC' },
      time: { value: time, unit: 'min' },
    });
    const points = [point(10, 60), point(10, 50), point(20, 40), point(15, 30)];
    const parts = ['A', 'A', 'A'].map((name) => ({ name, parts: 1 }));
    const spreadRate = { value: 3, unit: 'm2/l' };
    const wrong: [Path, unknown][] = [
      [['materials', 0, 'potLife'], { rule: 'table', points, between: 'linear' }],
      [['materials', 1, 'parts'], parts],
      [['materials', 2, 'parts'], [1e300, 1e-300].map((parts, i) => ({ name: `part ${i}`, parts }))],
      [
        ['coats', 0, 'amount'],
        { spreadRate, wetThickness: m(0.001), textureDepth: m(0.001), pulledTight: 1 },
      ],
      [['coats', 1, 'amount'], { pulledTight: true, fills: { low: 1, high: 2 } }],
    ];
    const document = wrong.reduce<unknown>((whole, [path, value]) => replaced(whole, path, value), floor);
    expect(keys(checkFloor(document)).sort()).toEqual([
      'coats.0.amount.pulledTight',
      'coats.0.amount.spreadRate',
      'coats.0.amount.textureDepth',
      'coats.1.amount.fills.high',
      'coats.1.amount.fills.low',
      'coats.1.amount.pulledTight',
      'coats.1.amount.wetThickness',
      'materials.0.potLife.points.1',
      'materials.0.potLife.points.3',
      'materials.1.parts.1.name',
      'materials.1.parts.2.name',
      'materials.2.parts',
    ]);
  });

  it('are both named, wherever they are', () => {
    const damage = fc
      .tuple(fc.constantFrom(...paths.slice(1)), fc.constantFrom(...WRONG))
      // Nothing can be left out of a list.
      .filter(([path, wrong]) => wrong !== undefined || !Array.isArray(at(path.slice(0, -1))));
    let both = 0;
    fc.assert(
      fc.property(damage, damage, ([one, wrong], [other, alsoWrong]) => {
        fc.pre(!isWithin(one, other) && !isWithin(other, one));
        const alone = [
          ...checkFloor(replaced(floor, one, wrong)).filter((issue) => isSeen(issue, other)),
          ...checkFloor(replaced(floor, other, alsoWrong)).filter((issue) => isSeen(issue, one)),
        ];
        const document = replaced(replaced(floor, one, wrong), other, alsoWrong);
        expect(keys(checkFloor(document))).toEqual(expect.arrayContaining(keys(alone)));
        expect(floorDocument.safeParse(document).success).toBe(attempt(planFloor, document).ok);
        if (alone.length > 1) both++;
      }),
      { numRuns: 400, seed: 7 },
    );
    expect(both).toBeGreaterThan(120);
  });
});
