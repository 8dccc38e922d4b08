import type { Quantity } from './quantity.ts';
import { refuse } from './read.ts';

/** A function of one input object that answers one quantity. */
export type Formula = (input: never) => Quantity;

/** How the answer moves when one input grows: always up, always down, or not always the same way. */
export type Direction = '+' | '-' | 'none';

/** What a formula declares of its inputs. */
export type Directions<F extends Formula> = { readonly [K in keyof Parameters<F>[0]]?: Direction };

/**
 * Declares how a formula moves with each of its inputs, so that `across` can answer with a proven range.
 *
 * The formula is returned as it is; the declaration is yours to be right about, and a property test should hold it.
 *
 * @param directions - For each input: `'+'` the answer never falls as it grows, `'-'` never rises, `'none'` neither.
 * @param formula - A function of one input object that answers one quantity.
 * @returns The same formula.
 * @throws An `InputError`: `missing` where no formula came.
 * @example
 * ```ts
 * import { across, between, monotone, type Area, type Quantity } from 'coating-math/core';
 *
 * const half = monotone({ area: '+' }, ({ area }: { area: Area }): Quantity<'m2'> => ({ value: area.value / 2, unit: 'm2' }));
 * across(half, { area: between(40, 50, 'm2') }).enclosure; // => 'proven'
 * ```
 */
export function monotone<F extends Formula>(directions: Directions<F>, formula: F): F {
  return typeof formula === 'function'
    ? Object.assign(formula, { directions })
    : refuse('monotone', 'missing', [], 'a function', formula);
}

/** The declaration of a formula, or nothing. */
export function directionsOf(formula: object): Readonly<Record<string, Direction | undefined>> {
  return (formula as { directions?: Readonly<Record<string, Direction>> }).directions ?? {};
}
