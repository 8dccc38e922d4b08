/** Student's distribution with degrees of freedom of 1 or more; without any it is the normal distribution. */
import { MOST_STEPS, SETTLED, stirlingRest } from './gamma.ts';
import { normalPoint, normalTail } from './normal.ts';
import { pointOfTail } from './pointOfTail.ts';

/** The share of it above t. */
export function studentTail(t: number, freedom: number | undefined): number {
  if (freedom === undefined) return normalTail(t);
  const square = (t * t) / freedom;
  if (freedom > MANY) return normalTail(asNormal(t, square, freedom));
  const a = freedom / 2;
  // x^a (1 − x)^½ / B(a, ½) at x = 1 / (1 + t²/ν), without the large numbers.
  const front =
    Math.exp(-a * Math.log1p(square)) * Math.sqrt(square / (1 + square) / Math.PI) * gammaRatio(a);
  const beyond =
    square > 1.5 / (a + 1)
      ? (front * betaFraction(a, 0.5, 1 / (1 + square))) / a / 2
      : 0.5 - front * betaFraction(0.5, a, square / (1 + square));
  return t < 0 ? 1 - beyond : beyond;
}

/** The points of the last share by degrees of freedom: readings that are judged one by one ask for few. */
const points = /* @__PURE__ */ new Map<number | undefined, number>();
const MOST_POINTS = 1000;
let share: number | undefined;

/** The t that has this share of it above, for shares up to one half. */
export function studentPoint(above: number, freedom: number | undefined): number {
  if (above !== share || points.size > MOST_POINTS) points.clear();
  share = above;
  const point = points.get(freedom) ?? findPoint(above, freedom);
  points.set(freedom, point);
  return point;
}

function findPoint(above: number, freedom: number | undefined): number {
  if (freedom === undefined) return normalPoint(above);
  const top = gammaRatio(freedom / 2) / Math.sqrt(Math.PI * freedom);
  const density = (t: number) => top * Math.exp((-(freedom + 1) / 2) * Math.log1p((t * t) / freedom));
  return pointOfTail((t) => studentTail(t, freedom), density, above);
}

/** From here on the two leading terms below are exact to the last digit, and the fraction no longer is. */
const MANY = 1e4;

/** The z with as much above it as t has (Hill 1970, Algorithm 395). */
function asNormal(t: number, square: number, freedom: number): number {
  const a = freedom - 0.5;
  const w = Math.sign(t) * Math.sqrt(a * Math.log1p(square));
  return w + (w ** 3 + 3 * w) / (48 * a * a);
}

/** The ratio of the last call: degrees of freedom stay what they are from call to call. */
let lastA = 0;
let lastRatio = 0;

/** Γ(a + ½) / Γ(a). */
function gammaRatio(a: number): number {
  if (a !== lastA) {
    lastA = a;
    lastRatio =
      Math.sqrt(a) * Math.exp(a * Math.log1p(0.5 / a) - 0.5 + stirlingRest(a + 0.5) - stirlingRest(a));
  }
  return lastRatio;
}

/** The continued fraction of the incomplete beta function, DLMF 8.17.22, from the top down (Lentz). */
function betaFraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < SETTLED) break;
  }
  return value;
}
