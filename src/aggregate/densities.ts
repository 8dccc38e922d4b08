import { DENSITY } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Density } from '../core/quantity.ts';
import { read, refuse } from '../core/read.ts';

/** How dense a sand is as it lies, and how dense its grains are. */
export interface Densities {
  readonly bulkDensity: Density;
  readonly solidDensity: Density;
}

/** Reads both into kg/m³; refuses a heap that is denser than its grains. */
export function readDensities(
  fn: string,
  { bulkDensity, solidDensity }: Densities,
): readonly [bulk_kgPerM3: number, solid_kgPerM3: number] {
  const bulk_kgPerM3 = read(fn, 'bulkDensity', bulkDensity, DENSITY, POSITIVE);
  const solid_kgPerM3 = read(fn, 'solidDensity', solidDensity, DENSITY, POSITIVE);
  if (bulk_kgPerM3 <= solid_kgPerM3 * (1 + 1e-12)) return [bulk_kgPerM3, solid_kgPerM3];
  return refuse(fn, 'conflict', ['bulkDensity'], 'no denser than without voids', bulkDensity);
}
