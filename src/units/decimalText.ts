import type { RoundingDirection } from '../core/fieldValue.ts';

/** What a double out of a formula is worth, in decimal digits. */
const DIGITS = 12;
/** The largest precision that `toPrecision` is asked for: all the digits a double has. */
const ALL_DIGITS = 17;

/** How a number is rounded for reading; with neither count it is not. */
export interface DecimalRounding {
  readonly significantDigits?: number | undefined;
  readonly decimals?: number | undefined;
  readonly direction: RoundingDirection;
}

const MODES = { up: 'ceil', down: 'floor', nearest: 'halfExpand' } as const;

/** A number in decimals, rounded from its decimal digits rather than from the double. */
export function decimalText(value: number, rounding: DecimalRounding, locale: string): string {
  const { significantDigits: significant, decimals, direction } = rounding;
  const digits =
    significant !== undefined
      ? { minimumSignificantDigits: significant, maximumSignificantDigits: significant }
      : decimals !== undefined
        ? { minimumFractionDigits: decimals, maximumFractionDigits: decimals }
        : { maximumSignificantDigits: 21 };
  const worth =
    significant ??
    (decimals === undefined ? ALL_DIGITS : decimals + Math.floor(Math.log10(Math.abs(value))) + 1);
  const number = new Intl.NumberFormat(locale, {
    ...digits,
    roundingMode: MODES[direction],
    signDisplay: 'negative',
  });
  return number.format(
    worth >= ALL_DIGITS ? value : (value.toPrecision(Math.max(DIGITS, worth)) as `${number}`),
  );
}

/** Whole steps of 1/`denominator`, rounded as a number of steps that is whole up to round-off stays one. */
export function wholeSteps(value: number, denominator: number, direction: RoundingDirection): number {
  const steps = Number((value * denominator).toPrecision(DIGITS));
  if (direction === 'up') return Math.ceil(steps);
  return direction === 'down' ? Math.floor(steps) : Math.sign(steps) * Math.round(Math.abs(steps));
}
