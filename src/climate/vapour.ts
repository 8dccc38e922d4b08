/**
 * Vapour pressure over water and over ice, and the way back from a pressure to the temperature: what the formulas of
 * this folder share. Temperatures in °C outside, in kelvin inside.
 *
 * Over liquid water the saturation equation of IAPWS-IF97, whose inverse is closed; below freezing, where it ends,
 * the curve of Murphy and Koop (2005) over supercooled water. The two meet within 1e-11 of the pressure.
 */
import type { InputPath } from '../core/InputError.ts';
import { refuse } from '../core/read.ts';

const KELVIN = 273.15;
/** Where the two curves over water meet, in K. */
const MEETING = 273.1412;

/** Coefficients n1 to n10 of IAPWS-IF97, table 34. */
const N1 = 1167.0521452767;
const N2 = -724213.16703206;
const N3 = -17.073846940092;
const N4 = 12020.82470247;
const N5 = -3232555.0322333;
const N6 = 14.91510861353;
const N7 = -4823.2657361591;
const N8 = 405113.40542057;
const N9 = -0.23855557567849;
const N10 = 650.17534844798;

/** The fourth root of the saturation pressure in MPa over liquid water (IF97, equation 30). */
function rootOverWater(T: number): number {
  const theta = T + N9 / (T - N10);
  const a = theta * theta + N1 * theta + N2;
  const b = N3 * theta * theta + N4 * theta + N5;
  const c = N6 * theta * theta + N7 * theta + N8;
  return (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
}

/** The temperature in K of that fourth root (IF97, equation 31). */
function temperatureOfRoot(beta: number): number {
  const e = beta * beta + N3 * beta + N6;
  const f = N1 * beta * beta + N4 * beta + N7;
  const g = N2 * beta * beta + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (N10 + d - Math.sqrt((N10 + d) * (N10 + d) - 4 * (N9 + N10 * d))) / 2;
}

const pascal = (root: number) => root * root * root * root * 1e6;

/** A point of a curve whose inverse is not closed. */
interface CurvePoint {
  /** ln of the pressure in Pa. */
  readonly lnPa: number;
  /** d ln p / d ln T. */
  readonly steepness: number;
}

/** Over supercooled water (Murphy and Koop, equation 10). */
function overSupercooled(T: number): CurvePoint {
  const lnT = Math.log(T);
  const blend = Math.tanh(0.0415 * (T - 218.8));
  const warm = 53.878 - 1331.22 / T - 9.44523 * lnT + 0.014025 * T;
  return {
    lnPa: 54.842763 - 6763.22 / T - 4.21 * lnT + 0.000367 * T + blend * warm,
    steepness:
      6763.22 / T -
      4.21 +
      0.000367 * T +
      0.0415 * T * (1 - blend * blend) * warm +
      blend * (1331.22 / T - 9.44523 + 0.014025 * T),
  };
}

/** Over ice (Murphy and Koop, equation 7). */
function overIce(T: number): CurvePoint {
  return {
    lnPa: 9.550426 - 5723.265 / T + 3.53068 * Math.log(T) - 0.00728332 * T,
    steepness: 5723.265 / T + 3.53068 - 0.00728332 * T,
  };
}

/**
 * Newton's step for ln p against 1/T, in which these curves are nearly straight: one step turns an error of 0.1 K
 * into less than 5e-6 K, so that a good start needs only one.
 */
function temperatureOn(curve: (T: number) => CurvePoint, lnPa: number, start: number): number {
  let T = start;
  let before: number;
  do {
    before = T;
    const here = curve(T);
    T = before / (1 + (here.lnPa - lnPa) / here.steepness);
  } while (Math.abs(T - before) > 0.1);
  return T;
}

/** The saturation pressure in Pa over liquid water. */
export function pressureOverWater(temperature_C: number): number {
  const T = temperature_C + KELVIN;
  return T >= MEETING ? pascal(rootOverWater(T)) : Math.exp(overSupercooled(T).lnPa);
}

/** The same from freezing up, by IAPWS-IF97 alone. */
export function pressureAboveFreezing(temperature_C: number): number {
  return pascal(rootOverWater(temperature_C + KELVIN));
}

/** The saturation pressure in Pa over ice. */
export function pressureOverIce(temperature_C: number): number {
  return Math.exp(overIce(temperature_C + KELVIN).lnPa);
}

/** The driest air that can be answered for: its dew point. */
const DRIEST_C = -150;
const DRIEST_PA = /* @__PURE__ */ pressureOverWater(DRIEST_C);
const ROOT_WHERE_THEY_MEET = /* @__PURE__ */ rootOverWater(MEETING);

/** The dew point in °C, over liquid water, of air at a temperature and a relative humidity. */
export function dewPointOf(fn: string, air_C: number, humidity: number, path?: InputPath): number {
  const air = air_C + KELVIN;
  if (air >= MEETING) {
    const root = rootOverWater(air) * Math.sqrt(Math.sqrt(humidity));
    if (root >= ROOT_WHERE_THEY_MEET) return temperatureOfRoot(root) - KELVIN;
  }
  const pressure_Pa = humidity * pressureOverWater(air_C);
  refuseDry(fn, pressure_Pa, humidity, path);
  // A Magnus form finds the start; at 100 % it is the answer.
  const g = Math.log(humidity) + (17.62 * air_C) / (243.12 + air_C);
  const start = KELVIN + (243.12 * g) / (17.62 - g);
  return temperatureOn(overSupercooled, Math.log(pressure_Pa), start) - KELVIN;
}

/** The frost point in °C of air of this vapour pressure. */
export function frostPointOf(fn: string, pressure_Pa: number, humidity: number): number {
  refuseDry(fn, pressure_Pa, humidity);
  const g = Math.log(pressure_Pa / 611.2);
  const start = KELVIN + (272.62 * g) / (22.46 - g);
  return temperatureOn(overIce, Math.log(pressure_Pa), start) - KELVIN;
}

function refuseDry(fn: string, pressure_Pa: number, humidity: number, path: InputPath = []): void {
  if (pressure_Pa >= DRIEST_PA) return;
  const expected = `a humidity that leaves the dew point above ${DRIEST_C} °C`;
  refuse(fn, 'out-of-range', [...path, 'relativeHumidity'], expected, humidity);
}
