import { refuse } from '../core/read.ts';

/** The coefficients of Dormand and Prince (1980). */
const COEFFICIENTS = /* @__PURE__ */ coefficients();

function coefficients() {
  return {
    /** How the stages before it make each stage, and the last of them the step. */
    stages: [
      [],
      [1 / 5],
      [3 / 40, 9 / 40],
      [44 / 45, -56 / 15, 32 / 9],
      [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
      [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
      [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
    ],
    /** How far along the step each stage looks. */
    nodes: [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1],
    /** The step of fifth order less that of fourth: what the step may be wrong by. */
    errors: [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40],
  };
}

/** Error allowed in one step, relative to the size of y. */
const TOLERANCE = 1e-12;
/** More steps than any curve of cure takes. */
const MOST_STEPS = 100_000;

/**
 * Integrates y' = f(x, y) from (0, 0) to x, by steps as large as the tolerance allows (Dormand–Prince 5(4)). It may
 * stop early, at `enough`, where y no longer matters.
 */
export function integrate(
  fn: string,
  slope: (x: number, y: number) => number,
  end: number,
  enough = Infinity,
): number {
  const { stages, nodes, errors } = COEFFICIENTS;
  let x = 0;
  let y = 0;
  let step = Math.min(end, 1e-3 / slope(0, 0));
  for (let count = 0; count < MOST_STEPS; count++) {
    if (x >= end || y >= enough) return y;
    step = Math.min(step, end - x);
    const slopes: number[] = [];
    for (const [i, weights] of stages.entries()) {
      const rise = weights.reduce((sum, weight, k) => sum + weight * (slopes[k] as number), 0);
      slopes.push(slope(x + (nodes[i] as number) * step, y + step * rise));
    }
    const weighted = (weights: readonly number[]) =>
      step * slopes.reduce((sum, one, i) => sum + one * (weights[i] ?? 0), 0);
    const next = y + weighted(stages[6] as readonly number[]);
    const error = Math.abs(weighted(errors)) / (TOLERANCE * Math.max(1e-3, Math.abs(next)));
    if (error <= 1) {
      x = step >= end - x ? end : x + step;
      y = next;
    }
    // An error that is no number comes of a step that left the curve.
    step *= Number.isNaN(error) ? 0.2 : Math.min(5, Math.max(0.2, 0.9 * error ** -0.2));
  }
  return refuse(fn, 'too-large', [], 'a curve that can be followed in 100,000 steps', 'a steeper one');
}
