import type { Limits } from '../core/limits.ts';

/** The scale of pH, a number without unit. */
export const PH: Limits = { least: 0, most: 14, words: ' from 0 to 14' };
