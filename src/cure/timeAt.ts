import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { TIME } from '../core/dimensions.ts';
import type { Quantity, Temperature } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { celsiusAt, readTimeRule, type TimeRule } from './timeRule.ts';

/** Input of {@link timeAt}. */
export interface TimeAtInput<U extends TimeUnit = TimeUnit> {
  /** How the time depends on temperature, from the product's instructions. */
  readonly rule: TimeRule;
  /** Temperature of what reacts: of the material in the pail, of the slab under a film. Not of the air. */
  readonly at: Temperature;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link timeAt}. */
export interface TimeAtAnswer<U extends TimeUnit = TimeUnit> {
  /** The time at that temperature. */
  readonly time: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How long a gel, a recoat or a cure takes at another temperature than the one in the instructions.
 *
 * For minimum times only: a longest wait before the next coat is not stretched by cold, see `recoatWindow`.
 *
 * @formula
 * ```math
 * t = t_0 \, 2^{(T_0 - T)/s} \qquad t = t_0 \, e^{\frac{E}{R}\left(\frac{1}{T} - \frac{1}{T_0}\right)}
 * ```
 * @units time, temperatures, temperature difference, molar energy; answers time.
 * @validRange between the ends of the table or of the rule; refused outside them, where the reaction may stall or run
 * away.
 * @accuracy Exact up to round-off, relative error below 1e-14. A rule of thumb is worth about ±10 % for each halving,
 * as the activation energies of published resins show; a table is as good as its points.
 * @source ufgs-09971, japs-2002-gelation
 * @param input - Rule, temperature and the unit wanted.
 * @returns The time in `input.unit`, and a caution where a rule of thumb gave it.
 * @throws An `InputError` that names the field; `out-of-range` outside the ends.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * const answer = cure.timeAt({
 *   rule: {
 *     rule: 'table',
 *     between: 'linear',
 *     points: [
 *       { temperature: { value: 15, unit: 'degC' }, time: { value: 16, unit: 'h' } },
 *       { temperature: { value: 20, unit: 'degC' }, time: { value: 10, unit: 'h' } },
 *       { temperature: { value: 30, unit: 'degC' }, time: { value: 6, unit: 'h' } },
 *     ],
 *   },
 *   at: { value: 22.5, unit: 'degC' },
 *   unit: 'h',
 * });
 * answer.time; // => { value: 9, unit: 'h' }
 * ```
 */
export function timeAt<U extends TimeUnit>(input: TimeAtInput<U>): TimeAtAnswer<U> {
  const { rule, at, unit } = fields('timeAt', input);
  const base = readTimeRule('timeAt', 'rule', rule);
  const time_s = base.seconds(celsiusAt('timeAt', base, 'at', at));
  return {
    time: write('timeAt', time_s, TIME, unit),
    cautions: base.cautions,
    basis: [ruleBasis('time', 'cure.timeAt', rule, at)],
  };
}

/** Where a time at a temperature comes from. */
export function ruleBasis(id: string, fn: string, rule: TimeRule, at: Temperature): Basis {
  const formula = {
    table: 'between the two points of the table on either side',
    halving: 'time · 2^((temperature − at) / step)',
    arrhenius: 'time · exp(E/R · (1/at − 1/temperature))',
  }[rule.rule];
  const assumption = { table: undefined, halving: 'the rule of halves holds', arrhenius: undefined };
  const source = rule.rule === 'halving' ? 'ufgs-09971' : 'definition';
  return basis(id, fn, formula, source, { rule, at }, assumption[rule.rule]);
}
