/**
 * Sums a term over the walls of one ring, each from corner `last` to corner `i`. What rounding loses of the sum is
 * kept apart and added in the end (Neumaier, 1974), so that 100,000 walls lose no more than a few.
 */
export function sumAround(start: number, end: number, term: (last: number, i: number) => number): number {
  let sum = 0;
  let lost = 0;
  for (let i = start, last = end - 1; i < end; last = i++) {
    const next = term(last, i);
    const total = sum + next;
    lost += Math.abs(sum) >= Math.abs(next) ? sum - total + next : next - total + sum;
    sum = total;
  }
  return sum + lost;
}
