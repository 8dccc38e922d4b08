import type { Caution } from '../core/caution.ts';

/** A caution of the plan, with the parts of the plan that raised it. */
export interface PlanCaution extends Caution {
  /** Names of the zones, coats or materials; `readings` for the climate. */
  readonly where: readonly string[];
}

const GRAVITY: Readonly<Record<Caution['severity'], number>> = { danger: 0, caution: 1, note: 2 };

/** Every caution once, with all the places that raised it, the gravest first. */
export function gathered(
  raised: readonly (readonly [where: string, cautions: readonly Caution[]])[],
): PlanCaution[] {
  const once = new Map<string, { caution: Caution; where: string[] }>();
  for (const [where, cautions] of raised) {
    for (const caution of cautions) {
      const key = JSON.stringify(caution);
      const entry = once.get(key) ?? { caution, where: [] };
      if (!entry.where.includes(where)) entry.where.push(where);
      once.set(key, entry);
    }
  }
  return [...once.values()]
    .map(({ caution, where }) => ({ ...caution, where }))
    .sort((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]);
}
