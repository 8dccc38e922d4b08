import type { UnitScale } from '../core/dimensionOf.ts';

/** A number on one scale as the number on another of its kind; NaN for a temperature that does not exist. */
export function rescaled(value: number, from: UnitScale, to: UnitScale): number {
  const base = (value - from.zero) * from.factor;
  // Base units may have no room for what another unit has.
  if (!Number.isFinite(base)) return value * (from.factor / to.factor);
  if (base < from.least) return NaN;
  // Into kelvin the two shifts together cost one rounding less.
  if (to.unit === 'K') return value * from.factor + (to.zero - from.zero * from.factor);
  // Adding 0, which is what most units show at 0, turns −0 into 0.
  return from === to ? value + 0 : base / to.factor + to.zero;
}
