import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import { AREA, TIME, WORK_RATE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Area, Time, WorkRate } from '../core/quantity.ts';
import { fields, read } from '../core/read.ts';
import { countUp } from './stagger.ts';

/** Input of {@link mixersNeeded}. */
export interface MixersNeededInput {
  /** Area that must be laid in a time: what a front needs, or what the hands place. */
  readonly rate: WorkRate;
  /** Area that one batch covers. */
  readonly batchArea: Area;
  /** Time to measure and mix one batch. */
  readonly mixTime: Time;
  /** Time to carry it to the edge and pour it. */
  readonly carryTime: Time;
}

/** Answer of {@link mixersNeeded}. */
export interface MixersNeeded {
  /** How many batches must be mixed at the same time. */
  readonly mixers: number;
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How many mixers it takes to lay so much floor in a time.
 *
 * @formula
 * ```math
 * m = \left\lceil \frac{\dot A \, (t_m + t_c)}{A_b} \right\rceil
 * ```
 * @units work rate, area, times; answers a number.
 * @validRange rate, batchArea and mixTime above 0; carryTime 0 or more.
 * @accuracy Whole, rounded up from 12 digits. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Rate, batch and times.
 * @returns The number of mixers, at least 1.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * batch.mixersNeeded({
 *   rate: { value: 4, unit: 'm2/min' },
 *   batchArea: { value: 12, unit: 'm2' },
 *   mixTime: { value: 3, unit: 'min' },
 *   carryTime: { value: 1, unit: 'min' },
 * }).mixers; // => 2
 * ```
 */
export function mixersNeeded(input: MixersNeededInput): MixersNeeded {
  const fn = 'mixersNeeded';
  const { rate, batchArea, mixTime, carryTime } = fields(fn, input);
  const rate_m2PerS = read(fn, 'rate', rate, WORK_RATE, POSITIVE);
  const area_m2 = read(fn, 'batchArea', batchArea, AREA, POSITIVE);
  const mix_s = read(fn, 'mixTime', mixTime, TIME, POSITIVE);
  const carry_s = read(fn, 'carryTime', carryTime, TIME, NOT_NEGATIVE);
  return {
    mixers: countUp(fn, (rate_m2PerS * (mix_s + carry_s)) / area_m2),
    basis: [
      basis(
        'mixers',
        'batch.mixersNeeded',
        'ceiling of rate · (mixTime + carryTime) / batchArea',
        'common-practice',
        {
          rate,
          batchArea,
          mixTime,
          carryTime,
        },
      ),
    ],
  };
}
