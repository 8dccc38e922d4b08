import { VERDICTS, type Verdict } from '../core/assessment.ts';

/** What findings are ranked by. */
interface Ranked {
  readonly verdict: Verdict;
  readonly gap: number;
  readonly limit: number;
}

/** The worst of several findings: by verdict, then by the room that is left as a share of the limit. */
export function worstFinding<F extends Ranked>(findings: readonly F[]): F | undefined {
  const rank = ({ verdict }: F) => VERDICTS.indexOf(verdict);
  const room = ({ gap, limit }: F) => gap / (limit || 1);
  const worse = (a: F, b: F) => rank(b) > rank(a) || (rank(b) === rank(a) && room(b) < room(a));
  return findings.reduce<F | undefined>((a, b) => (!a || worse(a, b) ? b : a), undefined);
}
