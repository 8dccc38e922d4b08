import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { cautionText } from '../../src/messages/index.ts';
import type { Coat } from '../../src/plan/FloorDocument.ts';
import { planFloor } from '../../src/plan/planFloor.ts';
import { convert, sum } from '../../src/units/index.ts';
import { floors } from '../support/floors.ts';
import { functions, sources } from '../support/library.ts';
import { replaced } from '../support/values.ts';

const [, floor] = floors[0] as (typeof floors)[number];

describe.each(floors)('%s', (_, document) => {
  const plan = planFloor(document);

  it('measures, mixes, buys and batches without losing anything on the way', () => {
    const zones = sum({ quantities: plan.zones.map((zone) => zone.takeOff.net), unit: 'm2' });
    expect(convert({ quantity: plan.area, unit: 'm2' }).value).toBeCloseTo(zones.value, 9);
    for (const { amount, split, batches } of plan.coats) {
      const { unit } = amount.volume.likely;
      const parts = sum({ quantities: split.parts.map((part) => part.volume), unit });
      expect(parts.value).toBeCloseTo(amount.volume.likely.value, 9);
      const poured = sum({ quantities: batches?.clock?.batches.map((batch) => batch.volume) ?? [], unit });
      expect(poured.value).toBeCloseTo(amount.volume.likely.value, 9);
    }
    for (const { need, packs } of plan.purchases) {
      expect(packs.bought.value).toBeGreaterThanOrEqual(need.high.value);
    }
  });

  it('has words for every caution, without all-clear', () => {
    expect(plan.cautions.length).toBeGreaterThan(5);
    for (const caution of plan.cautions) {
      const text = cautionText(caution);
      expect(text).not.toMatch(/\{|undefined|\[object/);
      expect(text.replace(/safety data sheets?/g, '')).not.toMatch(/\b(safe|harmless|no risk|all clear)\b/i);
      expect(sources).toHaveProperty([caution.source]);
      expect(caution.where.length).toBeGreaterThan(0);
    }
  });

  it('names functions and sources that exist wherever it says where a figure comes from', () => {
    const bases = [...JSON.stringify(plan).matchAll(/"function":"([^"]+)".*?"source":"([^"]+)"/g)];
    expect(bases.length).toBeGreaterThan(10);
    for (const [, name = '', source = ''] of bases) {
      expect([...functions.keys()]).toContain(name);
      expect(sources).toHaveProperty([source]);
    }
  });

  it('is plain data: the same after a journey as JSON, and its document untouched', () => {
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    expect(planFloor(JSON.parse(JSON.stringify(document)))).toEqual(plan);
  });
});

describe('a broken document', () => {
  it('is refused with every issue, each under its path', () => {
    let broken: unknown = replaced(floor, ['zones', 0, 'add', 0, 'corners', 'points', 2], ['12', 4]);
    broken = replaced(broken, ['materials', 1, 'pack', 'unit'], 'gal');
    broken = replaced(broken, ['coats', 2, 'placingRate'], undefined);
    broken = replaced(broken, ['coats', 3, 'material'], 'no such resin');
    broken = replaced(broken, ['crew', 'mixers'], 0);
    broken = replaced(broken, ['readings', 'relativeHumidity', 'value'], 120);
    const result = attempt(planFloor, broken);
    expect(result.ok ? [] : result.issues.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['wrong-type', 'zones.0.add.0.corners.points.2'],
      ['wrong-unit', 'materials.1.pack'],
      ['missing', 'coats.2.placingRate'],
      ['out-of-range', 'crew.mixers'],
      ['out-of-range', 'readings.relativeHumidity'],
      ['conflict', 'coats.3.material'],
    ]);
    expect(result.ok ? [] : result.issues.map((issue) => issue.function)).toEqual(Array(6).fill('planFloor'));
  });
});

it('what only the arithmetic shows is laid to each room, coat or material that shows it', () => {
  const huge = { value: 1e307, unit: 'm3' };
  const where = (document: unknown) => {
    const result = attempt(planFloor, document);
    return result.ok ? [] : result.issues.map(({ function: by, path }) => [by, path.join('.')]);
  };
  const two = [1, 3].reduce<unknown>(
    (document, i) => replaced(document, ['coats', i, 'amount', 'fills'], huge),
    floor,
  );
  expect(where(two)).toEqual([
    ['planFloor', 'coats.1'],
    ['planFloor', 'coats.3'],
  ]);
  const wide = replaced(floor, ['units', 'area'], 'mm2');
  const side = { value: 1e152, unit: 'm' };
  expect(
    where(replaced(wide, ['zones', 0, 'add', 0], { shape: 'rectangle', length: side, width: side })),
  ).toEqual([['planFloor', 'zones.0']]);
  expect(where(replaced(floor, ['materials', 0, 'spare'], { value: 1e308, unit: 'fraction' }))).toEqual([
    ['planFloor', 'materials.0'],
  ]);
});

it('a document that goes on without end is refused', () => {
  let deep: unknown = [];
  for (let i = 0; i < 20_000; i++) deep = [deep];
  expect(attempt(planFloor, deep).ok).toBe(false);
  expect(attempt(planFloor, { ...floor, extra: deep }).ok).toBe(false);
  const round: Record<string, unknown> = { ...floor };
  Object.assign(round, { readings: { ...floor.readings, air: { ...floor.readings.air, more: round } } });
  const result = attempt(planFloor, round);
  expect(result.ok ? [] : result.issues.map(({ path }) => path.join('.'))).toEqual(['readings.air.more']);
});

describe('what hurts whoever mixes and lays', () => {
  const dangers = (document: unknown) =>
    planFloor(document)
      .cautions.filter(({ severity }) => severity === 'danger')
      .map(({ code }) => code);
  const product = (one: unknown) => replaced(floor, ['materials', 0, 'product'], one);

  it('is named for the class of each material', () => {
    expect(dangers(product('polyurea'))).toContain('isocyanate-in-the-air');
    expect(dangers(product('methacrylate'))).toContain('peroxide-hardener');
    expect(dangers(product('epoxy'))).not.toContain('product-not-named');
  });

  it('is called unknown where a material names no class', () => {
    const plan = planFloor(product(undefined));
    const unknown = plan.cautions.filter(({ code }) => code === 'product-not-named');
    expect(unknown.map(({ params, where }) => [params.material, where])).toEqual([
      ['barrier epoxy', ['pore coat, pulled tight', 'moisture barrier']],
    ]);
  });

  it('is named without batches as well', () => {
    const cold = replaced(product(undefined), ['readings', 'material'], { value: 40, unit: 'degF' });
    expect(dangers(cold)).toEqual(
      expect.arrayContaining(['product-not-named', 'skin-and-eyes', 'mixed-resin-heats']),
    );
  });

  it('is refused for a class that is none', () => {
    const result = attempt(planFloor, product('toString'));
    expect(result.ok ? [] : result.issues.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['out-of-range', 'materials.0.product'],
    ]);
  });
});

describe('a bad floor is no error', () => {
  it('plans no batches where the instructions give no pot life', () => {
    const cold = planFloor(replaced(floor, ['readings', 'material'], { value: 40, unit: 'degF' }));
    expect(cold.coats.every((coat) => coat.batches === undefined)).toBe(true);
    expect(cold.cautions.map(({ code }) => code)).toContain('no-pot-life-at-this-temperature');
  });

  it('plans no batch where the stand time outlasts the pot life, and says that and what helps', () => {
    const stood = planFloor(replaced(floor, ['materials', 0, 'induction'], { value: 3, unit: 'h' }));
    const codes = stood.cautions.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['stand-time-outlasts-pot-life', 'no-time-to-place']));
    expect(codes).not.toContain('no-pot-life-at-this-temperature');
    const batches = stood.coats.find(({ material }) => material === floor.materials[0]?.name)?.batches;
    expect(batches?.potLife.workingTime.value).toBe(0);
    expect(batches?.clock).toBeUndefined();
    expect(batches?.largest.remedies).not.toEqual([]);
  });

  it('names the heat of a pail once for a pot life, in whatever unit it is asked for', () => {
    const hours = planFloor(replaced(floor, ['units', 'time'], 'h'));
    const lives = hours.coats.map(({ batches }) => JSON.stringify(batches?.potLife.potLife));
    const heat = hours.cautions.filter(({ code }) => code === 'heat-in-the-pail');
    expect(heat.length).toBe(new Set(lives).size);
  });

  it('says what helps where no batch is down in time', () => {
    const slow = planFloor(replaced(floor, ['crew', 'mixTime'], { value: 25, unit: 'min' }));
    const [first] = slow.coats;
    expect(first?.batches?.clock).toBeUndefined();
    expect(first?.batches?.largest.remedies).not.toEqual([]);
  });

  it('says so where the measure is too coarse for any batch', () => {
    const coarse = planFloor(replaced(floor, ['crew', 'measuringStep'], { value: 50, unit: 'l' }));
    expect(coarse.coats[0]?.batches?.clock).toBeUndefined();
    expect(coarse.cautions.map(({ code }) => code)).toContain('batch-below-measuring-step');
  });

  it('fails a slab below the margin', () => {
    const wet = planFloor(replaced(floor, ['readings', 'surface'], { value: 56, unit: 'degF' }));
    expect(wet.dewPointMargin.verdict).toBe('fails');
    expect(wet.cautions.map(({ code }) => code)).toContain('condensation');
  });
});

describe('coats looked at together', () => {
  const found = (document: unknown) =>
    planFloor(document)
      .cautions.filter(({ code }) => ['zone-without-coat', 'coat-before-one-beneath'].includes(code))
      .map(({ code, params, where }) => [code, params.beneath ?? params.zone, where.join()]);
  const [first, second] = floor.coats as [Coat, Coat];
  const [one, other] = floor.zones.map(({ name }) => name) as [string, string];
  const laid = (coats: readonly Coat[]) => found({ ...floor, coats });
  const start = '2027-04-12T07:30:00-05:00';

  it('raise nothing where each lies on one that is down', () => {
    expect(found(floor)).toEqual([]);
  });

  it('name the one beneath that is not down when the next is begun, whatever the offset of its start', () => {
    const early = ['coat-before-one-beneath', first.name, second.name];
    expect(
      laid([
        { ...first, start },
        { ...second, start },
      ]),
    ).toEqual([early]);
    expect(
      laid([
        { ...first, start },
        { ...second, start: '2027-04-12T14:31:00+02:00' },
      ]),
    ).toEqual([early]);
    expect(
      laid([
        { ...first, start },
        { ...second, start: '2027-04-12T14:29:00-05:00' },
      ]),
    ).toEqual([]);
  });

  it('say nothing of order where no start is known, or where they share no room', () => {
    expect(
      laid([
        { ...first, start: undefined },
        { ...second, start },
      ]),
    ).toEqual([]);
    expect(
      laid([
        { ...first, start, zones: [one] },
        { ...second, start, zones: [other] },
      ]),
    ).toEqual([]);
  });

  it('name a room that none of them covers', () => {
    expect(laid([{ ...first, zones: [one] }])).toEqual([['zone-without-coat', other, other]]);
  });
});
