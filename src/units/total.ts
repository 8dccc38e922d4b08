/** The sum of many numbers, also where a part of it would pass the largest double. */
export function total(values: readonly number[]): number {
  const sum = added(values, 1);
  return Number.isFinite(sum) ? sum : added(values, ROOM) / ROOM;
}

/** So much smaller, as many numbers as there can be add up to a double; a power of two, 2^-64, costs no digit. */
const ROOM = 5.421010862427522e-20;

/** The sum of so much of each; what each addition rounds away is kept and added at the end (Neumaier 1974). */
function added(values: readonly number[], part: number): number {
  let sum = 0;
  let lost = 0;
  for (const whole of values) {
    const value = whole * part;
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
