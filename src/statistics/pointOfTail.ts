/**
 * The point of a distribution symmetric about 0 that has a share of it above, for shares above 0 and up to one half.
 *
 * The logarithm of the tail over that of the point falls ever faster, so that Newton's tangents meet the wanted share
 * from above after the first step, wherever they start.
 */
export function pointOfTail(
  tail: (point: number) => number,
  density: (point: number) => number,
  above: number,
): number {
  // As if the density stayed what it is in the middle: too near, which is a good place to start.
  const start = (0.5 - above) / density(0);
  if (start <= 0) return 0;
  let log = Math.log(start);
  for (let n = 0; n < 100; n++) {
    const point = Math.exp(log);
    const left = tail(point);
    const step = (Math.log(left / above) * left) / (point * density(point));
    // A longer step might end where nothing is left of the tail.
    log += Math.min(1, step);
    if (Math.abs(step) < 1e-15) break;
  }
  return Math.exp(log);
}
