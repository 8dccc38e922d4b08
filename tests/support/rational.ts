/** Exact arithmetic on fractions of whole numbers, independent of the library: what the results are held against. */

/** A numerator and a denominator above 0. */
export type Rational = readonly [bigint, bigint];

/** The decimal digits of a text or a number, exactly. */
export function decimal(digits: string | number): Rational {
  const found = /^(-?)(\d*)\.?(\d*)(?:e([+-]?\d+))?$/.exec(String(digits));
  if (!found) throw new Error(`no decimal: ${digits}`);
  const [, sign = '', whole = '', part = '', exponent = '0'] = found;
  const places = Number(exponent) - part.length;
  const value = BigInt(sign + whole + part);
  return places >= 0 ? [value * 10n ** BigInt(places), 1n] : [value, 10n ** BigInt(-places)];
}

/** The binary number that a double is, exactly. */
export function double(value: number): Rational {
  let whole = value;
  let halvings = 0n;
  for (; !Number.isInteger(whole); halvings++) whole *= 2;
  return [BigInt(whole), 2n ** halvings];
}

export const plus = ([a, b]: Rational, [c, d]: Rational): Rational => [a * d + c * b, b * d];
export const minus = (a: Rational, [c, d]: Rational): Rational => plus(a, [-c, d]);
export const times = ([a, b]: Rational, [c, d]: Rational): Rational => [a * c, b * d];
export const over = ([a, b]: Rational, [c, d]: Rational): Rational =>
  c < 0n ? [-a * d, -b * c] : [a * d, b * c];

/** A fraction as a double; good to the last digits, for sizes and differences. */
export function toNumber([a, b]: Rational): number {
  if (a === 0n) return 0;
  const shift = BigInt(b.toString(2).length - a.toString(2).length + 80);
  const scaled = shift >= 0n ? (a << shift) / b : a / (b << -shift);
  return Number(scaled) * 2 ** -Number(shift);
}

/** A fraction in so many significant digits, rounded half away from 0, as decimal digits without exponent. */
export function toDigits([a, b]: Rational, digits: number): string {
  if (a === 0n) return '0';
  const size = a < 0n ? -a : a;
  // The place of the first digit, found by trial.
  let places = digits - (size.toString().length - b.toString().length) - 1;
  const scaled = (): Rational =>
    places >= 0 ? [size * 10n ** BigInt(places), b] : [size, b * 10n ** BigInt(-places)];
  const rounded = () => {
    const [top, bottom] = scaled();
    return (top * 2n + bottom) / (bottom * 2n);
  };
  while (rounded() < 10n ** BigInt(digits - 1)) places++;
  while (rounded() >= 10n ** BigInt(digits)) places--;
  return (a < 0n ? '-' : '') + pointed(rounded(), places);
}

/** A whole number with its decimal point moved left, without noughts at the end. */
function pointed(value: bigint, places: number): string {
  if (places <= 0) return String(value * 10n ** BigInt(-places));
  const text = String(value).padStart(places + 1, '0');
  return `${text.slice(0, -places)}.${text.slice(-places)}`.replace(/\.?0+$/, '');
}

/** How many units in the last place of a double lie between it and the exact value. */
export function ulpsOff(got: number, exact: Rational): number {
  return Math.abs(toNumber(minus(double(got), exact))) / ulp(got);
}

function ulp(value: number): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, Math.abs(value));
  view.setBigUint64(0, view.getBigUint64(0) + 1n);
  return view.getFloat64(0) - Math.abs(value);
}
