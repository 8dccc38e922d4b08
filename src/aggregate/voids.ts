import { SHARE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Quantity } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { readDensities } from './densities.ts';

/** Input of {@link voids}. */
export interface VoidsInput<U extends ShareUnit = ShareUnit> {
  /** As it lies, voids included. */
  readonly bulkDensity: Density;
  /** Of the grains, or of the mix without any air. */
  readonly solidDensity: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Which share of a heap of sand, or of a mortar as laid, is air.
 *
 * @formula
 * ```math
 * v = 1 - \frac{\rho_b}{\rho_s}
 * ```
 * @units densities; answers share.
 * @validRange both above 0, bulkDensity no more than solidDensity.
 * @monotone bulkDensity -, solidDensity +
 * @accuracy Exact up to round-off: absolute error below 5e-16. Taking water as 62.4 in place of 62.3 lb/ft³ moves it
 * by a tenth of a per cent.
 * @source astm-c29
 * @param input - Densities and the unit wanted.
 * @returns The voids in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where it would be denser than what it is made of.
 * @example
 * ```ts
 * import * as aggregate from 'coating-math/aggregate';
 *
 * aggregate.voids({
 *   bulkDensity: { value: 1600, unit: 'kg/m3' },
 *   solidDensity: { value: 2650, unit: 'kg/m3' },
 *   unit: '%',
 * }).value.toFixed(2); // => '39.62'
 * ```
 */
export const voids = /* @__PURE__ */ monotone(
  { bulkDensity: '-', solidDensity: '+' },
  <U extends ShareUnit>(input: VoidsInput<U>): Quantity<U> => {
    const { unit } = fields('voids', input);
    const [bulk_kgPerM3, solid_kgPerM3] = readDensities('voids', input);
    return write('voids', Math.max(1 - bulk_kgPerM3 / solid_kgPerM3, 0), SHARE, unit);
  },
);
