import { counted } from '../core/decimal.ts';
import { refuse } from '../core/read.ts';

/** Whose pace it is. */
export type PacedBy = 'mixers' | 'crews';

/** How often a batch can be begun: the slower of mixing and placing, each for one batch, sets the pace. */
export function staggerOf(
  mixing_s: number,
  placing_s: number,
): { readonly stagger_s: number; readonly pacedBy: PacedBy } {
  const pacedBy = mixing_s > placing_s * (1 + 1e-12) ? 'mixers' : 'crews';
  return { stagger_s: Math.max(mixing_s, placing_s), pacedBy };
}

/** How many whole ones a figure takes, at least one. Round-off does not add one. */
export function countUp(fn: string, figure: number): number {
  if (!(figure <= Number.MAX_SAFE_INTEGER))
    refuse(fn, 'too-large', [], 'a number that can be counted', figure);
  return Math.max(1, counted(figure).ceil().toNumber());
}
