import type { Length } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';

/** Refuses what goes deeper than the slab. */
export function checkDepth(fn: string, depth: Length, depth_m: number, slab_m: number): void {
  if (depth_m > slab_m * (1 + 1e-12)) refuse(fn, 'conflict', ['depth'], 'no deeper than the slab', depth);
}
