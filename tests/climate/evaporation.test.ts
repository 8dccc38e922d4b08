/** The chart of ACI 305 in the forms in which it is printed. */
import { expect, it } from 'vitest';
import { evaporationRate } from '../../src/climate/index.ts';
import { q } from '../support/quantity.ts';

/** The form in °C and km/h, with the constants it is given. */
const form =
  (factor: number, offset: number, windOffset: number) =>
  (concrete: number, air: number, humidity: number, kmh: number): number =>
    factor *
    (Math.pow(concrete + offset, 2.5) - humidity * Math.pow(air + offset, 2.5)) *
    (kmh + windOffset) *
    1e-6;
const printed = form(5, 18, 4);
const exact = form(5.2751, 17.7778, 4.02336);

it.each([
  [87, 80, 50, 12, 1.13781],
  [70, 70, 70, 0, 0.0574],
  [70, 70, 70, 10, 0.28833],
  [70, 70, 70, 25, 0.63474],
  [80, 60, 30, 15, 1.60078],
  [90, 90, 50, 10, 0.89791],
])('at %d/%d °F, %d %% and %d mph the rounded form gives %d kg, 4 to 5 % too little', (c, a, rh, mph, kg) => {
  const [concrete, air, kmh] = [(c - 32) / 1.8, (a - 32) / 1.8, mph * 1.609344];
  const ours = evaporationRate({
    concrete: q(c, 'degF'),
    air: q(a, 'degF'),
    relativeHumidity: q(rh, '%'),
    wind: q(mph, 'mph'),
    unit: 'kg/m2/h',
  }).value;
  expect(printed(concrete, air, rh / 100, kmh)).toBeCloseTo(kg, 4);
  expect(kg / ours).toBeGreaterThan(0.95);
  expect(kg / ours).toBeLessThan(0.965);
  // The same constants converted exactly, to the digits to which they are given.
  expect(Math.abs(exact(concrete, air, rh / 100, kmh) / ours - 1)).toBeLessThan(3e-5);
});
