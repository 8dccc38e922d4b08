/** What a gloss meter can show: black glass of index 1.567 is 100, a mirror up to 2000 at 20°. */
import type { Limits } from '../core/limits.ts';

export const GLOSS: Limits = { least: 0, most: 2000, words: ' from 0 to 2000' };
