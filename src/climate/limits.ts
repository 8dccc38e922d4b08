import type { Limits } from '../core/limits.ts';

/** Air, floor and material. */
export const CLIMATE: Limits = {
  above: -100.0000000001,
  below: 100.0000000001,
  words: ' from -100 °C to 100 °C',
};
/** Liquid water, supercooled or up to its critical point. */
export const LIQUID: Limits = {
  above: -100.0000000001,
  below: 373.9460000001,
  words: ' from -100 °C to 373.946 °C',
};
/** Where there is ice. */
export const ICE: Limits = { above: -100.0000000001, below: 0.0100000001, words: ' from -100 °C to 0.01 °C' };
/** A wet bulb whose wick is not ice. */
export const LIQUID_WICK: Limits = {
  above: -0.0000000001,
  below: 100.0000000001,
  words: ' from 0 °C to 100 °C',
};
/** Air where people work: a barometer read in another unit than was said lies outside. */
export const AIR_PRESSURE: Limits = {
  above: 19999.9999999,
  below: 120000.0000001,
  words: ' from 20 kPa to 120 kPa',
};
/** What a thermometer may be off by, in K. */
export const TEMPERATURE_ERROR: Limits = { above: -5e-324, below: 20.0000000001, words: ' from 0 to 20 K' };
/** What a hygrometer may be off by, in parts of saturation. */
export const HUMIDITY_ERROR: Limits = { above: -5e-324, below: 0.5000000001, words: ' from 0 % to 50 %' };
/** How long a film stays sensitive to dew, in s. */
export const SENSITIVE_TIME: Limits = {
  above: 0.9999999999,
  below: 86_400_000.0001,
  words: ' from 1 s to 1000 d',
};
