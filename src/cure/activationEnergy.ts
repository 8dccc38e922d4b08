import { MOLAR_ENERGY } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { MolarEnergyUnit } from '../core/unitCodes.ts';
import { GAS_CONSTANT, ZERO_CELSIUS } from './arrheniusFactor.ts';
import { readPoint, type TimePoint } from './timeRule.ts';

/** Input of {@link activationEnergy}. */
export interface ActivationEnergyInput<U extends MolarEnergyUnit = MolarEnergyUnit> {
  /** The same time at the colder temperature. */
  readonly cold: TimePoint;
  /** And at the warmer. */
  readonly warm: TimePoint;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How strongly a reaction speeds up with temperature, from one time at two temperatures.
 *
 * @formula
 * ```math
 * E = R \, \frac{\ln(t_1 / t_2)}{1/T_1 - 1/T_2}
 * ```
 * @units times, temperatures; answers molar energy.
 * @validRange warm above cold in temperature and no longer in time.
 * @accuracy Relative error below 1e-14 times the absolute temperature over the difference; as good as the two times.
 * Published values for gelling epoxies lie between 43 and 58 kJ/mol; halving each 10 °C is 51.2 from 20 to 30 °C.
 * No published figure was found with its two times.
 * @source definition
 * @param input - Two points and the unit wanted.
 * @returns The activation energy in `input.unit`, not rounded.
 * @throws An `InputError` that names the field; `conflict` where the warm point is not warmer or takes longer.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * cure.activationEnergy({
 *   cold: { temperature: { value: 20, unit: 'degC' }, time: { value: 40, unit: 'min' } },
 *   warm: { temperature: { value: 30, unit: 'degC' }, time: { value: 20, unit: 'min' } },
 *   unit: 'kJ/mol',
 * }).value.toFixed(1); // => '51.2'
 * ```
 */
export function activationEnergy<U extends MolarEnergyUnit>(input: ActivationEnergyInput<U>): Quantity<U> {
  const fn = 'activationEnergy';
  const { cold, warm, unit } = fields(fn, input);
  const first = readPoint(fn, readObject(fn, 'cold', cold), ['cold']);
  const second = readPoint(fn, readObject(fn, 'warm', warm), ['warm']);
  if (!(second.celsius > first.celsius)) {
    refuse(fn, 'conflict', ['warm', 'temperature'], 'above that of the cold point', warm.temperature);
  }
  if (second.seconds > first.seconds) {
    refuse(fn, 'conflict', ['warm', 'time'], 'no longer than that of the cold point', warm.time);
  }
  const inverse = (celsius: number) => 1 / (celsius + ZERO_CELSIUS);
  const energy =
    (GAS_CONSTANT * Math.log(first.seconds / second.seconds)) /
    (inverse(first.celsius) - inverse(second.celsius));
  return write(fn, energy, MOLAR_ENERGY, unit);
}
