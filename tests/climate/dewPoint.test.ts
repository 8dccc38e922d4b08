import { readFileSync } from 'node:fs';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import * as climate from '../../src/climate/index.ts';

interface Sweep {
  readonly air_C: number[];
  readonly relativeHumidity_percent: number[];
  readonly dewPoint_C: number[][];
}
interface Row {
  readonly unit: 'degC' | 'degF';
  readonly air: number;
  readonly relativeHumidity_percent: number[];
  readonly dewPoint: number[];
}
const data = (name: string): unknown => JSON.parse(readFileSync(`tests/climate/data/${name}`, 'utf8'));
const sweep = data('dew-points.json') as Sweep;

const dewPoint = (air: number, percent: number) =>
  climate.dewPoint({
    air: { value: air, unit: 'degC' },
    relativeHumidity: { value: percent, unit: '%' },
    unit: 'degC',
  }).value;

/** Every point of the sweep that a choice keeps: ours, another's and the reference. */
const points = sweep.air_C.flatMap((air, i) =>
  sweep.relativeHumidity_percent.map((percent, j) => ({
    air,
    percent,
    reference: sweep.dewPoint_C[i]?.[j] ?? NaN,
  })),
);
const largest = (
  of: (air: number, percent: number) => number,
  keep: (point: (typeof points)[number]) => boolean,
) => points.filter(keep).reduce((most, p) => Math.max(most, Math.abs(of(p.air, p.percent) - p.reference)), 0);

describe('against IAPWS-95, below 0.01 °C Murphy and Koop', () => {
  it('covers air from -20 to 60 °C and 5 to 100 %', () => {
    expect(points.length).toBe(81 * 20);
    expect(points.every((point) => Number.isFinite(point.reference))).toBe(true);
  });

  it('stays within 0.0015 K over the whole sweep', () => {
    expect(largest(dewPoint, () => true)).toBeLessThan(0.0015);
  });

  it('stays within 0.001 K for air from 0 to 40 °C and 20 to 100 %', () => {
    expect(largest(dewPoint, (p) => p.air >= 0 && p.air <= 40 && p.percent >= 20)).toBeLessThan(0.001);
  });

  it('has a smaller largest error than a general-purpose library where both answer a dew point', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    const theirs = (air: number, percent: number) => psychrolib.GetTDewPointFromRelHum(air, percent / 100);
    // Below 0.01 °C that library answers frost points.
    const both = (p: (typeof points)[number]) => p.reference > 0.01 && p.air > 0.01;
    expect(largest(dewPoint, both)).toBeLessThan(largest(theirs, both));
    // The two agree with each other: an independent route.
    const apart = points
      .filter(both)
      .map((p) => Math.abs(dewPoint(p.air, p.percent) - theirs(p.air, p.percent)));
    expect(Math.max(...apart)).toBeLessThan(0.005);
  });

  it('meets every cell of the tables in °C and °F', () => {
    for (const { unit, air, relativeHumidity_percent, dewPoint: cells } of data(
      'dew-point-rows.json',
    ) as Row[]) {
      cells.forEach((cell, i) => {
        const got = climate.dewPoint({
          air: { value: air, unit },
          relativeHumidity: { value: relativeHumidity_percent[i] ?? NaN, unit: '%' },
          unit,
        }).value;
        expect(Math.abs(got - cell), `${air} ${unit}`).toBeLessThan(unit === 'degC' ? 0.0016 : 0.0034);
      });
    }
  });
});

describe('the way back through the curve', () => {
  it('adds less than 5e-6 K', () => {
    for (let air = -20; air <= 60; air += 0.5) {
      for (let percent = 5; percent <= 100; percent += 1) {
        const back = climate.relativeHumidityFromDewPoint({
          air: { value: air, unit: 'degC' },
          dewPoint: { value: dewPoint(air, percent), unit: 'degC' },
          unit: '%',
        }).value;
        // 1 K is at least 4 % of the humidity.
        expect(Math.abs(back / percent - 1)).toBeLessThan(5e-6 * 0.12);
      }
    }
  });

  it('gives the air temperature at 100 %', () => {
    for (let air = -100; air <= 60; air += 0.25)
      expect(Math.abs(dewPoint(air, 100) - air)).toBeLessThan(1e-12);
  });

  it('answers down to a dew point of -150 °C and refuses drier air by name', () => {
    expect(dewPoint(-100, 1e-4)).toBeGreaterThan(-150);
    expect(() => dewPoint(20, 1e-300)).toThrow(/relativeHumidity/);
  });
});

it('moves with its inputs as the derivatives of the curve say', () => {
  const rows: [air: number, percent: number, perPercent: number, perKelvin: number][] = [
    [20, 50, 0.2967, 0.9191],
    [25, 70, 0.2291, 0.956],
    [30, 40, 0.388, 0.8908],
    [30, 70, 0.2377, 0.9551],
  ];
  for (const [air, percent, perPercent, perKelvin] of rows) {
    const d = 0.01;
    expect((dewPoint(air, percent + d) - dewPoint(air, percent - d)) / (2 * d)).toBeCloseTo(perPercent, 3);
    expect((dewPoint(air + d, percent) - dewPoint(air - d, percent)) / (2 * d)).toBeCloseTo(perKelvin, 3);
  }
});

it('refuses humidity of 0 % and above 100 %', () => {
  expect(() => dewPoint(20, 0)).toThrow(/relativeHumidity/);
  expect(() => dewPoint(20, 100.1)).toThrow(/relativeHumidity/);
});
