import { refuse } from '../core/read.ts';
import { gammaTail } from './gamma.ts';
import { normalDensity, normalPoint, normalTail } from './normal.ts';
import { rootOf } from './rootOf.ts';

/** Beyond this many standard deviations nothing is left of a normal distribution. */
const FAR = 8;

/**
 * How many standard deviations either side of the mean, or on one side of it, hold a share of all values with a level
 * of confidence: exactly, by the joint distribution of mean and deviation of normal readings.
 *
 * With z for how far the mean of the readings is off, in its own standard deviations, the readings must show at least
 * `needed(z) / k` of the true deviation. The chance of that, over all z, is the level of confidence.
 */
export function toleranceFactorOf(
  fn: string,
  count: number,
  share: number,
  confidence: number,
  sides: 'both' | 'one',
): number {
  const freedom = count - 1;
  const root = Math.sqrt(count);
  const point = normalPoint(1 - share);
  const ends: [number, number] = sides === 'both' ? [0, FAR] : [-FAR, Math.min(FAR, point * root)];
  const nodes = nodesOn(...ends).map(({ at, weight }) => ({
    needed: sides === 'both' ? halfWidthAround(at / root, share) : point - at / root,
    weight: weight * normalDensity(at) * (sides === 'both' ? 2 : 1),
  }));
  // Where the mean is off far enough to the good side, any deviation will do.
  const always = sides === 'both' ? 0 : normalTail(ends[1]);
  if (confidence <= always) {
    const expected = 'high enough for a factor above 0; 50 % always is';
    refuse(fn, 'out-of-range', ['confidence'], expected, { value: confidence, unit: 'fraction' });
  }
  const chance = (k: number) =>
    nodes.reduce(
      (sum, { needed, weight }) => sum + weight * gammaTail(freedom / 2, (freedom / 2) * (needed / k) ** 2),
      always,
    );
  return Math.exp(
    rootOf((log) => chance(Math.exp(log)) - confidence, Math.log(normalPoint((1 - share) / 2))),
  );
}

/** Looks either side of the middle, and how far apart they are before the ends are bent in. */
const STEPS = 100;
const STEP = 0.035;

/** Half the width about an off centre that holds the share of a normal distribution. */
function halfWidthAround(centre: number, share: number): number {
  let width = centre + normalPoint(1 - share);
  for (let n = 0; n < 60; n++) {
    const outside = normalTail(width - centre) + normalTail(width + centre);
    const step = (outside - (1 - share)) / (normalDensity(width - centre) + normalDensity(width + centre));
    width += step;
    if (Math.abs(step) < 1e-14 * width) break;
  }
  return width;
}

/** Where to look, and how much each look counts, for an integral between two ends (double exponential rule). */
function nodesOn(from: number, to: number): { at: number; weight: number }[] {
  const half = (to - from) / 2;
  return Array.from({ length: 2 * STEPS + 1 }, (_, i) => {
    const t = (i - STEPS) * STEP;
    const bent = (Math.PI / 2) * Math.sinh(t);
    const weight = (half * STEP * (Math.PI / 2) * Math.cosh(t)) / Math.cosh(bent) ** 2;
    return { at: from + half * (1 + Math.tanh(bent)), weight };
  });
}
