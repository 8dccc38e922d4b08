import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { TEMPERATURE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import type { TemperatureDifferenceUnit, TemperatureUnit } from '../core/unitCodes.ts';
import { dimensionOfUnit } from './dimensionNamed.ts';
import { differenceUnit } from './differenceUnit.ts';
import { answer, valueIn } from './valueIn.ts';

/** What can be added to a quantity: another of its kind, and to a temperature only a difference. */
export type AddendUnit<U extends Unit> = [U] extends [TemperatureUnit]
  ? TemperatureDifferenceUnit
  : SameKind<U>;

/** Input of {@link add}. */
export interface AddInput<
  To extends Unit = Unit,
  By extends AddendUnit<To> = AddendUnit<To>,
  U extends SameKind<To> = SameKind<To>,
> {
  /** What is added. */
  readonly quantity: Quantity<By>;
  /** What it is added to. */
  readonly to: Quantity<To>;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * One quantity more than another. To a temperature only a difference can be added.
 *
 * @formula
 * ```math
 * y = a + b
 * ```
 * @units two quantities of one kind, or a temperature difference and a temperature; answers the kind of `to`.
 * @validRange every finite value.
 * @monotone quantity +, to +
 * @accuracy Each part as `convert`, then one rounding; in one unit the plain sum of the two numbers.
 * @source definition
 * @param input - The two quantities and the unit wanted.
 * @returns The sum in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.add({ quantity: { value: 1, unit: 'usqt' }, to: { value: 2, unit: 'usgal' }, unit: 'usgal' });
 * // => { value: 2.25, unit: 'usgal' }
 * units.add({ quantity: { value: 9, unit: 'deltaF' }, to: { value: 20, unit: 'degC' }, unit: 'degC' });
 * // => { value: 25, unit: 'degC' }
 * ```
 */
export const add = /* @__PURE__ */ monotone(
  { quantity: '+', to: '+' },
  <To extends Unit, By extends AddendUnit<To>, U extends SameKind<To>>(
    input: AddInput<To, By, U>,
  ): Quantity<U> => {
    const { quantity, to, unit } = fields('add', input);
    const dimension = dimensionOfUnit('add', unit);
    const whole = valueIn('add', 'to', to, dimension, unit);
    const part =
      dimension.kind === TEMPERATURE.kind
        ? valueIn('add', 'quantity', quantity, TEMPERATURE_DIFFERENCE, differenceUnit(unit))
        : valueIn('add', 'quantity', quantity, dimension, unit);
    return answer('add', whole + part, unit);
  },
);
