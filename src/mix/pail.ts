import { LENGTH } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Length } from '../core/quantity.ts';
import { read, readOr, refuse } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';

/** A round pail, straight or tapered, by its inside measures. */
export interface Pail {
  /** Inner diameter at the bottom. */
  readonly diameter: Length;
  /** Inner diameter at the top of a tapered pail; a straight one has the same as at the bottom. */
  readonly topDiameter?: Length | undefined;
  /** Inner height. */
  readonly height: Length;
}

/** A pail in base units. */
export interface BasePail {
  readonly bottom_m: number;
  /** How much the radius grows with each metre of height. */
  readonly taper: number;
  readonly height_m: number;
}

/** Reads a pail. */
export function readPail(fn: string, pail: Pail | undefined, path: InputPath = []): BasePail {
  const { diameter, topDiameter, height } = readObject(fn, 'pail', pail, path);
  const inside = [...path, 'pail'];
  const diameter_m = read(fn, 'diameter', diameter, LENGTH, POSITIVE, inside);
  const top_m = readOr(diameter_m, fn, 'topDiameter', topDiameter, LENGTH, POSITIVE, inside);
  const height_m = read(fn, 'height', height, LENGTH, POSITIVE, inside);
  return { bottom_m: diameter_m / 2, taper: (top_m - diameter_m) / 2 / height_m, height_m };
}

/** What the pail holds up to a height: a cone cut off at both ends. */
export function volumeBelow({ bottom_m, taper }: BasePail, height_m: number): number {
  const radius_m = bottom_m + taper * height_m;
  return (Math.PI / 3) * height_m * (bottom_m ** 2 + bottom_m * radius_m + radius_m ** 2);
}

/**
 * How high a volume stands: (∛(r₀³ + 3kV/π) − r₀) / k with k the taper, multiplied out so that nothing is subtracted
 * and a straight pail, where k is 0, needs no formula of its own.
 */
export function heightOf({ bottom_m, taper }: BasePail, volume_m3: number): number {
  const column = (3 * volume_m3) / Math.PI;
  const surface_m = Math.cbrt(bottom_m ** 3 + taper * column);
  return column / (surface_m ** 2 + surface_m * bottom_m + bottom_m ** 2);
}

/** Refuses a pail that runs over. */
export function checkFits(fn: string, pail: BasePail, volume_m3: number, path: InputPath = []): void {
  // Room for the round-off of a pail that is exactly full.
  const capacity_m3 = volumeBelow(pail, pail.height_m) * (1 + 1e-12);
  if (volume_m3 <= capacity_m3) return;
  const litres = (m3: number) => `${String(Number((m3 * 1000).toPrecision(4)))} l`;
  refuse(
    fn,
    'conflict',
    [...path, 'pail'],
    `a pail that holds ${litres(volume_m3)}`,
    `one of ${litres(capacity_m3)}`,
  );
}
