import { EQUIVALENT_WEIGHT, SHARE } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, readOptional, refuse, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { readBlend, type BlendComponent } from './component.ts';
import { AS_HEAVY_AS_NCO } from './isocyanateContent.ts';
import { NCO } from './isocyanateEquivalentWeight.ts';

/** Input of {@link prepolymerContent}. */
export interface PrepolymerContentInput<U extends ShareUnit = ShareUnit> {
  /** The isocyanates that went in. */
  readonly isocyanates: readonly BlendComponent[];
  /** The polyols that went in. */
  readonly polyols: readonly BlendComponent[];
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The NCO content of a prepolymer: what is left of the isocyanate groups when all hydroxyl groups have taken theirs.
 *
 * @formula
 * ```math
 * w_\mathrm{NCO} = M_\mathrm{NCO} \, \frac{n_\mathrm{NCO} - n_\mathrm{OH}}{m}
 * ```
 * @units masses, equivalent weights; answers share of mass.
 * @validRange masses and equivalent weights above 0, of an isocyanate 42.0168 g/eq or more; more isocyanate groups than hydroxyl groups.
 * @accuracy Exact up to round-off for complete reaction. No published figure was found worked out.
 * @source atomic-weights
 * @param input - Isocyanates, polyols and the unit wanted.
 * @returns The NCO content in `input.unit`, not rounded.
 * @throws An `InputError` that names the field; `conflict` where no isocyanate is left.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.prepolymerContent({
 *   isocyanates: [{ mass: { value: 50, unit: 'kg' }, equivalentWeight: { value: 125.126, unit: 'g/eq' } }],
 *   polyols: [{ mass: { value: 50, unit: 'kg' }, equivalentWeight: { value: 1000, unit: 'g/eq' } }],
 *   unit: '%',
 * }).value.toFixed(2); // => '14.69'
 * ```
 */
export function prepolymerContent<U extends ShareUnit>(input: PrepolymerContentInput<U>): Quantity<U> {
  const { isocyanates, polyols, unit } = fields('prepolymerContent', input);
  const isocyanate = readBlend('prepolymerContent', 'isocyanates', isocyanates);
  isocyanates.forEach(({ equivalentWeight }, i) => {
    const path = ['isocyanates', i];
    readOptional(
      'prepolymerContent',
      'equivalentWeight',
      equivalentWeight,
      EQUIVALENT_WEIGHT,
      AS_HEAVY_AS_NCO,
      path,
    );
  });
  const polyol = readBlend('prepolymerContent', 'polyols', polyols);
  const left = isocyanate.groups - polyol.groups;
  if (!(left > 0)) {
    refuse('prepolymerContent', 'conflict', ['polyols'], 'fewer hydroxyl than isocyanate groups', polyols);
  }
  return write('prepolymerContent', (NCO * left) / (isocyanate.mass_kg + polyol.mass_kg), SHARE, unit);
}
