import { TIME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Time } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { readApproach, type SlabApproach } from './approach.ts';

/** Input of {@link slabTimeConstant}. */
export interface SlabTimeConstantInput<U extends TimeUnit = TimeUnit> extends SlabApproach {
  /** Time between the two temperatures of the slab. */
  readonly elapsed: Time;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How slowly a slab follows the air, from two readings of it: the time in which it does 63 % of the way.
 *
 * @formula
 * ```math
 * \tau = \Delta t \Big/ \ln \frac{T_{air} - T_{from}}{T_{air} - T_{to}}
 * ```
 * @units temperatures, time; answers time.
 * @validRange temperatures from −100 to 100 °C, `to` between `from` and the air and neither of them; elapsed above 0.
 * @monotone elapsed +
 * @accuracy Exact for a body of one temperature in air of one temperature. Wait for a change that is many times what
 * the thermometer may be off by. No published figure: a textbook law.
 * @source newton-cooling
 * @param input - Both readings of the slab, the air, the time between and the unit wanted.
 * @returns The time constant in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.slabTimeConstant({
 *   from: { value: 48, unit: 'degF' },
 *   to: { value: 54, unit: 'degF' },
 *   air: { value: 72, unit: 'degF' },
 *   elapsed: { value: 2, unit: 'h' },
 *   unit: 'h',
 * }).value.toFixed(1); // => '7.0'
 * ```
 */
export const slabTimeConstant = /* @__PURE__ */ monotone(
  { elapsed: '+' },
  <U extends TimeUnit>(input: SlabTimeConstantInput<U>): Quantity<U> => {
    const { elapsed, unit } = fields('slabTimeConstant', input);
    const elapsed_s = read('slabTimeConstant', 'elapsed', elapsed, TIME, POSITIVE);
    const constants = readApproach('slabTimeConstant', input);
    if (constants === 0) {
      refuse('slabTimeConstant', 'conflict', ['to'], 'another temperature than at the start', input.to);
    }
    return write('slabTimeConstant', elapsed_s / constants, TIME, unit);
  },
);
