import type { SameKind, Unit } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import type { TemperatureUnit } from '../core/unitCodes.ts';
import { scalable, times } from './arithmeticInput.ts';
import { answer, valueIn } from './valueIn.ts';

/** Units whose zero means none of it, so that twice as many is twice as much: all but points of temperature. */
export type ScalableUnit = Exclude<Unit, TemperatureUnit>;

/** Input of {@link scale}. */
export interface ScaleInput<
  From extends ScalableUnit = ScalableUnit,
  U extends SameKind<From> = SameKind<From>,
> {
  /** What is taken several times. */
  readonly quantity: Quantity<From>;
  /** How many times; a part of it below 1. */
  readonly by: number;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Several times a quantity, or a part of it. A temperature cannot be scaled: twice 20 °C is not 40 °C.
 *
 * @formula
 * ```math
 * y = k\, x
 * ```
 * @units any kind but a temperature; answers the same kind.
 * @validRange every finite value.
 * @accuracy As `convert`, then one rounding.
 * @source definition
 * @param input - The quantity, how many times, and the unit wanted.
 * @returns The product in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.scale({ quantity: { value: 20, unit: 'usfloz' }, by: 8, unit: 'usgal' }); // => { value: 1.25, unit: 'usgal' }
 * ```
 */
export function scale<From extends ScalableUnit, U extends SameKind<From>>(
  input: ScaleInput<From, U>,
): Quantity<U> {
  const { quantity, by, unit } = fields('scale', input);
  const dimension = scalable('scale', unit);
  const once = valueIn('scale', 'quantity', quantity, dimension, unit);
  return answer('scale', once * times('scale', by), unit);
}
