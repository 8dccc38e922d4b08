/** Sand and what it builds: functions against each other, and fills that cannot be. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as aggregate from '../../src/aggregate/index.ts';
import { attempt } from '../../src/core/attempt.ts';
import { between } from '../../src/core/between.ts';

const kg = (value: number) => ({ value, unit: 'kg' as const });
const kgm3 = (value: number) => ({ value, unit: 'kg/m3' as const });
const litre = (value: number) => ({ value, unit: 'l' as const });
const pct = (value: number) => ({ value, unit: '%' as const });
const m2 = { value: 10, unit: 'm2' as const };
const um = (value: number) => ({ value, unit: 'um' as const });
const onFloor = (value: number) => ({ value, unit: 'kg/m2' as const });
const density = fc.double({ min: 800, max: 2600, noNaN: true });

describe('one sand in several figures', () => {
  it('a mortar whose resin just fills the voids is filled, whatever the sand', () => {
    fc.assert(
      fc.property(density, fc.double({ min: 1, max: 100, noNaN: true }), (bulk, mass) => {
        const sand = { bulkDensity: kgm3(bulk), solidDensity: kgm3(2650) };
        const binder = aggregate.binderForVoids({ mass: kg(mass), ...sand, unit: 'l' });
        const mortar = aggregate.mortarYield({ binder, sand: kg(mass), ...sand, unit: 'l' });
        expect(mortar.state).toBe('filled');
        expect(mortar.volume.value / mortar.bulkSand.value).toBeCloseTo(1, 9);
        expect(mortar.cautions.map(({ code }) => code)).toEqual(['thrown-sand-dust']);
        const mix = aggregate.mixVolume({ binder, sand: kg(mass), solidDensity: kgm3(2650), unit: 'l' });
        expect(mix.value / mortar.voidFree.value).toBeCloseTo(1, 12);
        const { voidShare, bulk: heap } = aggregate.aggregateVolumes({ mass: kg(mass), ...sand, unit: 'l' });
        expect((heap.value * voidShare.value) / 100).toBeCloseTo(binder.value, 9);
      }),
      { seed: 51 },
    );
  });

  it('a fill without voids has the density of what is in it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (ratio) => {
        const solidDensity = kgm3(
          aggregate.voidFreeDensity({
            binder: kg(1),
            binderDensity: kgm3(1100),
            sand: kg(ratio),
            solidDensity: kgm3(2650),
            unit: 'kg/m3',
          }).value,
        );
        const full = aggregate.voids({ bulkDensity: solidDensity, solidDensity, unit: '%' });
        expect(full.value).toBe(0);
        const tenth = kgm3(solidDensity.value * 0.9);
        expect(aggregate.voids({ bulkDensity: tenth, solidDensity, unit: '%' }).value).toBeCloseTo(10, 9);
      }),
      { seed: 52 },
    );
  });

  it('thrown is kept and swept, and the layer is resin and grains', () => {
    const cast = aggregate.broadcast({
      area: m2,
      thrown: between(4, 5, 'kg/m2'),
      retainedShare: between(60, 75, '%'),
      resinThickness: between(300, 500, 'um'),
      solidDensity: kgm3(2650),
      unit: 'kg',
      thicknessUnit: 'um',
    });
    expect(cast.retained.likely.value + cast.swept.likely.value).toBeCloseTo(cast.thrown.likely.value, 9);
    expect(cast.build.likely.value).toBeCloseTo(400 + cast.sandThickness.likely.value, 9);
    expect(cast.sandShare.low.value).toBeLessThan(cast.sandShare.high.value);
    expect(cast.swept.low.value).toBeCloseTo(40 * 0.25, 9);
    expect(cast.swept.high.value).toBeCloseTo(50 * 0.4, 9);
    expect(cast.reusable).toBeUndefined();
    expect(cast.basis[0]?.assumption).toContain('middle');
    const layer = aggregate.buildUp({
      layers: [{ dryThickness: um(400), retained: onFloor(4.5 * 0.675), solidDensity: kgm3(2650) }],
      unit: 'um',
    });
    expect(layer.thickness.likely?.value).toBeCloseTo(cast.build.likely.value, 9);
  });

  it('no floor keeps more than was thrown on it, wherever its range ends', () => {
    const overlapping = (retained: number) =>
      aggregate.broadcast({
        area: m2,
        thrown: between(0.8, 1.2, 'lb/ft2'),
        retained: between(0.7, retained, 'lb/ft2'),
        screenLoss: pct(10),
        resinThickness: um(500),
        solidDensity: kgm3(2650),
        unit: 'kg',
        thicknessUnit: 'um',
      });
    for (const most of [0.8, 1, 1.2, 1.4]) {
      const { thrown, retained, swept, reusable } = overlapping(most);
      expect(swept.low.value).toBe(0);
      expect(reusable?.low.value).toBe(0);
      expect(swept.high.value).toBeCloseTo((thrown.high.value * 0.5) / 1.2, 9);
      expect(retained.high.value).toBeCloseTo((thrown.high.value * Math.min(most, 1.2)) / 1.2, 9);
    }
  });

  it('keeps likely no more than is likely thrown, where both are stated', () => {
    const given = {
      area: m2,
      thrown: between(3, 6, 'kg/m2', { likely: 4 }),
      resinThickness: um(2500),
      solidDensity: kgm3(2650),
      unit: 'kg',
      thicknessUnit: 'um',
    } as const;
    const issueOf = (retained: aggregate.BroadcastInput['retained']) => {
      const result = attempt(aggregate.broadcast, { ...given, retained });
      return result.ok ? 'answered' : [result.issues[0].code, ...result.issues[0].path];
    };
    expect(issueOf(between(3, 5, 'kg/m2', { likely: 4.5 }))).toEqual(['conflict', 'retained']);
    expect(issueOf(onFloor(4.5))).toEqual(['conflict', 'retained']);
    expect(issueOf(between(3, 5, 'kg/m2', { likely: 4 }))).toBe('answered');
    expect(issueOf(onFloor(4))).toBe('answered');
    expect(issueOf(between(3, 5, 'kg/m2'))).toBe('answered');
  });

  it('a broadcast with much resin warns of dust only', () => {
    const { cautions } = aggregate.broadcast({
      area: m2,
      thrown: onFloor(1),
      retained: onFloor(1),
      resinThickness: um(1000),
      solidDensity: kgm3(2650),
      unit: 'kg',
      thicknessUnit: 'um',
    });
    expect(cautions.map(({ code, severity }) => [code, severity])).toEqual([['thrown-sand-dust', 'danger']]);
  });

  it('5 % of air in a batch of a cubic yard is 1.35 ft³', () => {
    // Cement, water and sand of the batch as they are without air: navedtra-14071.
    const given = {
      binder: { value: 27 * 0.95 - 610 / 196.56, unit: 'ft3' },
      sand: { value: 610, unit: 'lb' },
      solidDensity: { value: 196.56, unit: 'lb/ft3' },
      unit: 'ft3',
    } as const;
    const batch = aggregate.mixVolume({ ...given, air: pct(5) });
    expect(batch.value).toBeCloseTo(27, 11);
    expect(batch.value - aggregate.mixVolume(given).value).toBeCloseTo(1.35, 11);
  });

  it('five parts of sand by mass leave a mortar a third of resin by volume', () => {
    // The published least of 5 : 1, ufgs-03930, with 1.1 and 2.65 g/ml.
    const binder = aggregate.volumeOfMass({ mass: kg(1), density: kgm3(1100), unit: 'l' });
    const mortar = aggregate.mixVolume({ binder, sand: kg(5), solidDensity: kgm3(2650), unit: 'l' });
    expect(binder.value / mortar.value).toBeCloseTo(0.32515337423312884, 9);
  });

  it('the water in damp sand is what drying took out', () => {
    const moisture = aggregate.sandMoisture({ wetMass: kg(103), dryMass: kg(100), unit: '%' });
    expect(aggregate.waterInSand({ sand: kg(103), moisture, unit: 'kg' }).value).toBeCloseTo(3, 12);
  });

  it('dry sand meets its limit, and a scale that errs may leave it open', () => {
    const given = { wetMass: kg(1.001), dryMass: kg(1) };
    const judged = (scaleError: number) =>
      aggregate.sandDryness({ ...given, limit: pct(0.2), scaleError: kg(scaleError) });
    expect(judged(0).verdict).toBe('meets');
    expect(judged(0).cautions).toEqual([]);
    expect(judged(0.001).verdict).toBe('undecided');
    expect(judged(0.001).cautions).toMatchObject([{ code: 'damp-sand' }]);
  });

  it('layers without a likely value have none together', () => {
    const floor = aggregate.buildUp({
      layers: [
        { dryThickness: between(1, 2, 'mm') },
        { dryThickness: um(100), retained: between(1, 2, 'kg/m2'), solidDensity: kgm3(2650) },
      ],
      nominal: { value: 2, unit: 'mm' },
      unit: 'mm',
    });
    expect(floor.thickness).not.toHaveProperty('likely');
    expect(floor.layers.map(({ name }) => name)).toEqual(['', '']);
    // Judged at its least: nobody said where in the range it lies.
    expect(floor.shareOfNominal?.value).toBeCloseTo(100 * (1.1 / 2 + 1 / 2.65 / 2), 9);
    const exact = aggregate.buildUp({
      layers: [{ dryThickness: um(500) }],
      nominal: um(500),
      unit: 'um',
    });
    expect(exact.cautions).toEqual([]);
  });
});

describe('what cannot be', () => {
  const heavy = { bulkDensity: kgm3(2700), solidDensity: kgm3(2650) };
  const cast = {
    area: m2,
    thrown: onFloor(4),
    resinThickness: um(300),
    solidDensity: kgm3(2650),
    unit: 'kg',
    thicknessUnit: 'um',
  };
  it.each([
    [
      'a measure lighter full than empty',
      aggregate.bulkDensity,
      { fullMass: kg(1), emptyMass: kg(1), volume: litre(1), unit: 'kg/l' },
      ['conflict', 'emptyMass'],
    ],
    ['a heap denser than its grains', aggregate.voids, { ...heavy, unit: '%' }, ['conflict', 'bulkDensity']],
    [
      'its volumes',
      aggregate.aggregateVolumes,
      { mass: kg(1), ...heavy, unit: 'l' },
      ['conflict', 'bulkDensity'],
    ],
    [
      'its voids',
      aggregate.binderForVoids,
      { mass: kg(1), ...heavy, unit: 'l' },
      ['conflict', 'bulkDensity'],
    ],
    [
      'its mortar',
      aggregate.mortarYield,
      { binder: litre(1), sand: kg(1), ...heavy, unit: 'l' },
      ['conflict', 'bulkDensity'],
    ],
    [
      'its seal',
      aggregate.sealThickness,
      { retained: onFloor(1), ...heavy, resinThickness: um(1), unit: 'um' },
      ['conflict', 'bulkDensity'],
    ],
    [
      'a mortar of air',
      aggregate.mixVolume,
      { binder: litre(1), sand: kg(1), solidDensity: kgm3(2650), air: pct(100), unit: 'l' },
      ['out-of-range', 'air'],
    ],
    [
      'more kept than thrown',
      aggregate.broadcast,
      { ...cast, retained: onFloor(5) },
      ['conflict', 'retained'],
    ],
    [
      'surely more kept than thrown',
      aggregate.broadcast,
      { ...cast, thrown: between(3, 4, 'kg/m2'), retained: between(4.1, 5, 'kg/m2') },
      ['conflict', 'retained'],
    ],
    [
      'more kept than all',
      aggregate.broadcast,
      { ...cast, retainedShare: pct(101) },
      ['out-of-range', 'retainedShare'],
    ],
    [
      'kept twice',
      aggregate.broadcast,
      { ...cast, retained: onFloor(3), retainedShare: pct(75) },
      ['conflict', 'retainedShare'],
    ],
    ['kept how much?', aggregate.broadcast, cast, ['missing', 'retained']],
    [
      'no unit of thickness',
      aggregate.broadcast,
      { ...cast, retained: onFloor(3), thicknessUnit: 'kg' },
      ['wrong-unit', 'thicknessUnit'],
    ],
    [
      'sand that dries heavier',
      aggregate.sandMoisture,
      { wetMass: kg(1), dryMass: kg(1.1), unit: '%' },
      ['conflict', 'dryMass'],
    ],
    [
      'the same, judged',
      aggregate.sandDryness,
      { wetMass: kg(1), dryMass: kg(1.1), limit: pct(1) },
      ['conflict', 'dryMass'],
    ],
    [
      'a least lift above the greatest',
      aggregate.lifts,
      { thickness: um(9), greatestLift: um(1), leastLift: um(2), unit: 'um' },
      ['conflict', 'leastLift'],
    ],
    [
      'lifts beyond counting',
      aggregate.lifts,
      { thickness: { value: 1e300, unit: 'm' }, greatestLift: um(1e-300), unit: 'm' },
      ['too-large', 'thickness'],
    ],
    ['no layers', aggregate.buildUp, { layers: [], unit: 'mm' }, ['out-of-range', 'layers']],
    [
      'a layer of nothing',
      aggregate.buildUp,
      { layers: [{}], unit: 'mm' },
      ['missing', 'layers.0.dryThickness'],
    ],
    ['a layer that is none', aggregate.buildUp, { layers: [3], unit: 'mm' }, ['wrong-type', 'layers.0']],
    [
      'a density of no sand',
      aggregate.buildUp,
      { layers: [{ dryThickness: um(1), solidDensity: kgm3(2650) }], unit: 'mm' },
      ['conflict', 'layers.0.solidDensity'],
    ],
    [
      'sand of no density',
      aggregate.buildUp,
      { layers: [{ retained: onFloor(1) }], unit: 'mm' },
      ['missing', 'layers.0.solidDensity'],
    ],
    [
      'a name in numbers',
      aggregate.buildUp,
      { layers: [{ name: 3, dryThickness: um(1) }], unit: 'mm' },
      ['wrong-type', 'layers.0.name'],
    ],
  ])('%s', (_, run, input, issue) => {
    const result = attempt(run as (input: never) => unknown, input);
    expect(result.ok ? undefined : [result.issues[0].code, result.issues[0].path.join('.')]).toEqual(issue);
  });
});

it.each([null, 0, ''])('a nominal thickness of %j is refused and not taken for nothing', (nominal) => {
  const floor = { layers: [{ dryThickness: um(500) }], nominal, unit: 'um' };
  const result = attempt(aggregate.buildUp, floor as never);
  expect(result.ok ? undefined : result.issues[0]).toMatchObject({
    code: 'not-a-quantity',
    path: ['nominal'],
  });
});

it('a scale taken as exact leaves no uncertainty of round-off', () => {
  const dry = { wetMass: kg(0.5), dryMass: kg(0.4982), limit: pct(0.2) };
  expect(aggregate.sandDryness(dry)).not.toHaveProperty('uncertainty');
  expect(aggregate.sandDryness({ ...dry, scaleError: kg(0) })).not.toHaveProperty('uncertainty');
});
