import { worstBy, type Verdict } from '../core/assessment.ts';

/** What findings are ranked by. */
interface Ranked {
  readonly verdict: Verdict;
  readonly gap: number;
  readonly limit: number;
}

/** The worst of several findings: by verdict, then by the room that is left as a share of the limit. */
export function worstFinding<F extends Ranked>(findings: readonly F[]): F | undefined {
  return worstBy(findings, ({ gap, limit }) => gap / (limit || 1));
}
