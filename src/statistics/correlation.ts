/** How uncertain inputs hang together. */
import type { Limits } from '../core/limits.ts';
import { refuse } from '../core/read.ts';
import { readChoice, readList, readNumber, readObjects } from '../core/readPlain.ts';
import type { Slot } from './slots.ts';

/** Two inputs that are off together, as when one instrument read both. Pairs that are not named are independent. */
export interface Correlation {
  /** The names of the two, with points between where they stand deeper: `tests.0.gain`. No pair is named twice. */
  readonly between: readonly [string, string];
  /** 1 where they are off the same way always, −1 where the opposite way, 0 where they are independent. */
  readonly coefficient: number;
}

const COEFFICIENT: Limits = { above: -1.000000000001, below: 1.000000000001, words: ' from -1 to 1' };

/** Reads the correlations into a matrix; one that nothing can have is refused. */
export function readCorrelations(
  fn: string,
  given: readonly Correlation[] | undefined,
  slots: readonly Slot[],
): readonly (readonly number[])[] {
  const matrix = slots.map((_, i) => slots.map((__, j) => (i === j ? 1 : 0)));
  if (given === undefined) return matrix;
  const names = slots.map(({ name }) => name);
  const named = new Set<string>();
  readObjects(fn, 'correlations', given, 0).forEach(({ between, coefficient }, n) => {
    const path = ['correlations', n];
    const pair = readList(fn, 'between', between, 2, path);
    const [i = 0, j = 0] = pair
      .slice(0, 2)
      .map((name, end) => names.indexOf(readChoice(fn, end, name, names, [...path, 'between'])));
    if (pair.length > 2 || i === j)
      refuse(fn, 'conflict', [...path, 'between'], 'two different names', between);
    const both = `${Math.min(i, j)} ${Math.max(i, j)}`;
    if (named.has(both)) {
      refuse(fn, 'conflict', [...path, 'between'], 'two names that no other entry has together', between);
    }
    named.add(both);
    const r = readNumber(fn, 'coefficient', coefficient, COEFFICIENT, path);
    (matrix[i] as number[])[j] = r;
    (matrix[j] as number[])[i] = r;
  });
  if (!isPossible(matrix)) {
    refuse(fn, 'conflict', ['correlations'], 'coefficients that can hold together', 'ones that cannot');
  }
  return matrix;
}

/** Whether no combination of the inputs would have a negative variance (Cholesky's decomposition). */
function isPossible(matrix: readonly (readonly number[])[]): boolean {
  const roots: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const own: number[] = [];
    for (let j = 0; j < i; j++) {
      const other = roots[j] as number[];
      const left = own.reduce((rest, one, k) => rest - one * (other[k] as number), row[j] as number);
      const root = other[j] as number;
      // Where nothing of the other is left, what is left of the two together must be round-off.
      if (root === 0 && Math.abs(left) > SLACK) return false;
      own.push(root === 0 ? 0 : left / root);
    }
    const left = own.reduce((rest, one) => rest - one * one, 1);
    if (left < -SLACK) return false;
    own.push(left > SLACK ? Math.sqrt(left) : 0);
    roots.push(own);
  }
  return true;
}
/** Coefficients are known to a few digits; those of the same readings may be a little beyond what is possible. */
const SLACK = 1e-9;

/** The inputs that hang together, directly or through others, as lists of their places. */
export function groupsOf(matrix: readonly (readonly number[])[]): number[][] {
  const groups: number[][] = [];
  const seen = new Set<number>();
  for (const start of matrix.keys()) {
    if (seen.has(start)) continue;
    const group = [start];
    seen.add(start);
    for (const i of group) {
      for (const [j, r] of (matrix[i] as readonly number[]).entries()) {
        if (r === 0 || seen.has(j)) continue;
        seen.add(j);
        group.push(j);
      }
    }
    groups.push(group);
  }
  return groups;
}
