import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, SHARE, SPREAD_RATE, TIME, VOLUME } from '../core/dimensions.ts';
import { echoIn } from '../core/echo.ts';
import { toField, type FieldValue } from '../core/fieldValue.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import type { Area, Quantity, Share, SpreadRate, Volume } from '../core/quantity.ts';
import { fields, read, readOptional, readOr, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { AreaUnit, TimeUnit, VolumeUnit } from '../core/unitCodes.ts';
import { batchCautions, paceOf, readPace, type Pace, type Remedy } from './pace.ts';

/** Input of {@link largestBatch}. */
export interface LargestBatchInput<
  V extends VolumeUnit = VolumeUnit,
  A extends AreaUnit = AreaUnit,
  T extends TimeUnit = TimeUnit,
> extends Pace {
  /** Area that a mixed volume covers. */
  readonly spreadRate: SpreadRate;
  /** Share of a batch that stays in the pail. Nothing stays where it is not given. */
  readonly residue?: Share | undefined;
  /** What the pail or cup holds. Not limited by it where not given. */
  readonly pailCapacity?: Volume | undefined;
  /** Smallest step in which a batch is measured. */
  readonly measuringStep: Volume;
  /** One strip or box of the grid in which the floor is worked. Not fitted to it where not given. */
  readonly strip?: Area | undefined;
  /** Units of the answer. */
  readonly units: { readonly volume: V; readonly area: A; readonly time: T };
}

/** What keeps a batch from being larger. */
export type BatchLimit = 'pot life' | 'pail' | 'stated volume';

/** Answer of {@link largestBatch}. */
export interface LargestBatch<
  V extends VolumeUnit = VolumeUnit,
  A extends AreaUnit = AreaUnit,
  T extends TimeUnit = TimeUnit,
> {
  /** The largest batch, and what to measure: rounded down. 0 where no batch fits, or less than one step. */
  readonly volume: FieldValue<V>;
  /** What keeps it from being larger. */
  readonly limitedBy: BatchLimit;
  /** Area that the largest batch covers. */
  readonly area: Quantity<A>;
  /** The same rounded down to whole strips, where a strip was given. */
  readonly strips?: FieldValue<A> | undefined;
  /** From the start of mixing until the largest batch is down. */
  readonly cycle: Quantity<T>;
  /** Time that the pot life gives from the start of mixing until the batch must be down. */
  readonly usable: Quantity<T>;
  /** What can be done where no batch fits. */
  readonly remedies: readonly Remedy[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The largest batch that is down before it gels, fits the pail, and is no more than the pot life was stated for.
 *
 * @formula
 * ```math
 * V = \min\left( \frac{(u\,t_p - t_m - t_i - t_c)\, R}{S\,(1 - r)},\ V_\mathrm{pail},\ V_\mathrm{stated} \right)
 * ```
 * @units times, shares, volumes, work rate, spread rate, area; answers volume, area and times.
 * @validRange potLife, mixTime, placingRate, spreadRate and volumes above 0; usableShare up to 100 %; carryTime and
 * induction 0 or more; residue below 100 %. Mixing longer than the pot life is a caution, and the batch is 0.
 * @accuracy Exact up to round-off, relative error below 1e-14; as good as the pot life and the pace. No published figure:
 * the instructions of products print the pot life, the rest is the pace of a crew.
 * @source common-practice, ufc-3-190-06
 * @param input - Pot life, the volume it is stated for, times, rates, pail and the units wanted.
 * @returns The largest batch with the reason that limits it, what it covers, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const answer = batch.largestBatch({
 *   potLife: { value: 20, unit: 'min' },
 *   statedFor: { value: 3, unit: 'l' },
 *   usableShare: { value: 70, unit: '%' },
 *   mixTime: { value: 3, unit: 'min' },
 *   carryTime: { value: 1, unit: 'min' },
 *   placingRate: { value: 2, unit: 'm2/min' },
 *   spreadRate: { value: 8, unit: 'm2/l' },
 *   measuringStep: { value: 0.1, unit: 'l' },
 *   units: { volume: 'l', area: 'm2', time: 'min' },
 * });
 * [answer.volume.field, answer.limitedBy]; // => [{ value: 2.5, unit: 'l' }, 'pot life']
 * ```
 */
export function largestBatch<V extends VolumeUnit, A extends AreaUnit, T extends TimeUnit>(
  input: LargestBatchInput<V, A, T>,
): LargestBatch<V, A, T> {
  const fn = 'largestBatch';
  const given = fields(fn, input);
  const { spreadRate, residue, pailCapacity, measuringStep, strip } = given;
  const units = readObject(fn, 'units', given.units);
  const pace = readPace(fn, given);
  const spread = read(fn, 'spreadRate', spreadRate, SPREAD_RATE, POSITIVE);
  const laid = spread * (1 - readOr(0, fn, 'residue', residue, SHARE, PART));
  const pail_m3 = readOr(Infinity, fn, 'pailCapacity', pailCapacity, VOLUME, POSITIVE);
  const step_m3 = read(fn, 'measuringStep', measuringStep, VOLUME, POSITIVE);
  const strip_m2 = readOptional(fn, 'strip', strip, AREA, POSITIVE);

  const limits: readonly (readonly [BatchLimit, number, (Volume | undefined)?])[] = [
    ['pot life', (pace.placing_s * pace.placingRate) / laid],
    ['pail', pail_m3, pailCapacity],
    ['stated volume', pace.statedFor_m3, pace.statedFor],
  ];
  const [limitedBy, volume_m3, limit] = limits.reduce((least, next) => (next[1] < least[1] ? next : least));
  const area_m2 = volume_m3 * laid;
  const cycle_s = pace.ready_s + area_m2 / pace.placingRate;

  const volume = echoIn(fn, limit, volume_m3, VOLUME, units.volume, ['units', 'volume']);
  const step = echoIn(fn, measuringStep, step_m3, VOLUME, units.volume, ['units', 'volume']);
  const field = toField(volume, step.value, 'down');
  const areaIn = (m2: number) => write(fn, m2, AREA, units.area, ['units', 'area']);
  const area = areaIn(area_m2);
  const time = (seconds: number) => write(fn, seconds, TIME, units.time, ['units', 'time']);
  const { remedies, cautions } = batchCautions(fn, cycle_s, pace);
  const belowStep: Caution = {
    code: 'batch-below-measuring-step',
    severity: 'caution',
    params: { largest: volume, step },
    source: 'common-practice',
  };
  return {
    volume: field,
    limitedBy,
    area,
    ...(strip_m2 !== undefined && { strips: toField(area, areaIn(strip_m2).value, 'down') }),
    cycle: time(cycle_s),
    usable: time(pace.usable_s),
    remedies,
    cautions: pace.placing_s > 0 && field.field.value === 0 ? [...cautions, belowStep] : cautions,
    basis: [
      basis(
        'volume',
        'batch.largestBatch',
        'least of (usableShare · potLife − mixTime − induction − carryTime) · placingRate / (spreadRate · (1 − residue)), pailCapacity, statedFor',
        'common-practice',
        { ...paceOf(given), spreadRate, residue, pailCapacity },
      ),
    ],
  };
}
