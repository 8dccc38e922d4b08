import type { Limits } from '../core/limits.ts';

/** Where the curve over water may be used: published up to 58.9 °C, compared with IAPWS-95 to 60 °C. */
export const OVER_WATER: Limits = {
  least: -100.0000000001,
  most: 60.0000000001,
  words: ' from -100 °C to 60 °C',
};
/** What a thermometer may be off by, in K. */
export const TEMPERATURE_ERROR: Limits = { least: 0, most: 20.0000000001, words: ' from 0 to 20 K' };
/** What a hygrometer may be off by, in parts of saturation. */
export const HUMIDITY_ERROR: Limits = { least: 0, most: 0.5000000001, words: ' from 0 % to 50 %' };
