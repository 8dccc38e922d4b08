import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, TIME, WORK_RATE } from '../core/dimensions.ts';
import { HALF_CURED_DUST, SILICA_DUST } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Quantity, Time, WorkRate } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { AreaUnit, TimeUnit } from '../core/unitCodes.ts';
import { countUp } from './stagger.ts';

/** Input of {@link poreCoatLots}. */
export interface PoreCoatLotsInput<A extends AreaUnit = AreaUnit, T extends TimeUnit = TimeUnit> {
  /** Area to be pore coated and reground. */
  readonly area: Area;
  /** Area that is placed in a time: the rate of `batchPace`. */
  readonly placingRate: WorkRate;
  /** Area that all machines together regrind in a time. */
  readonly regrindRate: WorkRate;
  /** How long the coat must wait before it can be reground, as proved on this floor. */
  readonly regrindReady: Time;
  /** How long after placing it is too hard to regrind. */
  readonly tooHard: Time;
  /** Units of the answer. */
  readonly units: { readonly area: A; readonly time: T };
}

/** Answer of {@link poreCoatLots}. */
export interface PoreCoatLots<A extends AreaUnit = AreaUnit, T extends TimeUnit = TimeUnit> {
  /** Most area to place before the regrind must catch up; not there where the regrind keeps up with placing. */
  readonly largestLot?: Quantity<A> | undefined;
  /** In how many lots. */
  readonly lots: number;
  /** Area of each lot; round it down to a joint. */
  readonly lotArea: Quantity<A>;
  /** How long the last strip of a lot waits for the regrind. */
  readonly lastWait: Quantity<T>;
  /** How long the last strip would wait if the whole floor were placed in one go. */
  readonly lastWaitInOneGo: Quantity<T>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How much pore coat to place before the regrind must catch up, so that the last strip is not too hard to cut.
 *
 * @formula
 * ```math
 * A_\mathrm{lot} = \frac{t_h - t_r}{1/\dot A_\mathrm{regrind} - 1/\dot A_\mathrm{place}}
 * ```
 * @units area, work rates, times; answers areas, a number and times.
 * @validRange all above 0; tooHard longer than regrindReady.
 * @accuracy Exact up to round-off; as good as both paces. No published figure: it is the pace of a crew.
 * @source common-practice
 * @param input - Area, both rates, both times and the units wanted.
 * @returns The largest lot, the lots, and how long the last strip waits.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const answer = batch.poreCoatLots({
 *   area: { value: 400, unit: 'm2' },
 *   placingRate: { value: 3, unit: 'm2/min' },
 *   regrindRate: { value: 1.5, unit: 'm2/min' },
 *   regrindReady: { value: 20, unit: 'min' },
 *   tooHard: { value: 110, unit: 'min' },
 *   units: { area: 'm2', time: 'min' },
 * });
 * [answer.lots, answer.lotArea.value]; // => [2, 200]
 * ```
 */
export function poreCoatLots<A extends AreaUnit, T extends TimeUnit>(
  input: PoreCoatLotsInput<A, T>,
): PoreCoatLots<A, T> {
  const fn = 'poreCoatLots';
  const given = fields(fn, input);
  const { area, placingRate, regrindRate, regrindReady, tooHard } = given;
  const units = readObject(fn, 'units', given.units);
  const area_m2 = read(fn, 'area', area, AREA, POSITIVE);
  const place = read(fn, 'placingRate', placingRate, WORK_RATE, POSITIVE);
  const regrind = read(fn, 'regrindRate', regrindRate, WORK_RATE, POSITIVE);
  const ready_s = read(fn, 'regrindReady', regrindReady, TIME, POSITIVE);
  const tooHard_s = read(fn, 'tooHard', tooHard, TIME, POSITIVE);
  if (!(tooHard_s > ready_s)) refuse(fn, 'conflict', ['tooHard'], 'longer than regrindReady', tooHard);

  /** By how much each square metre placed makes the last strip wait longer. */
  const creep_sPerM2 = Math.max(0, 1 / regrind - 1 / place);
  const lots = countUp(fn, (area_m2 * creep_sPerM2) / (tooHard_s - ready_s));
  const areaOf = (m2: number) => write(fn, m2, AREA, units.area, ['units', 'area']);
  const timeOf = (seconds: number) => write(fn, seconds, TIME, units.time, ['units', 'time']);
  const lastWaitInOneGo = timeOf(ready_s + area_m2 * creep_sPerM2);
  const params = { wait: lastWaitInOneGo, tooHard: timeOf(tooHard_s) };
  return {
    ...(creep_sPerM2 > 0 && { largestLot: areaOf((tooHard_s - ready_s) / creep_sPerM2) }),
    lots,
    lotArea: areaOf(area_m2 / lots),
    lastWait: timeOf(ready_s + (area_m2 / lots) * creep_sPerM2),
    lastWaitInOneGo,
    cautions: [...(lots > 1 ? [tooHardAt(params)] : []), HALF_CURED_DUST, SILICA_DUST],
    basis: [
      basis(
        'largestLot',
        'batch.poreCoatLots',
        '(tooHard − regrindReady) / (1/regrindRate − 1/placingRate)',
        'common-practice',
        { area, placingRate, regrindRate, regrindReady, tooHard },
      ),
    ],
  };
}

function tooHardAt(params: Caution['params']): Caution {
  return { code: 'last-strip-too-hard', severity: 'caution', params, source: 'common-practice' };
}
