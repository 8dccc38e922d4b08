/** What a gloss meter can show: black glass of index 1.567 is 100, a mirror up to 2000 at 20°. */
import type { Limits } from '../core/limits.ts';

export const GLOSS: Limits = { above: -5e-324, below: 2000.0000000001, words: ' from 0 to 2000' };
