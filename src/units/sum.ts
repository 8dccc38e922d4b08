import type { SameKind } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { listIn, scalable } from './arithmeticInput.ts';
import type { ScalableUnit } from './scale.ts';
import { total } from './total.ts';
import { answer, valueIn } from './valueIn.ts';

/** Input of {@link sum}. */
export interface SumInput<U extends ScalableUnit = ScalableUnit> {
  /** What is added up, each in its own unit. */
  readonly quantities: readonly Quantity<SameKind<U>>[];
  /** Unit of the answer, which says what kind the quantities are. */
  readonly unit: U;
}

/**
 * All of several quantities together. None at all is 0. Temperatures have no sum.
 *
 * @formula
 * ```math
 * y = \sum_i x_i
 * ```
 * @units any kind but a temperature; answers the same kind.
 * @validRange every finite value.
 * @accuracy Each part as `convert`; adding them up loses no more than one rounding, however many there are.
 * @source definition
 * @param input - The quantities and the unit wanted.
 * @returns The sum in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * const rooms = [{ value: 120, unit: 'ft2' }, { value: 10, unit: 'yd2' }] as const;
 * units.sum({ quantities: rooms, unit: 'ft2' }).value.toFixed(9); // => '210.000000000'
 * units.sum({ quantities: Array(10).fill({ value: 0.1, unit: 'l' }), unit: 'l' }); // => { value: 1, unit: 'l' }
 * ```
 */
export function sum<U extends ScalableUnit>(input: SumInput<U>): Quantity<U> {
  const { quantities, unit } = fields('sum', input);
  const dimension = scalable('sum', unit);
  const values = Array.from(listIn('sum', 'quantities', quantities), (quantity, i) =>
    valueIn('sum', i, quantity as Quantity, dimension, unit, ['quantities']),
  );
  return answer('sum', total(values), unit);
}
