import { scaleOf, UNKNOWN, type SameKind, type Unit, type UnitScale } from '../core/dimensionOf.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { ANY } from '../core/limits.ts';
import { rescaled } from './rescaled.ts';

/** The units of the last call: looking them up is most of the work, and a caller seldom changes them. */
let from: UnitScale | undefined;
let to: UnitScale | undefined;

/** Input of {@link convert}. */
export interface ConvertInput<From extends Unit = Unit, To extends SameKind<From> = SameKind<From>> {
  /** What to convert. */
  readonly quantity: Quantity<From>;
  /** Unit of the answer, of the same kind. */
  readonly unit: To;
}

/**
 * The same quantity in another unit.
 *
 * @formula
 * ```math
 * y = \frac{(x - x_0)\, f_x}{f_y} + y_0
 * ```
 * @units any two units of one kind; every definition stands in `nomenclature.json`.
 * @validRange every finite value; a temperature at or above absolute zero. A temperature never converts to a
 * temperature difference.
 * @monotone quantity +
 * @accuracy Within 3 units in the last place of the exact result, from 1e-290 of a base unit up, below which doubles
 * run out of digits; temperatures of this world within 2e-13 K. The same unit gives the value untouched.
 * @source nist-sp-811
 * @param input - The quantity and the unit wanted.
 * @returns The quantity in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.convert({ quantity: { value: 5, unit: 'usgal' }, unit: 'in3' }); // => { value: 1155, unit: 'in3' }
 * units.convert({ quantity: { value: 5, unit: 'deltaF' }, unit: 'deltaC' }).value.toFixed(4); // => '2.7778'
 * ```
 */
export const convert = /* @__PURE__ */ monotone(
  { quantity: '+' },
  <From extends Unit, To extends SameKind<From>>(input: ConvertInput<From, To>): Quantity<To> => {
    const { quantity, unit } = fields('convert', input);
    // A caller without types may hand over anything, hence the question mark.
    const given = quantity as Quantity | undefined;
    if (given?.unit !== from?.unit || unit !== to?.unit) {
      from = scaleOf(given?.unit);
      to = scaleOf(unit);
    }

    let value = NaN;
    if (from && from.dimension === to?.dimension && typeof given?.value === 'number') {
      value = rescaled(given.value, from, to);
      if (Number.isFinite(value)) return { value, unit };
    }
    // What did not go through is refused here, each with its reason.
    const kind = (from ?? to)?.dimension ?? UNKNOWN;
    read<string>('convert', 'quantity', given, kind, ANY);
    write('convert', 0, kind, unit);
    // Not a number: a temperature that does not exist.
    return value
      ? refuse('convert', 'too-large', ['quantity'], 'finite in ' + unit, quantity)
      : refuse('convert', 'out-of-range', ['quantity'], 'from 0 K up', quantity);
  },
);
