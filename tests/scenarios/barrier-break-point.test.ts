/**
 * A bakery floor of 5964 ft²: a slab tested wet, a moisture barrier of 18 mil over a pore coat, with 2.5 h left before
 * dew. Expected figures were worked with exact fractions.
 */
import { expect, it } from 'vitest';
import { batchClock, batchSizes, largestBatch, stopPoint } from '../../src/batch/index.ts';
import { potLife, timeAt } from '../../src/cure/index.ts';
import { spreadRateForThickness, volumeNeeded } from '../../src/film/index.ts';
import * as moisture from '../../src/moisture/index.ts';
import { q } from '../support/quantity.ts';

const floorArea = q(84 * 52 + 40 * 30 + 22 * 18, 'ft2');
const holes = [82, 88, 91, 94, 86, 97, 89, 90];

it('asks for 8 holes of 2.4 in, of which the highest governs and not the mean', () => {
  expect(moisture.testCount({ method: 'in-slab humidity', floorArea }).count).toBe(8);
  const slabThickness = q(6, 'in');
  const depthIn = (unit: 'in' | 'mm') => moisture.probeDepth({ slabThickness, drying: 'one side', unit });
  expect(depthIn('in').value).toBeCloseTo(2.4, 12);
  expect(depthIn('mm').value).toBeCloseTo(60.96, 10);
  const tested = (limit: number) =>
    moisture.inSlabHumidityTest({
      floorArea,
      slabThickness,
      drying: 'one side',
      equilibration: q(24, 'h'),
      tests: holes.map((humidity) => ({
        relativeHumidity: q(humidity, '%'),
        depth: depthIn('in'),
        closedFor: q(24, 'h'),
      })),
      limit: q(limit, '%'),
    });
  expect(tested(85)).toMatchObject({
    verdict: 'fails',
    measured: q(97, '%'),
    governing: 5,
    usable: 8,
    testsNeeded: 8,
  });
  expect(holes.reduce((a, b) => a + b) / holes.length).toBe(89.625);
  // Needed, within its own limit, and so fit to coat: three answers.
  expect(
    moisture.barrierDecision({
      inSlabHumidity: {
        measured: tested(85).measured,
        verdict: tested(85).verdict,
        systemLimit: q(85, '%'),
        barrierLimit: q(99, '%'),
        barrierVerdict: tested(99).verdict,
      },
    }),
  ).toMatchObject({ barrierNeeded: 'yes', withinBarrierLimit: 'meets', fitToCoat: 'meets', by: 'barrier' });
});

it('gives off 9.64 lb, three times a usual limit, which is another method and never converted', () => {
  const dish = { gain: q(5.31, 'g'), exposedArea: q(64.06, 'in2'), exposure: q(65.5, 'h') };
  expect(moisture.emissionRate({ ...dish, unit: 'lb/1000ft2/24h' }).value).toBeCloseTo(9.64215881, 8);
  expect(moisture.emissionRate({ ...dish, unit: 'g/m2/24h' }).value).toBeCloseTo(47.0771426, 7);
});

const halving = (time: { value: number; unit: 'h' | 'min' }) =>
  ({
    rule: 'halving',
    time,
    temperature: q(73, 'degF'),
    step: q(18, 'deltaF'),
    from: q(50, 'degF'),
    to: q(90, 'degF'),
  }) as const;
const pot = potLife({
  rule: halving(q(25, 'min')),
  statedFor: q(2, 'usgal'),
  at: q(70, 'degF'),
  unit: 'min',
});
const pace = {
  potLife: pot.potLife,
  statedFor: q(2, 'usgal'),
  usableShare: q(70, '%'),
  mixTime: q(3, 'min'),
  carryTime: q(1, 'min'),
  placingRate: q(30, 'ft2/min'),
};

it('waits 3.5 h for the recoat at 64 °F and has 28 min of pot life at 70 °F', () => {
  const recoat = timeAt({ rule: halving(q(2.5, 'h')), at: q(64, 'degF'), unit: 'h' });
  expect(recoat.time.value).toBeCloseTo(3.53553391, 7);
  expect(pot.potLife.value).toBeCloseTo(28.0615512, 6);
});

it('covers a strip of 165 ft² with 2 gal, 37 batches one every 5.5 min', () => {
  const spread = spreadRateForThickness({ wetThickness: q(19, 'mil'), unit: 'ft2/usgal' });
  const largest = largestBatch({
    ...pace,
    spreadRate: spread,
    residue: q(2, '%'),
    strip: q(165, 'ft2'),
    measuringStep: q(0.05, 'usgal'),
    units: { volume: 'usgal', area: 'ft2', time: 'min' },
  });
  expect(largest.limitedBy).toBe('stated volume');
  expect(largest.area.value).toBeCloseTo(165.482456, 5);
  expect(largest.strips?.field.value).toBe(165);
  const sizes = batchSizes({
    total: q(5964, 'ft2'),
    largest: q(165, 'ft2'),
    division: 'full and rest',
    unit: 'ft2',
  });
  expect(sizes.count).toBe(37);
  const clock = batchClock({
    ...pace,
    area: q(5964, 'ft2'),
    volume: q((5964 / 165) * 2, 'usgal'),
    batchVolume: q(2, 'usgal'),
    division: 'full and rest',
    parts: [
      { name: 'A', parts: 1 },
      { name: 'B', parts: 1 },
    ],
    mixers: 1,
    crews: 1,
    units: { volume: 'usgal', area: 'ft2', time: 'min' },
  });
  expect(clock.batches.length).toBe(37);
  expect(clock.stagger.value).toBeCloseTo(5.5, 9);
  expect((sizes.count * clock.stagger.value) / 60).toBeCloseTo(3.39166667, 7);
  // Every batch fits: 4 min to mix and carry and 5.5 min to place, of 19.6 min.
  expect(clock.remedies).toEqual([]);
});

it('needs 72.83 gal with what stays in pails and tools', () => {
  const gross = volumeNeeded({
    area: q(5964, 'ft2'),
    wetThickness: q(18, 'mil'),
    textureDepth: q(1, 'mil'),
    residue: q(2, '%'),
    toolLoad: q(0.75, 'usgal'),
    unit: 'usgal',
  });
  expect(gross.value).toBeCloseTo(72.8301484, 5);
});

it('stops at the door of room A: 4500 ft² are in reach and 132 to spare', () => {
  const stop = stopPoint({
    timeLeft: q(2.5, 'h'),
    rate: q(30, 'ft2/min'),
    stops: [
      { name: 'door', area: q(4368, 'ft2') },
      { name: 'far wall', area: q(1596, 'ft2') },
    ],
    unit: 'ft2',
  });
  expect(stop.stop).toBe('door');
  expect(stop.reach.value).toBeCloseTo(4500, 6);
  expect(stop.spare.value).toBeCloseTo(132, 6);
});
