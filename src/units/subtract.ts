import { dimensionOf, type SameKind, type Unit } from '../core/dimensionOf.ts';
import { TEMPERATURE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import type { TemperatureDifferenceUnit, TemperatureUnit } from '../core/unitCodes.ts';
import { differenceUnit, pointUnit } from './differenceUnit.ts';
import { dimensionOfUnit } from './dimensionNamed.ts';
import { answer, valueIn } from './valueIn.ts';

/** What can be subtracted from a quantity: another of its kind, and from a temperature also a difference. */
export type SubtrahendUnit<U extends Unit> = [U] extends [TemperatureUnit]
  ? TemperatureUnit | TemperatureDifferenceUnit
  : SameKind<U>;

/** The units of what is left: between two temperatures lies a difference. */
export type RemainderUnit<From extends Unit, Less extends Unit> = [From] extends [TemperatureUnit]
  ? [Less] extends [TemperatureUnit]
    ? TemperatureDifferenceUnit
    : [Less] extends [TemperatureDifferenceUnit]
      ? TemperatureUnit
      : never
  : SameKind<From>;

/** Input of {@link subtract}. */
export interface SubtractInput<
  From extends Unit = Unit,
  Less extends SubtrahendUnit<From> = SubtrahendUnit<From>,
  U extends RemainderUnit<From, Less> = RemainderUnit<From, Less>,
> {
  /** What is taken away. */
  readonly quantity: Quantity<Less>;
  /** What it is taken from. */
  readonly from: Quantity<From>;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * What is left of one quantity when another is taken from it. Between two temperatures lies a difference.
 *
 * @formula
 * ```math
 * y = a - b
 * ```
 * @units two quantities of one kind, or a temperature less a temperature or less a difference.
 * @validRange every finite value.
 * @monotone quantity -, from +
 * @accuracy Each part as `convert`, then one rounding; in one unit the plain difference of the two numbers.
 * @source definition
 * @param input - The two quantities and the unit wanted.
 * @returns What is left in `input.unit`, not rounded; below 0 where more was taken than there was.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.subtract({ quantity: { value: 1, unit: 'usqt' }, from: { value: 2, unit: 'usgal' }, unit: 'usgal' });
 * // => { value: 1.75, unit: 'usgal' }
 * units.subtract({ quantity: { value: 59, unit: 'degF' }, from: { value: 20, unit: 'degC' }, unit: 'deltaC' });
 * // => { value: 5, unit: 'deltaC' }
 * ```
 */
export const subtract = /* @__PURE__ */ monotone(
  { quantity: '-', from: '+' },
  <From extends Unit, Less extends SubtrahendUnit<From>, U extends RemainderUnit<From, Less>>(
    input: SubtractInput<From, Less, U>,
  ): Quantity<U> => {
    const { quantity, from, unit } = fields('subtract', input);
    const [whole, part] = inSteps(from, quantity, unit);
    return answer('subtract', whole - part, unit);
  },
);

/** Both quantities in steps of the unit asked for. */
function inSteps(from: Quantity, quantity: Quantity, unit: Unit): [number, number] {
  const dimension = dimensionOfUnit('subtract', unit);
  const whole = (kind = dimension, step: string = unit) => valueIn('subtract', 'from', from, kind, step);
  const part = (kind = dimension, step: string = unit) =>
    valueIn('subtract', 'quantity', quantity, kind, step);
  if (dimension.kind === TEMPERATURE.kind)
    return [whole(), part(TEMPERATURE_DIFFERENCE, differenceUnit(unit))];
  const betweenPoints =
    dimension.kind === TEMPERATURE_DIFFERENCE.kind &&
    dimensionOf((from as Quantity | null | undefined)?.unit)?.kind === TEMPERATURE.kind;
  return betweenPoints
    ? [whole(TEMPERATURE, pointUnit(unit)), part(TEMPERATURE, pointUnit(unit))]
    : [whole(), part()];
}
