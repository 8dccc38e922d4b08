import type { Limits } from '../core/limits.ts';

/** Air, floor and material. */
export const CLIMATE: Limits = {
  least: -100.0000000001,
  most: 100.0000000001,
  words: ' from -100 °C to 100 °C',
};
/** Liquid water, supercooled or up to its critical point. */
export const LIQUID: Limits = { least: -100.0000000001, most: 373.946, words: ' from -100 °C to 373.946 °C' };
/** Where there is ice. */
export const ICE: Limits = { least: -100.0000000001, most: 0.0100000001, words: ' from -100 °C to 0.01 °C' };
/** A wet bulb whose wick is not ice. */
export const LIQUID_WICK: Limits = {
  least: -0.0000000001,
  most: 100.0000000001,
  words: ' from 0 °C to 100 °C',
};
/** Air where people work: a barometer read in another unit than was said lies outside. */
export const AIR_PRESSURE: Limits = {
  least: 19999.9999999,
  most: 120000.0000001,
  words: ' from 20 kPa to 120 kPa',
};
/** What a thermometer may be off by, in K. */
export const TEMPERATURE_ERROR: Limits = { least: 0, most: 20.0000000001, words: ' from 0 to 20 K' };
/** What a hygrometer may be off by, in parts of saturation. */
export const HUMIDITY_ERROR: Limits = { least: 0, most: 0.5000000001, words: ' from 0 % to 50 %' };
/** How long a film stays sensitive to dew, in s. */
export const SENSITIVE_TIME: Limits = { least: 1, most: 86_400_000, words: ' from 1 s to 1000 d' };
