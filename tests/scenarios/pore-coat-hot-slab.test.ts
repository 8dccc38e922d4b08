/**
 * A showroom floor of 3054 ft², pore coat pulled tight by two trowel hands and reground, on a slab of 82 °F. Expected
 * figures were worked with exact fractions.
 */
import { describe, expect, it } from 'vitest';
import { batchClock, batchPace, batchSizes, largestBatch, poreCoatLots } from '../../src/batch/index.ts';
import { potLife } from '../../src/cure/index.ts';
import { spreadRate, wetThickness } from '../../src/film/index.ts';
import { splitByVolume } from '../../src/mix/index.ts';
import { q } from '../support/quantity.ts';

const area = q(3054, 'ft2');
const cup = q(20, 'usfloz');
const parts = [
  { name: 'A', parts: 1 },
  { name: 'B', parts: 1 },
];
const spread = spreadRate({ area: q(105, 'ft2'), volume: cup, unit: 'ft2/usgal' });
const gel = potLife({
  rule: {
    rule: 'halving',
    time: q(5, 'min'),
    temperature: q(73, 'degF'),
    step: q(18, 'deltaF'),
    from: q(50, 'degF'),
    to: q(90, 'degF'),
  },
  statedFor: cup,
  at: q(82, 'degF'),
  unit: 'min',
});
const pace = {
  potLife: gel.potLife,
  statedFor: cup,
  usableShare: q(75, '%'),
  mixTime: q(35, 's'),
  carryTime: q(30, 's'),
  placingRate: q(40, 'ft2/min'),
};
const units = { volume: 'usfloz', area: 'ft2', time: 'min' } as const;
const clockOf = (size: number) =>
  batchClock({
    ...pace,
    area,
    volume: q((3054 / 105) * 20, 'usfloz'),
    batchVolume: q(size, 'usfloz'),
    division: 'full and rest',
    parts,
    mixers: 1,
    crews: 2,
    units,
  });

describe('pore coat on a hot slab', () => {
  it('spreads 672 ft²/gal, an average of 2.387 mil', () => {
    expect(spread.value).toBeCloseTo(672, 9);
    expect(wetThickness({ spreadRate: spread, unit: 'mil' }).value).toBeCloseTo(2.38715278, 8);
  });

  it('takes 29 cups and a last one of 4 fl oz, 4.5625 gal in all', () => {
    const sizes = batchSizes({
      total: q((3054 / 105) * 20, 'usfloz'),
      largest: cup,
      division: 'full and rest',
      step: q(2, 'usfloz'),
      least: q(4, 'usfloz'),
      unit: 'usfloz',
    });
    expect([sizes.count - 1, sizes.lastToMix?.field.value]).toEqual([29, 4]);
    const byArea = batchSizes({
      total: area,
      largest: q(105, 'ft2'),
      division: 'full and rest',
      unit: 'ft2',
    });
    expect([byArea.count - 1, byArea.last.value]).toEqual([29, 9]);
    const mixed = q(((sizes.count - 1) * 20 + 4) / 128, 'usgal');
    expect(mixed.value).toBe(4.5625);
    const split = splitByVolume({ total: mixed, parts, unit: 'usgal' });
    expect(split.parts.map(({ volume }) => volume.value)).toEqual([2.28125, 2.28125]);
  });

  it('finds that the habit cup does not fit, and 10 fl oz do', () => {
    expect(gel.potLife.value).toBeCloseTo(3.53553391, 7);
    const largest = largestBatch({ ...pace, spreadRate: spread, measuringStep: q(2, 'usfloz'), units });
    expect(largest.volume.exact.value).toBeCloseTo(11.9490826, 6);
    expect(largest.area.value).toBeCloseTo(62.7327, 4);
    expect(largest.volume.field.value).toBe(10);
    expect(largest.usable.value).toBeCloseTo(2.65165043, 7);
    const habit = clockOf(20);
    expect(habit.cycle.value).toBeCloseTo(3.70833333, 7);
    expect(habit.remedies).toContain('smaller batch');
    const small = clockOf(10);
    expect(small.batches.length).toBe(59);
    expect(small.batches[0]?.area.value).toBeCloseTo(52.5, 9);
    expect(small.cycle.value).toBeCloseTo(2.39583333, 7);
    expect(small.stagger.value).toBeCloseTo(1.08333333, 7);
    expect(small.pacedBy).toBe('mixers');
    expect(small.remedies).toEqual([]);
  });

  it('places in two lots, so that the last strip is not too hard to regrind', () => {
    const paceWith = (mixers: number) =>
      batchPace({
        batchArea: q(52.5, 'ft2'),
        mixTime: pace.mixTime,
        carryTime: pace.carryTime,
        mixers,
        placingRate: pace.placingRate,
        crews: 2,
        units: { time: 'min', rate: 'ft2/min' },
      });
    const { rate } = paceWith(1);
    expect(rate.value).toBeCloseTo(48.4615385, 6);
    // A second mixer would leave the pace to the two hands, 0.65625 min for each batch.
    expect(paceWith(2)).toMatchObject({ stagger: q(0.65625, 'min'), pacedBy: 'crews' });
    const lots = poreCoatLots({
      area,
      placingRate: rate,
      regrindRate: q(900, 'ft2/h'),
      regrindReady: q(25, 'min'),
      tooHard: q(120, 'min'),
      units: { area: 'ft2', time: 'min' },
    });
    expect(lots.largestLot?.value).toBeCloseTo(2063.7931, 3);
    expect([lots.lots, lots.lotArea.value]).toEqual([2, 1527]);
    expect(lots.lastWait.value).toBeCloseTo(95.2904762, 6);
    expect(lots.lastWaitInOneGo.value).toBeCloseTo(165.580952, 5);
  });
});
