import { EQUIVALENT_WEIGHT } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import type { EquivalentWeightUnit } from '../core/unitCodes.ts';
import { readBlend, type BlendComponent } from './component.ts';

/** Input of {@link blendEquivalentWeight}. */
export interface BlendEquivalentWeightInput<U extends EquivalentWeightUnit = EquivalentWeightUnit> {
  /** What is in the blend, one kind of reactive group, filler and solvent included. */
  readonly components: readonly BlendComponent[];
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How much of a blend carries one reactive group: of a filled resin, of a hardener with plasticiser in it.
 *
 * Groups add up, so equivalent weights average harmonically; filler and solvent add mass and no groups.
 *
 * @formula
 * ```math
 * E = \frac{\sum_i m_i}{\sum_i m_i / E_i}
 * ```
 * @units masses, equivalent weights; answers equivalent weight.
 * @validRange masses and equivalent weights above 0; at least one component with groups.
 * @accuracy Exact up to round-off. No published figure was found worked out: it is the definition.
 * @source definition
 * @param input - Components and the unit wanted.
 * @returns The equivalent weight in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * // Resin with as much filler as resin carries a group in twice the mass.
 * mix.blendEquivalentWeight({
 *   components: [
 *     { mass: { value: 50, unit: 'kg' }, equivalentWeight: { value: 190, unit: 'g/eq' } },
 *     { mass: { value: 50, unit: 'kg' } },
 *   ],
 *   unit: 'g/eq',
 * });
 * // => { value: 380, unit: 'g/eq' }
 * ```
 */
export function blendEquivalentWeight<U extends EquivalentWeightUnit>(
  input: BlendEquivalentWeightInput<U>,
): Quantity<U> {
  const { components, unit } = fields('blendEquivalentWeight', input);
  const { mass_kg, groups } = readBlend('blendEquivalentWeight', 'components', components);
  if (groups === 0) {
    refuse(
      'blendEquivalentWeight',
      'conflict',
      ['components'],
      'at least one with an equivalentWeight',
      components,
    );
  }
  return write('blendEquivalentWeight', mass_kg / groups, EQUIVALENT_WEIGHT, unit);
}
