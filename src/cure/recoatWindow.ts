import type { Basis, Caution } from '../core/caution.ts';
import { TIME } from '../core/dimensions.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { ruleBasis } from './timeAt.ts';
import { celsiusAt, readTimeRule, SLACK, type TimeRule } from './timeRule.ts';

/** Input of {@link recoatWindow}. */
export interface RecoatWindowInput<U extends TimeUnit = TimeUnit> {
  /** Shortest wait before the next coat. */
  readonly shortest: TimeRule;
  /** Longest wait before the next coat. */
  readonly longest: TimeRule;
  /** Coldest temperature of the surface while it waits. */
  readonly coldest: Temperature;
  /** Warmest temperature of the surface while it waits. */
  readonly warmest: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Between when and when the next coat may be laid. */
export interface RecoatWindow<U extends TimeUnit = TimeUnit> {
  /** The next coat waits at least so long. */
  readonly shortest: Quantity<U>;
  /** The next coat waits no longer, or the surface has to be abraded first. */
  readonly longest: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * When the next coat may be laid, on a floor that is colder here and warmer there.
 *
 * The shortest wait is that of the coldest place, the longest that of the warmest. A longest wait is never stretched
 * by cold: a rule shortens it above its stated temperature and leaves it alone below; only a table of the
 * instructions may print a longer one.
 *
 * @formula
 * ```math
 * t_\mathrm{min} = t_s(T_\mathrm{cold}) \qquad t_\mathrm{max} = \min(t_l(T_\mathrm{warm}),\ t_{l,0})
 * ```
 * @units times, temperatures; answers times.
 * @validRange both temperatures between the ends of both rules; warmest no lower than coldest.
 * @accuracy Exact up to round-off; as good as the rules.
 * @source common-practice, ufgs-09971
 * @param input - Both rules, both temperatures and the unit wanted.
 * @returns The shortest and the longest wait in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field; `out-of-range` outside the ends of a rule.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * const ends = { from: { value: 10, unit: 'degC' }, to: { value: 35, unit: 'degC' } } as const;
 * const stated = { rule: 'halving', temperature: { value: 20, unit: 'degC' }, step: { value: 10, unit: 'deltaC' } } as const;
 * const answer = cure.recoatWindow({
 *   shortest: { ...stated, ...ends, time: { value: 8, unit: 'h' } },
 *   longest: { ...stated, ...ends, time: { value: 24, unit: 'h' } },
 *   coldest: { value: 10, unit: 'degC' },
 *   warmest: { value: 15, unit: 'degC' },
 *   unit: 'h',
 * });
 * [answer.shortest.value, answer.longest.value]; // => [16, 24]
 * ```
 */
export function recoatWindow<U extends TimeUnit>(input: RecoatWindowInput<U>): RecoatWindow<U> {
  const fn = 'recoatWindow';
  const { shortest, longest, coldest, warmest, unit } = fields(fn, input);
  const shortRule = readTimeRule(fn, 'shortest', shortest);
  const longRule = readTimeRule(fn, 'longest', longest);
  const cold = celsiusAt(fn, shortRule, 'coldest', coldest);
  const warm = celsiusAt(fn, longRule, 'warmest', warmest);
  celsiusAt(fn, shortRule, 'warmest', warmest);
  celsiusAt(fn, longRule, 'coldest', coldest);
  if (warm < cold - SLACK) refuse(fn, 'conflict', ['warmest'], 'no lower than coldest', warmest);
  return windowOf(
    fn,
    shortRule.seconds(cold),
    Math.min(longRule.seconds(warm), longRule.stated ?? Infinity),
    unit,
    {
      cautions: [...shortRule.cautions, ...longRule.cautions],
      basis: [
        ruleBasis('shortest', 'cure.recoatWindow', shortest, coldest),
        ruleBasis('longest', 'cure.recoatWindow', longest, warmest),
      ],
    },
  );
}

/** A window as an answer, with a caution where it is shut. */
export function windowOf<U extends TimeUnit>(
  fn: string,
  shortest_s: number,
  longest_s: number,
  unit: U,
  { cautions, basis }: Pick<RecoatWindow, 'cautions' | 'basis'>,
): RecoatWindow<U> {
  const shortest = write(fn, shortest_s, TIME, unit);
  const longest = write(fn, longest_s, TIME, unit);
  const shut: readonly Caution[] =
    shortest_s > longest_s * (1 + 1e-12)
      ? [
          {
            code: 'no-recoat-window',
            severity: 'caution',
            params: { shortest, longest },
            source: 'common-practice',
          },
        ]
      : [];
  return { shortest, longest, cautions: [...cautions, ...shut], basis };
}
