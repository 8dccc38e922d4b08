import type { Limits } from '../core/limits.ts';

/** Where the curve over water may be used: published up to 58.9 °C, compared with IAPWS-95 to 60 °C. */
export const OVER_WATER: Limits = {
  least: -100.0000000001,
  most: 60.0000000001,
  words: ' from -100 °C to 60 °C',
};
/** Where there is ice. */
export const OVER_ICE: Limits = {
  least: -100.0000000001,
  most: 0.0100000001,
  words: ' from -100 °C to 0.01 °C',
};
/** What a thermometer may be off by, in K. */
export const TEMPERATURE_ERROR: Limits = { least: 0, most: 20.0000000001, words: ' from 0 to 20 K' };
/** What a hygrometer may be off by, in parts of saturation. */
export const HUMIDITY_ERROR: Limits = { least: 0, most: 0.5000000001, words: ' from 0 % to 50 %' };
/** A wet bulb whose wick is not ice. */
export const LIQUID_WICK: Limits = {
  least: -0.0000000001,
  most: 60.0000000001,
  words: ' from 0 °C to 60 °C',
};
/** Concrete that may be coated or may lie in the sun. */
export const CONCRETE: Limits = {
  least: -50.0000000001,
  most: 60.0000000001,
  words: ' from -50 °C to 60 °C',
};
/** How long a film stays sensitive to dew, in s. */
export const SENSITIVE_TIME: Limits = { least: 1, most: 86_400_000, words: ' from 1 s to 1000 d' };
