import { refuse } from '../core/read.ts';
import type { DecimalRounding } from './decimalText.ts';
import type { FormatQuantityInput } from './formatQuantity.ts';

/** The ways to round, of which one input takes at most one, and how far each may go. */
const MOST = { significantDigits: 15, decimals: 15, denominator: 1000 } as const;
const LEAST = { significantDigits: 1, decimals: 0, denominator: 1 } as const;
const WAYS = ['significantDigits', 'decimals', 'denominator'] as const;

/** How a quantity is to be rounded for writing. */
export interface Rounding extends DecimalRounding {
  readonly denominator?: number | undefined;
}

/** The fields that say how to round, and the unit that feet and inches leave no room for. */
type RoundingInput = Omit<FormatQuantityInput, 'quantity' | 'unit'> & { readonly unit?: unknown };

/** Reads the one way of rounding and its direction. */
export function readRounding(fn: string, input: RoundingInput): Rounding {
  const [way, second] = WAYS.filter((key) => input[key] !== undefined);
  if (second) refuse(fn, 'conflict', [second], `nothing beside ${String(way)}`, input[second]);
  if (input.feetAndInches && way !== 'denominator') {
    refuse(fn, 'missing', ['denominator'], 'a whole number beside feetAndInches', input.denominator);
  }
  if (input.feetAndInches && input.unit !== undefined) {
    refuse(fn, 'conflict', ['unit'], 'nothing beside feetAndInches', input.unit);
  }
  const { direction = 'nearest' } = input;
  if (!['up', 'down', 'nearest'].includes(direction)) {
    refuse(fn, 'out-of-range', ['direction'], "'up', 'down' or 'nearest'", direction);
  }
  if (!way) return { direction };
  const value = input[way];
  const fits = Number.isInteger(value) && Number(value) >= LEAST[way] && Number(value) <= MOST[way];
  if (!fits) refuse(fn, 'out-of-range', [way], `a whole number from ${LEAST[way]} to ${MOST[way]}`, value);
  return { direction, [way]: value };
}
