/** What was used of a part, in base units of volume or of mass. */
export interface BaseUse {
  readonly amount: number;
  /** How far the reading may be off, either way. */
  readonly error: number;
  /** Parts of the whole. */
  readonly weight: number;
}

/**
 * How far a part is off against the first, and what the readings are worth when both are wrong against each other.
 * The error of the first must be below its amount.
 */
export function ratioOff(
  part: BaseUse,
  first: BaseUse,
): { readonly off: number; readonly uncertainty: number } {
  const relative = part.amount / part.weight / (first.amount / first.weight);
  const high = (relative * (1 + part.error / part.amount)) / (1 - first.error / first.amount);
  return { off: relative - 1, uncertainty: high - relative };
}
