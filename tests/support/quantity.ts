/** A quantity in fewer signs, for tests. */
export function q<U extends string>(value: number, unit: U): { value: number; unit: U } {
  return { value, unit };
}
