import psychrolib from 'psychrolib';
import { expect, it } from 'vitest';
import * as climate from '../../src/climate/index.ts';
import type { Psychrometer } from '../../src/climate/index.ts';

const C = (value: number) => ({ value, unit: 'degC' }) as const;
const F = (value: number) => ({ value, unit: 'degF' }) as const;

it.each([
  [107, 49, 9],
  [110, 50, 17],
  [109, 50, 12],
])('meets the old Weather Bureau table at %d °F, %d °F of depression and 23 inHg', (air, depression, dew) => {
  const relativeHumidity = climate.relativeHumidityFromWetBulb({
    air: F(air),
    wetBulb: F(air - depression),
    psychrometer: 'sling',
    pressure: { value: 23, unit: 'inHg' },
    unit: '%',
  });
  const dewPoint = climate.dewPoint({ air: F(air), relativeHumidity, unit: 'degF' });
  // The pressures of that table are about 1 % below IAPWS.
  expect(Math.abs(dewPoint.value - dew)).toBeLessThan(1.3);
});

it('meets thermodynamic wet bulbs of a general-purpose library within 1.5 % of humidity, aspirated', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  for (let air = 5; air <= 40; air += 5) {
    for (let depression = 0; depression <= 5; depression += 1) {
      const wetBulb = air - depression;
      if (wetBulb < 1) continue;
      const ours = climate.relativeHumidityFromWetBulb({
        air: C(air),
        wetBulb: C(wetBulb),
        psychrometer: 'aspirated',
        pressure: { value: 101325, unit: 'Pa' },
        unit: 'fraction',
      }).value;
      expect(Math.abs(ours - psychrolib.GetRelHumFromTWetBulb(air, wetBulb, 101325))).toBeLessThan(0.015);
    }
  }
});

it('reads less humidity the less air moves past the wick', () => {
  const order: Psychrometer[] = ['aspirated', 'sling', 'natural draught', 'still air'];
  const read = order.map(
    (psychrometer) =>
      climate.relativeHumidityFromWetBulb({
        air: F(68),
        wetBulb: F(62),
        psychrometer,
        altitude: { value: 0, unit: 'm' },
        unit: '%',
      }).value,
  );
  expect(read).toEqual([...read].sort((a, b) => b - a));
});

it('sea-level tables read 2.6 % too low at 1600 m', () => {
  const at = (altitude: number) =>
    climate.relativeHumidityFromWetBulb({
      air: C(25),
      wetBulb: C(18),
      psychrometer: 'aspirated',
      altitude: { value: altitude, unit: 'm' },
      unit: '%',
    }).value;
  expect(at(0)).toBeCloseTo(50.3, 1);
  expect(at(1600)).toBeCloseTo(52.9, 1);
});

it('refuses what cannot be', () => {
  const good = { air: C(20), wetBulb: C(14), psychrometer: 'sling', unit: '%' } as const;
  const pressure = { value: 101325, unit: 'Pa' } as const;
  const altitude = { value: 0, unit: 'm' } as const;
  const run = (change: object) => () => climate.relativeHumidityFromWetBulb({ ...good, pressure, ...change });
  expect(run({ wetBulb: C(20.1) })).toThrow(/wetBulb must be at or below the air temperature/);
  expect(run({ wetBulb: C(-0.5) })).toThrow(/wetBulb/);
  expect(run({ wetBulb: C(3) })).toThrow(/leave vapour in the air/);
  expect(run({ altitude })).toThrow(/altitude must be nothing where the pressure is given/);
  expect(run({ pressure: undefined })).toThrow(/pressure/);
  // A barometer that shows 30 inches or 760 millimetres, with the wrong unit.
  for (const value of [30, 760, 1013.25]) {
    expect(run({ pressure: { value, unit: 'Pa' } })).toThrow(/pressure must be a pressure from 20 kPa/);
  }
  expect(run({ psychrometer: 'whirling' })).toThrow(/one of aspirated, sling/);
  expect(run({ psychrometer: undefined })).toThrow(/psychrometer/);
  expect(run({ wetBulb: C(20) })()).toEqual({ value: 100, unit: '%' });
});

it('the standard atmosphere agrees with a general-purpose library', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  for (let altitude = -500; altitude <= 5000; altitude += 250) {
    const ours = climate.pressureAtAltitude({ altitude: { value: altitude, unit: 'm' }, unit: 'Pa' }).value;
    expect(Math.abs(ours - psychrolib.GetStandardAtmPressure(altitude))).toBeLessThan(1);
  }
});

it.each([
  ['aspirated', 0.0662],
  ['natural draught', 0.08],
  ['still air', 0.12],
  ['sling', 0.066 * (1 + 0.00115 * 20)],
] as const)('%s has the published psychrometric constant at 100 kPa: %d kPa/K', (psychrometer, kPaPerK) => {
  const saturated = (t: number) =>
    climate.saturationPressureOverWater({ temperature: C(t), unit: 'kPa' }).value;
  const humidity = climate.relativeHumidityFromWetBulb({
    air: C(25),
    wetBulb: C(20),
    psychrometer,
    pressure: { value: 100, unit: 'kPa' },
    unit: 'fraction',
  });
  const constant = (saturated(20) - humidity.value * saturated(25)) / 5;
  expect(Math.abs(constant / kPaPerK - 1)).toBeLessThan(1e-12);
});

it('is within 1.2 °F of a dew point for a thermodynamic wet bulb, in air as dry as 13 %', () => {
  const relativeHumidity = climate.relativeHumidityFromWetBulb({
    air: F(100),
    wetBulb: F(65),
    psychrometer: 'aspirated',
    pressure: { value: 14.696, unit: 'psi' },
    unit: '%',
  });
  const dewPoint = climate.dewPoint({ air: F(100), relativeHumidity, unit: 'degF' });
  // The handbook reads 40 °F off its chart; the wet bulb of the chart is not quite that of an instrument.
  expect(Math.abs(dewPoint.value - 40)).toBeLessThan(1.2);
});

const wetBulb = (air: number, percent: number, psychrometer: Psychrometer = 'aspirated') =>
  climate.wetBulb({
    air: C(air),
    relativeHumidity: { value: percent, unit: '%' },
    psychrometer,
    altitude: { value: 0, unit: 'm' },
    unit: 'degC',
  }).value;

it('the wet bulb is the way back from the humidity that it reads', () => {
  for (const psychrometer of ['aspirated', 'sling', 'natural draught', 'still air'] as const) {
    for (let air = 0; air <= 100; air += 4) {
      for (let bulb = 0; bulb <= air; bulb += 4) {
        const place = { psychrometer, altitude: { value: 900, unit: 'm' } } as const;
        const reading = { air: C(air), wetBulb: C(bulb), ...place, unit: '%' } as const;
        let relativeHumidity;
        try {
          relativeHumidity = climate.relativeHumidityFromWetBulb(reading);
        } catch {
          continue;
        }
        const back = climate.wetBulb({ air: C(air), relativeHumidity, ...place, unit: 'degC' });
        expect(Math.abs(back.value - bulb)).toBeLessThan(1e-11);
      }
    }
  }
});

it('a fan meets the thermodynamic wet bulb of a general-purpose library within 0.14 K', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  for (let air = 5; air <= 40; air += 1) {
    for (let percent = 20; percent <= 100; percent += 5) {
      const theirs = psychrolib.GetTWetBulbFromRelHum(air, percent / 100, 101325);
      // Below freezing theirs is a wick of ice.
      if (theirs > 0.01) expect(Math.abs(wetBulb(air, percent) - theirs)).toBeLessThan(0.14);
    }
  }
});

it('a published fit of the wet bulb at sea level gives its own figure and is off by what is known of it', () => {
  const fit = (t: number, rh: number) =>
    t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659)) +
    Math.atan(t + rh) -
    Math.atan(rh - 1.676331) +
    0.00391838 * rh ** 1.5 * Math.atan(0.023101 * rh) -
    4.686035;
  expect(fit(20, 50)).toBeCloseTo(13.699, 3);
  const off: number[] = [];
  for (let air = 10; air <= 35; air += 1) {
    for (let percent = 40; percent <= 99; percent += 1) off.push(fit(air, percent) - wetBulb(air, percent));
  }
  // From −1 to 0.65 °C and 0.3 °C in the mean by its own account.
  expect(Math.min(...off)).toBeGreaterThan(-1);
  expect(Math.max(...off)).toBeLessThan(0.65);
  expect(off.reduce((sum, one) => sum + Math.abs(one), 0) / off.length).toBeLessThan(0.3);
});

it('the wet bulb of wet air is the air itself, and a wick that would freeze is refused', () => {
  expect(wetBulb(100, 100)).toBeCloseTo(100, 11);
  expect(wetBulb(0, 100)).toBeCloseTo(0, 11);
  expect(wetBulb(4, 50)).toBeGreaterThan(0);
  expect(() => wetBulb(3, 50)).toThrow(/relativeHumidity must be high enough .* keep the wick from freezing/);
  expect(() => wetBulb(-1, 90)).toThrow(/air must be a temperature from 0 °C to 100 °C/);
  expect(() => wetBulb(20, 0)).toThrow(/relativeHumidity/);
  expect(() => wetBulb(20, 101)).toThrow(/relativeHumidity/);
  expect(() => wetBulb(20, 50, 'whirling' as never)).toThrow(/psychrometer/);
});
