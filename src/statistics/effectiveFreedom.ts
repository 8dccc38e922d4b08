/** A part of a variance, and how well it is known. */
export interface VariancePart {
  readonly variance: number;
  /** Degrees of freedom; nothing where there are infinitely many. */
  readonly freedom: number | undefined;
}

/**
 * The degrees of freedom of a variance made of independent parts, by Welch and Satterthwaite; nothing where there are
 * infinitely many, or no variance at all.
 */
export function effectiveFreedom(variance: number, parts: readonly VariancePart[]): number | undefined {
  let sum = 0;
  for (const part of parts) {
    if (part.freedom !== undefined && variance > 0) sum += (part.variance / variance) ** 2 / part.freedom;
  }
  return sum > 0 ? 1 / sum : undefined;
}
