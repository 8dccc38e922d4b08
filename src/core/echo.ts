import type { Quantity } from './quantity.ts';

/** A plain copy of a quantity that was read, for the answer: no further fields of the caller, and no −0. */
export function echo<U extends string>({ value, unit }: Quantity<U>): Quantity<U> {
  return { value: value + 0, unit };
}
