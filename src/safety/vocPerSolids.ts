import { DENSITY } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { DensityUnit } from '../core/unitCodes.ts';

/** Input of {@link vocPerSolids}. */
export interface VocPerSolidsInput<U extends DensityUnit = DensityUnit> {
  /** Solvent in a volume of the coating, less water and exempt solvent. */
  readonly voc: Density;
  /** Density of that solvent itself. Rules that convert limits name one: 7.36 lb/usgal in several US states. */
  readonly vocDensity: Density;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Solvent that goes into the air for each volume of solids that stays on the floor.
 *
 * @formula
 * ```math
 * S = \frac{C}{1 - C / D}
 * ```
 * @units densities; answers density.
 * @validRange voc 0 or more and below vocDensity: a coating that is all solvent leaves no solids.
 * @monotone voc +, vocDensity -
 * @accuracy Exact up to round-off; volumes of solvent and solids are taken to add.
 * @source texas-30-115-423, florida-62-296-500, co-5ccr-1001-29
 * @param input - Solvent content, its density and the unit wanted.
 * @returns Mass of solvent for a volume of solids in `input.unit`, not rounded.
 * @throws An `InputError` that names the field; `conflict` where the coating would be all solvent.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const lbPerGal = (value: number) => ({ value, unit: 'lb/usgal' }) as const;
 * safety.vocPerSolids({ voc: lbPerGal(2.8), vocDensity: lbPerGal(7.36), unit: 'lb/usgal' }).value.toFixed(2); // => '4.52'
 * ```
 */
export const vocPerSolids = /* @__PURE__ */ monotone(
  { voc: '+', vocDensity: '-' },
  <U extends DensityUnit>(input: VocPerSolidsInput<U>): Quantity<U> => {
    const fn = 'vocPerSolids';
    const { voc, vocDensity, unit } = fields(fn, input);
    const voc_kgPerM3 = read(fn, 'voc', voc, DENSITY, NOT_NEGATIVE);
    const solvent_kgPerM3 = read(fn, 'vocDensity', vocDensity, DENSITY, POSITIVE);
    const solids = 1 - voc_kgPerM3 / solvent_kgPerM3;
    if (solids < 1e-12) refuse(fn, 'conflict', ['voc'], 'less than vocDensity, so that solids are left', voc);
    return write(fn, voc_kgPerM3 / solids, DENSITY, unit);
  },
);
