import { EQUIVALENT_WEIGHT, SHARE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { EquivalentWeight, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** Input of {@link partsPerHundredResin}. */
export interface PartsPerHundredResinInput<U extends ShareUnit = ShareUnit> {
  /** How much of the resin carries one group. */
  readonly resin: EquivalentWeight;
  /** How much of the hardener carries one group for that resin. */
  readonly hardener: EquivalentWeight;
  /** Groups of the hardener for each group of the resin: 1.05 as a fraction or 105 %. As many where not given. */
  readonly index?: Share | undefined;
  /** Unit of the answer: `%` gives parts per hundred. */
  readonly unit: U;
}

/**
 * How much hardener by weight a resin needs, so that every group finds its partner: the parts per hundred of resin.
 *
 * The ratio that the instructions of the product state comes first: it knows what else is in the pail.
 *
 * @formula
 * ```math
 * \mathrm{phr} = 100 \, I \, \frac{E_\mathrm{hardener}}{E_\mathrm{resin}}
 * ```
 * @units equivalent weights, share; answers share of the resin's mass.
 * @validRange all above 0.
 * @monotone resin -, hardener +, index +
 * @accuracy Exact up to round-off.
 * @source iasj-dsc, polimeros-dgeba
 * @param input - Equivalent weights, index and the unit wanted.
 * @returns Hardener as a share of the resin's mass in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * mix.partsPerHundredResin({
 *   resin: { value: 190, unit: 'g/eq' },
 *   hardener: { value: 95, unit: 'g/eq' },
 *   unit: '%',
 * }); // => { value: 50, unit: '%' }
 * ```
 */
export const partsPerHundredResin = /* @__PURE__ */ monotone(
  { resin: '-', hardener: '+', index: '+' },
  <U extends ShareUnit>(input: PartsPerHundredResinInput<U>): Quantity<U> => {
    const { resin, hardener, index, unit } = fields('partsPerHundredResin', input);
    const resinWeight = read('partsPerHundredResin', 'resin', resin, EQUIVALENT_WEIGHT, POSITIVE);
    const hardenerWeight = read('partsPerHundredResin', 'hardener', hardener, EQUIVALENT_WEIGHT, POSITIVE);
    const ratio = readOr(1, 'partsPerHundredResin', 'index', index, SHARE, POSITIVE);
    return write('partsPerHundredResin', (ratio * hardenerWeight) / resinWeight, SHARE, unit);
  },
);
