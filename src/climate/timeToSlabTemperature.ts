import { TIME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Time } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { readApproach, type SlabApproach } from './approach.ts';

/** Input of {@link timeToSlabTemperature}. */
export interface TimeToSlabTemperatureInput<U extends TimeUnit = TimeUnit> extends SlabApproach {
  /** Time in which this slab does 63 % of the way, see `slabTimeConstant`. */
  readonly timeConstant: Time;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How long a slab takes to warm up to a temperature once the room is heated, or to cool down to one once it is not.
 *
 * For planning when a cold slab will be above the dew point by its margin. Read the floor before anything is laid.
 *
 * @formula
 * ```math
 * \Delta t = \tau \, \ln \frac{T_{air} - T_{from}}{T_{air} - T_{to}}
 * ```
 * @units temperatures, time; answers time.
 * @validRange temperatures from −100 to 100 °C, `to` between `from` and the air and short of the air, which is never
 * quite reached; timeConstant above 0.
 * @monotone timeConstant +
 * @accuracy Exact for a body of one temperature in air of one temperature. A slab of 150 mm is not that: its surface
 * runs ahead of its middle, so measure the time constant on the surface of this slab. No published figure: a textbook
 * law.
 * @source newton-cooling
 * @param input - Slab, air, its time constant and the unit wanted.
 * @returns The time in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * climate.timeToSlabTemperature({
 *   from: { value: 48, unit: 'degF' },
 *   to: { value: 60, unit: 'degF' },
 *   air: { value: 72, unit: 'degF' },
 *   timeConstant: { value: 8, unit: 'h' },
 *   unit: 'h',
 * }).value.toFixed(1); // => '5.5'
 * ```
 */
export const timeToSlabTemperature = /* @__PURE__ */ monotone(
  { timeConstant: '+' },
  <U extends TimeUnit>(input: TimeToSlabTemperatureInput<U>): Quantity<U> => {
    const { timeConstant, unit } = fields('timeToSlabTemperature', input);
    const constant_s = read('timeToSlabTemperature', 'timeConstant', timeConstant, TIME, POSITIVE);
    const time_s = constant_s * readApproach('timeToSlabTemperature', input);
    return write('timeToSlabTemperature', time_s, TIME, unit);
  },
);
