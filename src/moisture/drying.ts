/** From which sides a slab dries. */
export type DryingSides = 'one side' | 'both sides';

/** Depth of a humidity probe as a share of the slab. */
export const DEPTH_SHARE: Readonly<Record<DryingSides, number>> = { 'one side': 0.4, 'both sides': 0.2 };
