/** Where a rising function crosses 0, near a place (Ridders 1979). */
export function rootOf(rising: (x: number) => number, near: number): number {
  let [low, high] = [near, near];
  for (let step = 0.5; rising(low) > 0; step *= 2) low -= step;
  for (let step = 0.5; rising(high) < 0; step *= 2) high += step;
  let [below, above] = [rising(low), rising(high)];
  for (let n = 0; n < 100 && high - low > 1e-14 * Math.max(1, Math.abs(low)); n++) {
    const middle = low + (high - low) / 2;
    const between = rising(middle);
    const bent = Math.sqrt(between * between - below * above);
    const next = bent > 0 ? middle - ((middle - low) * between) / bent : middle;
    const there = rising(next);
    for (const [x, y] of [
      [middle, between],
      [next, there],
    ] as const) {
      if (x <= low || x >= high) continue;
      if (y <= 0) [low, below] = [x, y];
      else [high, above] = [x, y];
    }
    if (there === 0) return next;
  }
  return low + (high - low) / 2;
}
