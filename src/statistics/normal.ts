/** The standard normal distribution. */
import { gammaTail } from './gamma.ts';
import { pointOfTail } from './pointOfTail.ts';

/** The share of it above z. */
export function normalTail(z: number): number {
  const beyond = gammaTail(0.5, (z * z) / 2) / 2;
  return z < 0 ? 1 - beyond : beyond;
}

/** Its density at z. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** The z that has this share of it above, for shares up to one half. */
export function normalPoint(above: number): number {
  return pointOfTail(normalTail, normalDensity, above);
}
