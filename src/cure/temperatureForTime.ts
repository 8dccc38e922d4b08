import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { TIME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity, Time } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { writeTemperature } from '../core/temperature.ts';
import type { TemperatureUnit } from '../core/unitCodes.ts';
import { readTimeRule, type BaseRule, type TimeRule } from './timeRule.ts';

/** Input of {@link temperatureForTime}. */
export interface TemperatureForTimeInput<U extends TemperatureUnit = TemperatureUnit> {
  /** How the time depends on temperature, from the product's instructions. */
  readonly rule: TimeRule;
  /** Time that is needed. */
  readonly time: Time;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link temperatureForTime}. */
export interface TemperatureForTime<U extends TemperatureUnit = TemperatureUnit> {
  /** Warmest temperature at which the time is there; the warm end of the rule where it is there up to it. */
  readonly temperature: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How cool the material must be to give the time that is needed.
 *
 * @formula
 * ```math
 * T = \max \{\, T : t(T) \ge t_\mathrm{needed} \,\}
 * ```
 * @units times, temperatures; answers temperature.
 * @validRange a time that the rule gives somewhere between its ends.
 * @accuracy Within 1e-9 °C of the point on the rule; as good as the rule.
 * @source ufgs-09971
 * @param input - Rule, time needed and the unit wanted.
 * @returns The temperature in `input.unit`, not rounded, and the cautions of the rule.
 * @throws An `InputError` that names the field; `out-of-range` where even the cold end gives less.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * const answer = cure.temperatureForTime({
 *   rule: {
 *     rule: 'table',
 *     between: 'linear',
 *     points: [
 *       { temperature: { value: 10, unit: 'degC' }, time: { value: 60, unit: 'min' } },
 *       { temperature: { value: 20, unit: 'degC' }, time: { value: 30, unit: 'min' } },
 *     ],
 *   },
 *   time: { value: 36, unit: 'min' },
 *   unit: 'degC',
 * });
 * answer.temperature.value.toFixed(3); // => '18.000'
 * ```
 */
export function temperatureForTime<U extends TemperatureUnit>(
  input: TemperatureForTimeInput<U>,
): TemperatureForTime<U> {
  const fn = 'temperatureForTime';
  const { rule, time, unit } = fields(fn, input);
  const base = readTimeRule(fn, 'rule', rule);
  const needed_s = read(fn, 'time', time, TIME, POSITIVE);
  const longest_s = base.seconds(base.from);
  if (longest_s < needed_s * (1 - 1e-12)) {
    const longest = Number(write(fn, longest_s, TIME, time.unit, ['time', 'unit']).value.toPrecision(6));
    const expected = `no longer than the ${String(longest)} ${time.unit} at the cold end of the rule`;
    refuse(fn, 'out-of-range', ['time'], expected, time);
  }
  return {
    temperature: writeTemperature(fn, warmestWith(base, needed_s), unit),
    cautions: base.cautions,
    basis: [
      basis('temperature', 'cure.temperatureForTime', 'warmest with time(temperature) ≥ time', 'definition', {
        rule,
        time,
      }),
    ],
  };
}

/** The warmest temperature at which a rule gives a time, by halving: the time never grows with temperature. */
function warmestWith(rule: BaseRule, needed_s: number): number {
  let [enough, short] = [rule.from, rule.to];
  for (let i = 0; i < 100; i++) {
    const middle = enough + (short - enough) / 2;
    if (rule.seconds(middle) >= needed_s) enough = middle;
    else short = middle;
  }
  return enough;
}
