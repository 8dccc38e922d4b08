import type { Basis, Caution } from './caution.ts';
import type { Quantity } from './quantity.ts';

/** `undecided`: the limit lies inside the uncertainty of the reading, so nobody can tell. It is not a pass. */
export type Verdict = 'meets' | 'fails' | 'undecided';

/** A reading judged against a limit. */
export interface Assessment<U extends string = string> {
  /** What can be said. */
  readonly verdict: Verdict;
  /** What was measured, or computed from what was measured. */
  readonly measured: Quantity<U>;
  /** What it was judged against, in the unit in which the limit was given. */
  readonly limit: Quantity<U>;
  /** Room to the limit; below 0 on the wrong side of it. */
  readonly gap: Quantity<U>;
  /** Half the width in which the true value lies, where errors were given: as bounds, or expanded by the GUM. */
  readonly uncertainty?: Quantity<U> | undefined;
  /** What belongs with the verdict. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The verdict for a gap to a limit. A reading exactly on the limit meets it; `scale` is the size of the numbers that
 * were subtracted, whose round-off may hide in the gap.
 */
export function judge(gap: number, uncertainty: number, scale: number): Verdict {
  const slack = 1e-12 * scale;
  if (gap >= uncertainty - slack) return 'meets';
  return gap <= -uncertainty + (uncertainty > 0 ? slack : 0) ? 'fails' : 'undecided';
}

/** From the best to the worst. */
export const VERDICTS: readonly Verdict[] = ['meets', 'undecided', 'fails'];

/** The finding with the worst verdict, and of several such the one with the least room; nothing where there is none. */
export function worstBy<F extends { readonly verdict: Verdict }>(
  findings: readonly F[],
  room: (finding: F) => number,
): F | undefined {
  const rank = ({ verdict }: F) => VERDICTS.indexOf(verdict);
  const worse = (a: F, b: F) => rank(b) > rank(a) || (rank(b) === rank(a) && room(b) < room(a));
  return findings.reduce<F | undefined>((a, b) => (!a || worse(a, b) ? b : a), undefined);
}

/** The worst of several verdicts; nothing to judge meets. */
export function worstOf(verdicts: readonly Verdict[]): Verdict {
  return verdicts.reduce((a, b) => (VERDICTS.indexOf(b) > VERDICTS.indexOf(a) ? b : a), 'meets');
}
