/** Every unit as an exact fraction of the base unit of its kind, out of the tables of the library. */
import type { Exact } from '../../src/core/dimension.ts';
import { DIMENSIONS } from '../../src/core/dimensionOf.ts';
import { nameOf } from '../../src/units/dimensionNamed.ts';
import { decimal, minus, over, plus, times, type Rational } from './rational.ts';

/** The circle constant, a hundred digits. */
const PI =
  '3.1415926535897932384626433832795028841971693993751058209749445923078164062862089986280348253421170679';
/** What each scale shows at the freezing point of water. */
const ZERO: Readonly<Record<string, string>> = { degF: '32', K: '273.15' };

/** Kinds and their units, and every pair of different units of one kind. */
export const kinds = DIMENSIONS.map((dimension) => ({
  name: nameOf(dimension),
  units: Object.keys(dimension.exact),
}));
export const pairs = kinds.flatMap(({ name, units }) =>
  units.flatMap((from) => units.filter((to) => to !== from).map((to) => ({ name, from, to }))),
);

function rational(exact: Exact): Rational {
  if (typeof exact === 'number') return decimal(exact);
  const [numerator, denominator] = exact;
  return over(decimal(numerator === Math.PI ? PI : numerator), decimal(denominator));
}

const worth = new Map(
  DIMENSIONS.flatMap(({ exact }) =>
    Object.entries(exact).map(([unit, value]) => [unit, rational(value)] as const),
  ),
);

/** A number in one unit as the exact number in another. */
export function exactly(value: Rational, from: string, to: string): Rational {
  const zero = (unit: string) => decimal(ZERO[unit] ?? '0');
  const base = times(minus(value, zero(from)), worth.get(from) as Rational);
  return plus(over(base, worth.get(to) as Rational), zero(to));
}
