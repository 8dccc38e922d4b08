import type { Limits } from '../core/limits.ts';

/** The scale of pH, a number without unit. */
export const PH: Limits = { above: -5e-324, below: 14.0000000001, words: ' from 0 to 14' };
