import { AREA, SHARE, TIME, WORK_RATE } from '../core/dimensions.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Quantity, Share, Time, WorkRate } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';

/** Input of {@link potLifeNeeded}. */
export interface PotLifeNeededInput<U extends TimeUnit = TimeUnit> {
  /** Area that one batch covers. */
  readonly batchArea: Area;
  /** Area that the hands on one batch place in a time. */
  readonly placingRate: WorkRate;
  /** Time to measure and mix one batch. */
  readonly mixTime: Time;
  /** Stand time after mixing. None where not given. */
  readonly induction?: Time | undefined;
  /** Time to carry it to the edge and pour it. */
  readonly carryTime: Time;
  /** Share of the pot life in which the batch must be down. */
  readonly usableShare: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The pot life that a batch needs with this crew; `cure.temperatureForTime` says how cool the material must be for it.
 *
 * @formula
 * ```math
 * t_p = \frac{t_m + t_i + t_c + A_b / R}{u}
 * ```
 * @units area, work rate, times, share; answers time.
 * @validRange batchArea, placingRate and mixTime above 0; usableShare up to 100 %; induction and carryTime 0 or more.
 * @monotone batchArea +, placingRate -, mixTime +, induction +, carryTime +, usableShare -
 * @accuracy Exact up to round-off; as good as the pace. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Batch, pace and the unit wanted.
 * @returns The pot life in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * batch.potLifeNeeded({
 *   batchArea: { value: 20, unit: 'm2' },
 *   placingRate: { value: 2, unit: 'm2/min' },
 *   mixTime: { value: 3, unit: 'min' },
 *   carryTime: { value: 1, unit: 'min' },
 *   usableShare: { value: 70, unit: '%' },
 *   unit: 'min',
 * }).value.toFixed(2); // => '20.00'
 * ```
 */
export const potLifeNeeded = /* @__PURE__ */ monotone(
  { batchArea: '+', placingRate: '-', mixTime: '+', induction: '+', carryTime: '+', usableShare: '-' },
  <U extends TimeUnit>(input: PotLifeNeededInput<U>): Quantity<U> => {
    const fn = 'potLifeNeeded';
    const { batchArea, placingRate, mixTime, induction, carryTime, usableShare, unit } = fields(fn, input);
    const area_m2 = read(fn, 'batchArea', batchArea, AREA, POSITIVE);
    const rate_m2PerS = read(fn, 'placingRate', placingRate, WORK_RATE, POSITIVE);
    const mix_s = read(fn, 'mixTime', mixTime, TIME, POSITIVE);
    const induction_s = readOr(0, fn, 'induction', induction, TIME, NOT_NEGATIVE);
    const carry_s = read(fn, 'carryTime', carryTime, TIME, NOT_NEGATIVE);
    const share = read(fn, 'usableShare', usableShare, SHARE, PART_OR_WHOLE);
    return write(fn, (mix_s + induction_s + carry_s + area_m2 / rate_m2PerS) / share, TIME, unit);
  },
);
