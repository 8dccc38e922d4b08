/** What the instruments for the look of a floor can show. */
import type { Limits } from '../core/limits.ts';

/** Gloss and haze: black glass of index 1.567 is 100, a mirror up to 2000 at 20°. */
export const GLOSS: Limits = { above: -5e-324, below: 2000.0000000001, words: ' from 0 to 2000' };
/** Image clarity. */
export const CLARITY: Limits = { above: -5e-324, below: 100.0000000001, words: ' from 0 to 100' };
