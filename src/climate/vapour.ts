/**
 * Vapour pressure over water and over ice after Murphy and Koop (2005), and the way back from a pressure to the
 * temperature. What the formulas of this folder share; temperatures in °C outside, in kelvin inside.
 */
import type { InputPath } from '../core/InputError.ts';
import { refuse } from '../core/read.ts';
import { AT_ZERO_CELSIUS } from '../core/temperature.ts';

/** A point of a saturation curve. */
interface CurvePoint {
  /** ln of the pressure in Pa. */
  readonly lnPa: number;
  /** d ln p / d ln T. */
  readonly steepness: number;
}

/** The curve over liquid water, supercooled below 0 °C (their equation 10). */
function overWater(T: number): CurvePoint {
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

/** The curve over ice (their equation 7). */
function overIce(T: number): CurvePoint {
  return {
    lnPa: 9.550426 - 5723.265 / T + 3.53068 * Math.log(T) - 0.00728332 * T,
    steepness: 5723.265 / T + 3.53068 - 0.00728332 * T,
  };
}

/** ln of the saturation pressure in Pa over liquid water. */
export function lnOverWater(temperature_C: number): number {
  return overWater(temperature_C + AT_ZERO_CELSIUS.K).lnPa;
}

/** ln of the saturation pressure in Pa over ice. */
export function lnOverIce(temperature_C: number): number {
  return overIce(temperature_C + AT_ZERO_CELSIUS.K).lnPa;
}

/**
 * Newton's step for ln p against 1/T, in which the curves are nearly straight: one step turns an error of 0.1 K into
 * less than 5e-6 K, so that a good start needs only one.
 */
function temperatureOn(curve: (T: number) => CurvePoint, lnPa: number, start_C: number): number {
  let T = start_C + AT_ZERO_CELSIUS.K;
  let before: number;
  do {
    before = T;
    const here = curve(T);
    T = before / (1 + (here.lnPa - lnPa) / here.steepness);
  } while (Math.abs(T - before) > 0.1);
  return T - AT_ZERO_CELSIUS.K;
}

/** The driest air that the curves reach: saturated at −150 °C. */
const DRIEST = -150;
const DRIEST_LN_PA = /* @__PURE__ */ lnOverWater(DRIEST);

/**
 * The dew point in °C over liquid water of air at a temperature and a relative humidity.
 * A Magnus form, within 0.09 K over air of −20…60 °C and 5…100 %, is where the search starts; at 100 % it is exact.
 */
export function dewPointOf(fn: string, air_C: number, humidity: number, path: InputPath = []): number {
  const lnHumidity = Math.log(humidity);
  const lnPa = lnOverWater(air_C) + lnHumidity;
  if (lnPa < DRIEST_LN_PA) refuseDry(fn, humidity, path);
  const g = lnHumidity + (17.62 * air_C) / (243.12 + air_C);
  return temperatureOn(overWater, lnPa, (243.12 * g) / (17.62 - g));
}

/** The frost point in °C of air of this vapour pressure. */
export function frostPointOf(fn: string, lnPa: number, humidity: number): number {
  if (lnPa < DRIEST_LN_PA) refuseDry(fn, humidity, []);
  const g = lnPa - Math.log(611.2);
  return temperatureOn(overIce, lnPa, (272.62 * g) / (22.46 - g));
}

function refuseDry(fn: string, humidity: number, path: InputPath): never {
  const expected = `a humidity that leaves the dew point above ${DRIEST} °C`;
  refuse(fn, 'out-of-range', [...path, 'relativeHumidity'], expected, humidity);
}
