import type { Limits } from '../core/limits.ts';

/** Heights of the lowest layer of the standard atmosphere, in m. */
export const TROPOSPHERE: Limits = {
  above: -500.0000000001,
  below: 11000.0000001,
  words: ' from -500 m to 11000 m',
};

/** Pressure in Pa of the standard atmosphere at a geopotential height. */
export function standardPressure(altitude_m: number): number {
  // Gravity and molar mass of air over gas constant and lapse rate.
  const exponent = (9.80665 * 0.0289644) / (8.31432 * 0.0065);
  return 101325 * Math.pow((288.15 - 0.0065 * altitude_m) / 288.15, exponent);
}
