import { expect, it } from 'vitest';
import { slabTimeConstant, timeToSlabTemperature } from '../../src/climate/index.ts';
import { q } from '../support/quantity.ts';

const time = (from: number, to: number, air: number) =>
  timeToSlabTemperature({
    from: q(from, 'degC'),
    to: q(to, 'degC'),
    air: q(air, 'degC'),
    timeConstant: q(6, 'h'),
    unit: 'h',
  }).value;

it('is the way back from the constant that two readings give', () => {
  for (const [from, to, air] of [
    [10, 15, 22],
    [22, 15, 10],
    [-5, 0.5, 1],
    [-5, -6, -40],
  ] as const) {
    const readings = { from: q(from, 'degC'), to: q(to, 'degC'), air: q(air, 'degC') };
    const timeConstant = slabTimeConstant({ ...readings, elapsed: q(90, 'min'), unit: 'h' });
    const back = timeToSlabTemperature({ ...readings, timeConstant, unit: 'min' });
    expect(back.value).toBeCloseTo(90, 9);
  }
});

it('takes no time where the slab is there already, whatever the unit', () => {
  expect([time(10, 10, 22), time(10, 10, 10)]).toEqual([0, 0]);
  const same = { from: q(50, 'degF'), to: q(10, 'degC'), air: q(295.15, 'K'), timeConstant: q(6, 'h') };
  expect(timeToSlabTemperature({ ...same, unit: 'h' }).value).toBe(0);
  expect(() => slabTimeConstant({ ...same, elapsed: q(1, 'h'), unit: 'h' })).toThrow(/to must be another/);
});

it.each([
  ['the air itself', 10, 22, 22],
  ['beyond the air', 10, 23, 22],
  ['away from the air', 10, 9, 22],
  ['any way in air of its own temperature', 10, 12, 10],
])('refuses %s', (_, from, to, air) => {
  expect(() => time(from, to, air)).toThrow(/to must be on the way from the start to the air/);
});
