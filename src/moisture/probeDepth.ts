import { LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { DEPTH_SHARE, type DryingSides } from './drying.ts';

/** Input of {@link probeDepth}. */
export interface ProbeDepthInput<U extends LengthUnit = LengthUnit> {
  /** Thickness of the slab. */
  readonly slabThickness: Length;
  /** From which sides the slab dries: one over ground or over a metal deck, both over open air. */
  readonly drying: DryingSides;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How deep the hole for a humidity probe must be, so that it reads what the slab will show once it is covered.
 *
 * @formula
 * ```math
 * d = 0.4\,h \;\text{(one side)}, \quad 0.2\,h \;\text{(both sides)}
 * ```
 * @units length; answers length.
 * @validRange slabThickness above 0.
 * @monotone slabThickness +
 * @accuracy Exact up to round-off. The shares are from memory of the method and from restatements of it.
 * @source astm-f2170
 * @param input - Slab, drying sides and the unit wanted.
 * @returns The depth in `input.unit`, not rounded; drill no less.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const slab = { slabThickness: { value: 6, unit: 'in' }, unit: 'in' } as const;
 * moisture.probeDepth({ ...slab, drying: 'one side' }).value.toFixed(2); // => '2.40'
 * moisture.probeDepth({ ...slab, drying: 'both sides' }).value.toFixed(2); // => '1.20'
 * ```
 */
export const probeDepth = /* @__PURE__ */ monotone(
  { slabThickness: '+' },
  <U extends LengthUnit>(input: ProbeDepthInput<U>): Quantity<U> => {
    const { slabThickness, drying, unit } = fields('probeDepth', input);
    const slab_m = read('probeDepth', 'slabThickness', slabThickness, LENGTH, POSITIVE);
    const share = DEPTH_SHARE[readKey('probeDepth', 'drying', drying, DEPTH_SHARE)];
    return write('probeDepth', slab_m * share, LENGTH, unit);
  },
);
