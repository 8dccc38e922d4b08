import { factorOf } from './dimension.ts';
import { TEMPERATURE } from './dimensions.ts';
import type { InputPath } from './InputError.ts';
import { ANY, type Limits } from './limits.ts';
import type { Quantity, Temperature } from './quantity.ts';
import { read, refuse, write } from './read.ts';
import type { TemperatureUnit } from './unitCodes.ts';

/** What each scale shows at 0 °C, exactly. The scales start at different points, so a factor is not enough. */
export const AT_ZERO_CELSIUS: Readonly<Record<TemperatureUnit, number>> = { degC: 0, degF: 32, K: 273.15 };

/** Reads a point on a temperature scale into °C; otherwise as `read`. */
export function readTemperature(
  fn: string,
  key: string | number,
  temperature: Temperature | undefined,
  limits: Limits,
  path: InputPath = [],
): number {
  read(fn, key, temperature, TEMPERATURE, ANY, path);
  const { value, unit } = temperature as Temperature;
  const celsius = (value - AT_ZERO_CELSIUS[unit]) * (factorOf(TEMPERATURE, unit) as number);
  if (celsius > limits.above && celsius < limits.below) return celsius;
  return refuse(fn, 'out-of-range', [...path, key], `a temperature${limits.words}`, temperature);
}

/** Answers a temperature in °C on the scale asked for. */
export function writeTemperature<U extends TemperatureUnit>(
  fn: string,
  celsius: number,
  unit: U,
): Quantity<U> {
  return { value: write(fn, celsius, TEMPERATURE, unit).value + AT_ZERO_CELSIUS[unit], unit };
}
