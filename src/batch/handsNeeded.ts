import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, TIME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { batchCautions, paceOf, readPace, type Pace, type Remedy } from './pace.ts';
import { countUp } from './stagger.ts';

/** Input of {@link handsNeeded}; `placingRate` is that of one hand. */
export interface HandsNeededInput<U extends TimeUnit = TimeUnit> extends Pace {
  /** Area that one batch covers. */
  readonly batchArea: Area;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link handsNeeded}. */
export interface HandsNeeded<U extends TimeUnit = TimeUnit> {
  /** Hands that must place a batch together; not there where mixing leaves no time for any number of them. */
  readonly hands?: number | undefined;
  /** Time that is left for placing. */
  readonly placingTime: Quantity<U>;
  /** What can be done where no number of hands is enough. */
  readonly remedies: readonly Remedy[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How many hands must place a batch together, so that it is down in time.
 *
 * @formula
 * ```math
 * k = \left\lceil \frac{A_b}{R \, (u\,t_p - t_m - t_i - t_c)} \right\rceil
 * ```
 * @units area, times, share, work rate; answers a number and a time.
 * @validRange potLife, mixTime, placingRate and batchArea above 0; usableShare up to 100 %; carryTime and induction 0
 * or more.
 * @accuracy Whole, rounded up from 12 digits. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Pot life, times, rate of one hand, area of the batch and the unit wanted.
 * @returns The number of hands and the time for placing in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * batch.handsNeeded({
 *   potLife: { value: 20, unit: 'min' },
 *   statedFor: { value: 3, unit: 'l' },
 *   usableShare: { value: 70, unit: '%' },
 *   mixTime: { value: 3, unit: 'min' },
 *   carryTime: { value: 1, unit: 'min' },
 *   placingRate: { value: 2, unit: 'm2/min' },
 *   batchArea: { value: 45, unit: 'm2' },
 *   unit: 'min',
 * }).hands; // => 3
 * ```
 */
export function handsNeeded<U extends TimeUnit>(input: HandsNeededInput<U>): HandsNeeded<U> {
  const fn = 'handsNeeded';
  const given = fields(fn, input);
  const pace = readPace(fn, given);
  const area_m2 = read(fn, 'batchArea', given.batchArea, AREA, POSITIVE);
  const { placing_s } = pace;
  // With hands enough every batch fits that leaves any time for placing: what must fit is the rest.
  const { remedies, cautions } = batchCautions(fn, pace.ready_s, pace);
  return {
    ...(placing_s > 0 && { hands: countUp(fn, area_m2 / (pace.placingRate * placing_s)) }),
    placingTime: write(fn, placing_s, TIME, given.unit),
    remedies,
    cautions,
    basis: [
      basis(
        'hands',
        'batch.handsNeeded',
        'ceiling of batchArea / (placingRate · (usableShare · potLife − mixTime − induction − carryTime))',
        'common-practice',
        { ...paceOf(given), batchArea: given.batchArea },
      ),
    ],
  };
}
