/**
 * A filling hall of 255.68 m², urethane-cement slurry by the kit, on a warm and on a hot day. Expected figures were
 * worked with exact fractions.
 */
import { expect, it } from 'vitest';
import { batchPace, batchSizes, mixersNeeded, wetEdge } from '../../src/batch/index.ts';
import { timeAt } from '../../src/cure/index.ts';
import { q } from '../support/quantity.ts';

const kit = q(29.5 / 1.96, 'l');
const kitArea = q(29.5 / 1.96 / 5, 'm2');
const times = { mixTime: q(120, 's'), carryTime: q(60, 's') };
const openAt = (celsius: number) =>
  timeAt({
    rule: {
      rule: 'halving',
      time: q(12, 'min'),
      temperature: q(20, 'degC'),
      step: q(10, 'deltaC'),
      from: q(10, 'degC'),
      to: q(30, 'degC'),
    },
    at: q(celsius, 'degC'),
    unit: 'min',
  }).time;
const pace = batchPace({
  batchArea: kitArea,
  ...times,
  mixers: 2,
  units: { time: 'min', rate: 'm2/min' },
});
const edgeAt = (celsius: number) =>
  wetEdge({
    frontWidth: q(11.2, 'm'),
    stripDepth: q(1, 'm'),
    rate: pace.rate,
    openTime: openAt(celsius),
    margin: q(2, 'min'),
    units: { time: 'min', length: 'm', rate: 'm2/min' },
  });

/** Kits for the film and a profile that deep, with the keyways and 3 % of waste. */
const kitsFor = (profile_mm: number) => {
  const volume = q((255.68 * (4.5 + profile_mm) + 2.88) * 1.03, 'l');
  return batchSizes({ total: volume, largest: kit, division: 'full and rest', unit: 'l' }).count;
};

it('takes 85 kits on a smooth profile and 93 on a rough one', () => {
  expect([kitsFor(0.3), kitsFor(0.8)]).toEqual([85, 93]);
});

it('takes 88 kits, one every 1.5 min, 132 min in all', () => {
  const count = kitsFor(0.5);
  expect(count).toBe(88);
  expect(pace.stagger.value).toBeCloseTo(1.5, 9);
  expect(count * pace.stagger.value).toBeCloseTo(132, 6);
  expect(pace.rate.value).toBeCloseTo(2.00680272, 7);
});

it('keeps its wet edge at 26 °C', () => {
  const edge = edgeAt(26);
  expect(openAt(26).value).toBeCloseTo(7.91704746, 7);
  expect(edge.verdict).toBe('meets');
  expect(edge.measured.value).toBeCloseTo(5.58101695, 7);
});

it('loses it at 30 °C: a front of 8 m, or a third mixer', () => {
  const edge = edgeAt(30);
  expect(edge.verdict).toBe('fails');
  expect(edge.limit.value).toBeCloseTo(4, 9);
  expect(edge.widestFront.value).toBeCloseTo(8.02721088, 7);
  expect(mixersNeeded({ rate: edge.rateNeeded, batchArea: kitArea, ...times }).mixers).toBe(3);
});
