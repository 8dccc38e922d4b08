import type { Dimension } from '../core/dimension.ts';
import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { LENGTH } from '../core/dimensions.ts';
import type { RoundingDirection } from '../core/fieldValue.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { readScale } from '../core/readScale.ts';
import { decimalText, wholeSteps } from './decimalText.ts';
import { dimensionOfUnit } from './dimensionNamed.ts';
import { feetAndInchesText, mixedNumberText } from './mixedNumberText.ts';
import { numberStyle } from './numberStyle.ts';
import { readRounding } from './readRounding.ts';
import { UNIT_NAMES } from './unitNames.ts';
import { answer, valueIn } from './valueIn.ts';

/** Input of {@link formatQuantity}. At most one of `significantDigits`, `decimals` and `denominator` is given. */
export interface FormatQuantityInput<From extends Unit = Unit> {
  /** What is written. */
  readonly quantity: Quantity<From>;
  /** Language tag whose way of writing numbers is used, such as `'en-US'`; never taken from the machine. */
  readonly locale: string;
  /** Unit to write it in; its own where left out. */
  readonly unit?: SameKind<From> | undefined;
  /** Round to so many digits that count, 1 to 15. */
  readonly significantDigits?: number | undefined;
  /** Round to so many decimals, 0 to 15. */
  readonly decimals?: number | undefined;
  /** Round to marks of 1/denominator of the unit and write a fraction: 16 for 1/16 in, 2 for 1/2 US fl oz. */
  readonly denominator?: number | undefined;
  /** Write a length as feet, inches and a fraction of an inch; needs `denominator`. */
  readonly feetAndInches?: boolean | undefined;
  /** Which way to round: up for what is bought, down for what is promised; to the nearest where left out. */
  readonly direction?: RoundingDirection | undefined;
  /** Leave the unit away, for a field that has its unit beside it. */
  readonly withoutUnit?: boolean | undefined;
}

/**
 * A quantity as people write it: in their language, with decimals or with the fractions of a tape or a cup.
 *
 * It is rounded in decimals and on 12 significant digits, so that round-off never moves a figure to the next mark.
 * Without a way of rounding it is written with all its digits. `parseQuantity` reads every text back.
 *
 * @param input - The quantity, the language and how to round.
 * @returns The text.
 * @throws An `InputError` that names the field; `conflict` for two ways of rounding.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * const rate = { value: 1604.1666666666667, unit: 'ft2/usgal' } as const;
 * units.formatQuantity({ quantity: rate, locale: 'en-US', significantDigits: 4 }); // => '1,604 ft²/US gal'
 * units.formatQuantity({ quantity: rate, locale: 'de-DE', unit: 'm2/l', decimals: 1 }); // => '39,4 m²/L'
 *
 * const wall = { value: 3.82, unit: 'm' } as const;
 * units.formatQuantity({ quantity: wall, locale: 'en-US', feetAndInches: true, denominator: 16 }); // => `12' 6 3/8"`
 *
 * const cup = { value: 0.105, unit: 'l' } as const;
 * units.formatQuantity({ quantity: cup, locale: 'en-US', unit: 'usfloz', denominator: 2, direction: 'up' });
 * // => '4 US fl oz'
 * ```
 */
export function formatQuantity<From extends Unit>(input: FormatQuantityInput<From>): string {
  const fn = 'formatQuantity';
  const { quantity, unit, feetAndInches, withoutUnit } = fields(fn, input);
  const style = numberStyle(fn, input.locale);
  const rounding = readRounding(fn, input);
  const { denominator, direction } = rounding;

  const dimension = feetAndInches ? LENGTH : dimensionShown(fn, quantity, unit);
  const shown: Unit = feetAndInches ? 'in' : (unit ?? quantity.unit);
  const value = valueIn(fn, 'quantity', quantity, dimension, shown);
  if (denominator === undefined) return withUnit(decimalText(value, rounding, input.locale));

  const steps = answer(fn, wholeSteps(value, denominator, direction), shown, ['quantity']).value;
  return feetAndInches
    ? feetAndInchesText(steps, denominator, style)
    : withUnit(mixedNumberText(steps, denominator, style));

  function withUnit(number: string): string {
    return withoutUnit ? number : `${number} ${UNIT_NAMES[shown][1]}`;
  }
}

/** The kind of the unit asked for, or else of what came. */
function dimensionShown(fn: string, quantity: Quantity, unit: Unit | undefined): Dimension<string> {
  return unit === undefined ? readScale(fn, 'quantity', quantity).dimension : dimensionOfUnit(fn, unit);
}
