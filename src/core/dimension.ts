/**
 * An exact positive number: a number that means its decimal digits, or a fraction where those would not end. A part
 * of a fraction is text where a double would not hold all its digits.
 */
export type Exact = number | readonly [numerator: number | string, denominator: number | string];

/** All units in which one kind of quantity may be given, each by its exact definition. */
export interface Dimension<U extends string> {
  /** What one such quantity is called, with its article, as messages have it. */
  readonly kind: string;
  /** One unit in base units, exactly. */
  readonly exact: Readonly<Record<U, Exact>>;
  /** The unit looked up last and its factor, see {@link factorOf}. */
  lastUnit: unknown;
  lastFactor: number | undefined;
}

/** Sets up one kind of quantity from its exact definitions. */
export function dimension<U extends string>(kind: string, exact: Readonly<Record<U, Exact>>): Dimension<U> {
  return { kind, exact, lastUnit: undefined, lastFactor: undefined };
}

/** The nearest double, or one beside it. */
export function toDouble(exact: Exact): number {
  return typeof exact === 'number' ? exact : Number(exact[0]) / Number(exact[1]);
}

/**
 * One unit in base units, or nothing for a unit of another kind. Looking a word up in a table is most of what a
 * guarded formula costs, and a caller seldom changes units, so the last one is remembered.
 */
export function factorOf(dimension: Dimension<string>, unit: unknown): number | undefined {
  if (unit !== dimension.lastUnit) {
    dimension.lastUnit = unit;
    // A list of one word would pass for the word, and an inherited name for a unit.
    const known = typeof unit === 'string' && Object.hasOwn(dimension.exact, unit);
    dimension.lastFactor = known ? toDouble(dimension.exact[unit] as Exact) : undefined;
  }
  return dimension.lastFactor;
}
