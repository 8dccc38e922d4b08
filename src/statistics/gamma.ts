/** Two functions related to Γ, after the NIST Digital Library of Mathematical Functions (DLMF), chapters 5 and 8. */

/** Terms and steps after which a series or a continued fraction counts as settled; none comes near it. */
export const MOST_STEPS = 100_000;
/** Two neighbours of a double apart. */
export const SETTLED = 2.3e-16;

/**
 * What Stirling's formula leaves of ln Γ(x), for x above 0: ln Γ(x) − (x − ½) ln x + x − ½ ln 2π (DLMF 5.11.1). Below
 * 15 it is moved up step by step, where the series is not good enough.
 */
export function stirlingRest(x: number): number {
  if (x < 15) return (x + 0.5) * Math.log1p(1 / x) - 1 + stirlingRest(x + 1);
  const y = 1 / (x * x);
  return (1 / 12 - y * (1 / 360 - y * (1 / 1260 - y * (1 / 1680 - y * (1 / 1188 - (y * 691) / 360360))))) / x;
}

/** The regularized incomplete gamma function Q(a, x), for a above 0 and x of 0 or more: by series or by fraction. */
export function gammaTail(a: number, x: number): number {
  if (x <= 0) return 1;
  if (x === Infinity) return 0;
  const away = (x - a) / a;
  const log = away > -0.5 ? Math.log1p(away) : Math.log(x / a);
  // x^a e^(−x) / Γ(a + 1), without the large numbers.
  const front = Math.exp(-a * (away - log) - stirlingRest(a)) / Math.sqrt(2 * Math.PI * a);
  return x < a + 1 ? 1 - front * series(a, x) : front * a * fraction(a, x);
}

/** DLMF 8.11.4. */
function series(a: number, x: number): number {
  let sum = 1;
  let term = 1;
  for (let n = 1; n < MOST_STEPS && term > SETTLED * sum; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** DLMF 8.9.2, in the contracted form, from the top down (Lentz). */
function fraction(a: number, x: number): number {
  let denominator = x + 1 - a;
  let c = 1e300;
  let d = 1 / denominator;
  let value = d;
  for (let n = 1; n < MOST_STEPS; n++) {
    const numerator = n * (a - n);
    denominator += 2;
    d = 1 / (denominator + numerator * d);
    c = denominator + numerator / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < SETTLED) break;
  }
  return value;
}
