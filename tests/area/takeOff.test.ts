/** A take-off: what is wrong with a sketch is said all at once, and edges are never guessed. */
import { describe, expect, it } from 'vitest';
import { takeOff } from '../../src/area/index.ts';
import { attempt } from '../../src/core/attempt.ts';

const m = (value: number) => ({ value, unit: 'm' as const });
const hall = { shape: 'rectangle', name: 'hall', length: m(10), width: m(5) } as const;
const issueOf = (input: unknown) => {
  const result = attempt(takeOff, input);
  return result.ok ? [] : result.issues.map(({ code, path }) => [code, path.join('.')]);
};

describe('a sketch with mistakes', () => {
  it('names all of them', () => {
    const input = {
      add: [
        hall,
        { shape: 'circle' },
        { shape: 'hexagon', side: m(1) },
        { ...hall, widht: m(3) },
        { ...hall, count: 0 },
        null,
      ],
      deduct: [{ ...hall, length: m(-1) }, 7, undefined],
      unit: 'm2',
    };
    expect(issueOf(input)).toEqual([
      ['missing', 'add.1.diameter'],
      ['out-of-range', 'add.2.shape'],
      ['unknown-field', 'add.3.widht'],
      ['out-of-range', 'add.4.count'],
      ['wrong-type', 'add.5'],
      ['out-of-range', 'deduct.0.length'],
      ['wrong-type', 'deduct.1'],
      ['missing', 'deduct.2'],
    ]);
  });

  it.each([
    ['nothing to add', { add: [], unit: 'm2' }, ['out-of-range', 'add']],
    ['no list', { add: hall, unit: 'm2' }, ['wrong-type', 'add']],
    ['no pieces', { unit: 'm2' }, ['missing', 'add']],
    ['no list of deductions', { add: [hall], deduct: 'none', unit: 'm2' }, ['wrong-type', 'deduct']],
    [
      'more deducted than there is',
      { add: [hall], deduct: [hall, hall], unit: 'm2' },
      ['conflict', 'deduct'],
    ],
    ['a name that is none', { add: [{ ...hall, name: 3 }], unit: 'm2' }, ['wrong-type', 'add.0.name']],
    [
      'more open than the outline',
      { add: [{ ...hall, open: m(31) }], unit: 'm2' },
      ['conflict', 'add.0.open'],
    ],
    [
      'a round bay more open than its arc and its chord',
      { add: [{ shape: 'segment', chord: m(2), rise: m(1), open: m(5.2) }], unit: 'm2' },
      ['conflict', 'add.0.open'],
    ],
    [
      'a slope of a stair',
      { add: [{ shape: 'wall', length: m(1), height: m(1), slope: { value: 1, unit: '%' } }], unit: 'm2' },
      ['unknown-field', 'add.0.slope'],
    ],
    ['no slope', { add: [{ ...hall, slope: null }], unit: 'm2' }, ['not-a-quantity', 'add.0.slope']],
    [
      'crossing corners',
      {
        add: [
          {
            shape: 'polygon',
            corners: {
              unit: 'm',
              points: [
                [0, 0],
                [1, 1],
                [1, 0],
                [0, 1],
              ],
            },
          },
        ],
        unit: 'm2',
      },
      ['conflict', 'add.0.corners'],
    ],
  ])('%s', (_, input, issue) => {
    expect(issueOf(input)).toEqual([issue]);
  });
});

describe('deductions', () => {
  const column = { shape: 'rectangle', name: 'column', length: m(0.5), width: m(0.5), count: 4 } as const;
  it('are all made where no size is stated', () => {
    const { net, deducted, leftIn, items } = takeOff({ add: [hall], deduct: [column], unit: 'm2' });
    expect([net.value, deducted.value, leftIn.value]).toEqual([49, 1, 0]);
    expect(items[1]).toMatchObject({ name: 'column', count: 4, treatment: 'deducted' });
  });

  it('are judged piece by piece, in the unit in which the size was agreed', () => {
    const { net, cautions } = takeOff({
      add: [hall],
      deduct: [column],
      deductFrom: { value: 10, unit: 'ft2' },
      unit: 'm2',
    });
    expect(net.value).toBe(50);
    expect(cautions[0]).toMatchObject({ code: 'deduction-left-in', params: { name: 'column' } });
  });

  it('are told with their reason', () => {
    const pit = { shape: 'rectangle', name: 'pit', length: m(2), width: m(1) } as const;
    const told = (deductFrom?: { value: number; unit: 'm2' }) =>
      takeOff({ add: [hall], deduct: [pit, column], deductFrom, unit: 'm2' }).items.map(
        ({ treatment, reason }) => [treatment, reason],
      );
    expect(told({ value: 2, unit: 'm2' })).toEqual([
      ['added', undefined],
      ['deducted', 'at-least-deduct-from'],
      ['left-in', 'below-deduct-from'],
    ]);
    expect(told()).toEqual([
      ['added', undefined],
      ['deducted', 'no-deduct-from'],
      ['deducted', 'no-deduct-from'],
    ]);
  });

  it('leave edges to be cut in, whether deducted or left in', () => {
    const left = takeOff({ add: [hall], deduct: [column], deductFrom: { value: 1, unit: 'm2' }, unit: 'm2' });
    const made = takeOff({ add: [hall], deduct: [column], unit: 'm2' });
    expect(left.perimeter?.metric.value).toBe(30);
    expect(left.edges?.metric.value).toBe(38);
    expect(made.edges).toEqual(left.edges);
    expect(made.edges?.us.value).toBeCloseTo(38 / 0.3048, 9);
  });
});

describe('edges', () => {
  it('are not answered where a piece does not tell its outline', () => {
    const triangle = { shape: 'triangle', base: m(3), height: m(4) } as const;
    const open = takeOff({ add: [hall, triangle], unit: 'm2' });
    expect(open.perimeter).toBeUndefined();
    expect(open.edges).toBeUndefined();
    expect(open.cautions).toMatchObject([{ code: 'outline-unknown', params: { name: 'triangle' } }]);
    const known = takeOff({ add: [hall, { ...triangle, outline: m(12) }], unit: 'm2' });
    expect(known.perimeter?.metric.value).toBe(42);
    expect(known.cautions).toMatchObject([{ code: 'edges-of-each-piece', params: { pieces: 2 } }]);
  });

  it('are missing as a perimeter where nothing lies flat', () => {
    const wall = { shape: 'wall', length: m(10), height: m(1) } as const;
    expect(takeOff({ add: [wall], unit: 'm2' }).perimeter).toBeUndefined();
  });

  it('run along both ends of the steps and both sides of the landings of a stair', () => {
    const stair = { shape: 'stair', steps: 10, tread: m(0.25), riser: m(0.15), width: m(1) } as const;
    const edges = (landings: object) =>
      takeOff({ add: [{ ...stair, ...landings }], unit: 'm2' }).edges?.metric;
    expect(edges({})?.value).toBeCloseTo(8, 12);
    expect(edges({ landings: 2, landing: m(1.5) })?.value).toBeCloseTo(14, 12);
    expect(issueOf({ add: [{ ...stair, landings: 2 }], unit: 'm2' })).toEqual([['missing', 'add.0.landing']]);
    expect(issueOf({ add: [{ ...stair, landing: m(2) }], unit: 'm2' })).toEqual([
      ['missing', 'add.0.landings'],
    ]);
  });

  it.each([
    ['nothing is said', {}, Math.PI],
    ['its chord is said to be open', { open: m(2) }, Math.PI],
    ['a wall stands on its chord', { open: m(0) }, Math.PI + 2],
    ['a door stands in that wall', { open: m(0.9) }, Math.PI + 1.1],
    ['its outline was measured', { outline: m(3.1) }, 3.1],
    ['its outline was measured, with its open part', { outline: m(5.1), open: m(2) }, 3.1],
  ])('run along a round bay where %s', (_, said, edge_m) => {
    const bay = { shape: 'segment', chord: m(2), rise: m(1), ...said } as const;
    expect(takeOff({ add: [bay], unit: 'm2' }).perimeter?.metric.value).toBeCloseTo(edge_m, 12);
  });

  it('are no edges where pieces join', () => {
    const joined = takeOff({
      add: [
        { ...hall, open: m(5) },
        { ...hall, open: m(5) },
      ],
      unit: 'm2',
    });
    expect(joined.perimeter?.metric.value).toBe(50);
  });
});
