import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { readScale } from '../core/readScale.ts';
import { AT_ZERO_CELSIUS } from '../core/temperature.ts';
import { valueIn } from './valueIn.ts';

/** Input of {@link compare}. */
export interface CompareInput<A extends Unit = Unit, B extends SameKind<A> = SameKind<A>> {
  /** What is compared. */
  readonly quantity: Quantity<A>;
  /** What it is compared to. */
  readonly to: Quantity<B>;
}

/**
 * Which of two quantities is more, whatever their units: for sorting and for limits.
 *
 * @formula
 * ```math
 * \operatorname{sign}(a - b)
 * ```
 * @units two quantities of one kind; answers a plain number.
 * @validRange every finite value.
 * @accuracy Two quantities that differ by less than 1e-12 of the larger one are equal: so much is round-off. For
 * temperatures the size is counted from absolute zero.
 * @source definition
 * @param input - The two quantities.
 * @returns 1 where `quantity` is more, −1 where it is less, 0 where they are equal up to round-off.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.compare({ quantity: { value: 1, unit: 'usgal' }, to: { value: 1, unit: 'impgal' } }); // => -1
 * units.compare({ quantity: { value: 231, unit: 'in3' }, to: { value: 1, unit: 'usgal' } }); // => 0
 * ```
 */
export function compare<A extends Unit, B extends SameKind<A>>(input: CompareInput<A, B>): -1 | 0 | 1 {
  const { quantity, to } = fields('compare', input);
  const { dimension, factor, zero } = readScale('compare', 'quantity', quantity);
  const { value, unit } = quantity;
  const other = valueIn('compare', 'to', to, dimension, unit);
  // Where nothing is, on the scale of the first.
  const nothing = dimension.kind === TEMPERATURE.kind ? zero - AT_ZERO_CELSIUS.K / factor : 0;
  const slack = 1e-12 * Math.max(Math.abs(value - nothing), Math.abs(other - nothing));
  if (Math.abs(value - other) <= slack) return 0;
  return value > other ? 1 : -1;
}
