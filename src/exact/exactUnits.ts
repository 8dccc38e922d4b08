/** The converter that knows our definitions as fractions and counts in decimals of any length. */
import configureMeasurements, { type Fraction, type Measure, type Wrapper } from 'convert-units';
import { Decimal } from 'decimal.js';
import type { Exact } from '../core/dimension.ts';
import { DIMENSIONS } from '../core/dimensionOf.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import { AT_ZERO_CELSIUS } from '../core/temperature.ts';

/** The most digits that are answered. */
export const MOST_DIGITS = 1000;
/** Digits carried beyond those asked for. */
const GUARD = 24;
/** Of those, the ones that the rounding of the steps before cannot have reached. */
const CLEAN = 20;

/** A private copy, so that no setting of ours reaches the caller's decimals, nor theirs ours. */
const Long = /* @__PURE__ */ longDecimal();

function longDecimal(): typeof Decimal {
  return Decimal.clone({ precision: MOST_DIGITS + GUARD, rounding: Decimal.ROUND_HALF_UP });
}

/** What the converter asks of a number type; it compares only to find the handiest unit, which nobody asks it for. */
export const decimals: Wrapper<Decimal> = {
  create: (value) => new Long(value),
  add: (a, b) => Long.add(a, b),
  sub: (a, b) => Long.sub(a, b),
  mul: (a, b) => Long.mul(a, b),
  div: (a, b) => Long.div(a, b),
  lt: (a, b) => new Long(a).lt(b),
  lte: (a, b) => new Long(a).lte(b),
  gt: (a, b) => new Long(a).gt(b),
  gte: (a, b) => new Long(a).gte(b),
};

type Converter = ReturnType<typeof configureMeasurements<string, string, string, Decimal>>;
let converter: Converter | undefined;

/** A number in another unit, rounded to so many digits. */
export function convertDecimal(value: Decimal, from: string, to: string, digits: number): string {
  converter ??= configureMeasurements(measures(), decimals);
  Long.set({ precision: digits + GUARD });
  // The converter hands whatever number it is given to `create` of its number type.
  const result = converter(value as unknown as number)
    .from(from)
    .to(to);
  // What ends in 5 exactly is found again before it is rounded.
  const clean = result.toSignificantDigits(digits + CLEAN).toSignificantDigits(digits);
  return clean.isZero() ? '0' : clean.toFixed();
}

/** A double as the decimal digits it was typed with, or as the binary number that it is. */
export function decimalOf(value: number, as: 'double' | 'digits'): Decimal {
  Long.set({ precision: MOST_DIGITS + GUARD });
  if (as === 'digits') return new Long(value);
  let whole = value;
  let halvings = 0;
  for (; !Number.isInteger(whole); halvings++) whole *= 2;
  return new Long(BigInt(whole).toString()).div(new Long(2).pow(halvings));
}

function measures(): Record<string, Measure<string, string>> {
  return Object.fromEntries(
    DIMENSIONS.map(({ kind, exact }) => [
      kind,
      kind === TEMPERATURE.kind ? temperature() : { systems: { all: mapValues(exact, unitOf) } },
    ]),
  );
}

/** Fahrenheit is a system of its own, so that its zero is taken off before anything is divided. */
function temperature(): Measure<string, string> {
  const [fifths, ninths] = TEMPERATURE.exact.degF as readonly [number, number];
  const scale = (zero: number) => ({ ...unitOf(1), anchor_shift: String(zero) });
  return {
    systems: {
      celsius: { degC: unitOf(1), K: scale(AT_ZERO_CELSIUS.K) },
      fahrenheit: { degF: scale(AT_ZERO_CELSIUS.degF) },
    },
    anchors: {
      celsius: { fahrenheit: { transform: (x, number) => number.div(number.mul(x, ninths), fifths) } },
      fahrenheit: { celsius: { transform: (x, number) => number.div(number.mul(x, fifths), ninths) } },
    },
  };
}

function unitOf(exact: Exact): { name: { singular: string; plural: string }; to_anchor: Fraction } {
  return { name: { singular: '', plural: '' }, to_anchor: fraction(exact) };
}

function fraction(exact: Exact): Fraction {
  if (typeof exact === 'number') return { numerator: String(exact), denominator: 1 };
  const [numerator, denominator] = exact;
  // In our tables this double stands for the circle constant itself.
  const digits = numerator === Math.PI ? Long.acos(-1).toString() : numerator;
  return { numerator: digits, denominator };
}

function mapValues<V, W>(record: Readonly<Record<string, V>>, map: (value: V) => W): Record<string, W> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, map(value)]));
}
