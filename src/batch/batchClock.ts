import type { Decimal } from 'decimal.js';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { counted, shareOut, toShare } from '../core/decimal.ts';
import { AREA, LENGTH, SHARE, TIME, VOLUME } from '../core/dimensions.ts';
import { laterBy, readInstant, type Instant } from '../core/instant.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import type { Area, Length, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOptional, readOr, refuse, write } from '../core/read.ts';
import { readChoice, readCount, readObject } from '../core/readPlain.ts';
import type { AreaUnit, LengthUnit, TimeUnit, VolumeUnit } from '../core/unitCodes.ts';
import { readPail, type Pail } from '../mix/pail.ts';
import { marksOf, type PailMark, type Pours } from '../mix/pailMarks.ts';
import { readVolumeParts, type PartVolume, type VolumePart } from '../mix/parts.ts';
import { RATIO_BY_VOLUME } from '../mix/splitByVolume.ts';
import { divide, DIVISIONS, type Division } from './divide.ts';
import { staggerOf, type PacedBy } from './stagger.ts';
import { batchCautions, paceOf, readPace, type Pace, type Remedy } from './pace.ts';

/** The pail that is marked for the parts. */
export interface ClockPail<L extends LengthUnit = LengthUnit> {
  /** The pail in which every batch is measured. */
  readonly pail: Pail;
  /** Smallest step that can be read on it. */
  readonly graduation: Length;
  /** How far a part may be off against the first, from the instructions. Where not given, the caution says how far it is. */
  readonly ratioTolerance?: Share | undefined;
  /** Unit of the marks. */
  readonly unit: L;
}

/** Input of {@link batchClock}. */
export interface BatchClockInput<
  V extends VolumeUnit = VolumeUnit,
  A extends AreaUnit = AreaUnit,
  T extends TimeUnit = TimeUnit,
  L extends LengthUnit = LengthUnit,
> extends Pace {
  /** Area to be covered. */
  readonly area: Area;
  /** What is to be mixed for it, losses included: the answer of `film.volumeNeeded`. */
  readonly volume: Volume;
  /** The largest batch: what `largestBatch` says to measure, or less. */
  readonly batchVolume: Volume;
  /** All batches alike, or full ones and what is left. */
  readonly division: Division;
  /** The ratio by volume, in pouring order. */
  readonly parts: readonly VolumePart[];
  /** How many batches can be mixed at the same time. */
  readonly mixers: number;
  /** How many batches are placed at the same time, each by hands of its own. */
  readonly crews: number;
  /** What the pail or cup holds. Not judged where not given. */
  readonly pailCapacity?: Volume | undefined;
  /** The pail to be marked. No marks where not given. */
  readonly marks?: ClockPail<L> | undefined;
  /** Moment at which mixing of the first batch begins. Times are counted from it where it is not given. */
  readonly start?: Instant | undefined;
  /** Units of the answer. */
  readonly units: { readonly volume: V; readonly area: A; readonly time: T };
}

/** A time on the clock. */
export interface ClockTime<T extends TimeUnit = TimeUnit> {
  /** How long after the start of the first batch. */
  readonly after: Quantity<T>;
  /** The moment, where a start was given; to the whole second before it. */
  readonly at?: Instant | undefined;
}

/** One line of the clock. */
export interface ClockBatch<
  V extends VolumeUnit = VolumeUnit,
  A extends AreaUnit = AreaUnit,
  T extends TimeUnit = TimeUnit,
  L extends LengthUnit = LengthUnit,
> {
  /** Number of the batch, from 1. */
  readonly number: number;
  /** How much is mixed. */
  readonly volume: Quantity<V>;
  /** Area that it must cover. */
  readonly area: Quantity<A>;
  /** What to measure of each part. */
  readonly parts: readonly PartVolume<V>[];
  /** Where to mark the pail, if one was given. */
  readonly marks?: readonly PailMark<L>[] | undefined;
  /** Mixing begins. */
  readonly start: ClockTime<T>;
  /** The stand time that the instructions ask for before use is over. Missing where they ask for none. */
  readonly standUntil?: ClockTime<T> | undefined;
  /**
   * Last time to pour, so that all of it is down in time. A batch that does not fit is poured as soon as it is ready,
   * and never after it should be down.
   */
  readonly pourBy: ClockTime<T>;
  /** All of it is down. */
  readonly downBy: ClockTime<T>;
  /** Whatever is left in the pail is spread out to cure: the pot life is over. */
  readonly discardAt: ClockTime<T>;
}

/** Answer of {@link batchClock}. */
export interface BatchClock<
  V extends VolumeUnit = VolumeUnit,
  A extends AreaUnit = AreaUnit,
  T extends TimeUnit = TimeUnit,
  L extends LengthUnit = LengthUnit,
> {
  /** The batches in order. Their volumes and areas add up to the whole exactly. */
  readonly batches: readonly ClockBatch<V, A, T, L>[];
  /** A batch is begun every so often. */
  readonly stagger: Quantity<T>;
  /** Whose pace that is. */
  readonly pacedBy: PacedBy;
  /** From the start of mixing a full batch until it is down. */
  readonly cycle: Quantity<T>;
  /** Time that the pot life gives for it. */
  readonly usable: Quantity<T>;
  /** From the start of the first batch until the last is down. */
  readonly duration: Quantity<T>;
  /** What can be done where a batch does not fit its pot life. */
  readonly remedies: readonly Remedy[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The clock of a coat: which batch begins when, what goes into it, what it must cover, and until when it must be down.
 *
 * @formula
 * ```math
 * s = \max\left( \frac{t_m + t_c}{m},\ \frac{A_v}{R\,k} \right) \qquad t_n = (n - 1)\, s
 * ```
 * @units area, volumes, times, share, work rate, lengths; answers volumes, areas, lengths and times.
 * @validRange all quantities above 0 but carryTime and induction; batchVolume no more than statedFor and the pail; at
 * most 1,000,000 batches. A batch that takes longer than its pot life is a caution with remedies.
 * @accuracy Volumes and areas in decimals, adding up exactly; times to a relative error below 1e-14.
 * No published figure: the instructions of products print the pot life, the rest is the pace of a crew.
 * @source common-practice, ufc-3-190-06
 * @param input - Area and volume, batch, ratio, pace, crew, pail, start and the units wanted.
 * @returns One line for each batch, the pace, and the cautions.
 * @throws An `InputError` that names the field; `conflict` for a batch larger than the pail or than the volume
 * for which the pot life is stated.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const clock = batch.batchClock({
 *   area: { value: 60, unit: 'm2' },
 *   volume: { value: 10, unit: 'l' },
 *   batchVolume: { value: 2.5, unit: 'l' },
 *   division: 'equal',
 *   parts: [{ name: 'A', parts: 4 }, { name: 'B', parts: 1 }],
 *   potLife: { value: 20, unit: 'min' },
 *   statedFor: { value: 3, unit: 'l' },
 *   usableShare: { value: 75, unit: '%' },
 *   mixTime: { value: 3, unit: 'min' },
 *   carryTime: { value: 1, unit: 'min' },
 *   placingRate: { value: 2, unit: 'm2/min' },
 *   mixers: 1,
 *   crews: 1,
 *   start: '2025-06-03T07:30:00-05:00',
 *   units: { volume: 'l', area: 'm2', time: 'min' },
 * });
 * clock.batches.map(({ start }) => start.after.value); // => [0, 7.5, 15, 22.5]
 * clock.batches[1]?.downBy.at; // => '2025-06-03T07:52:30-05:00'
 * ```
 */
export function batchClock<
  V extends VolumeUnit,
  A extends AreaUnit,
  T extends TimeUnit,
  L extends LengthUnit = LengthUnit,
>(input: BatchClockInput<V, A, T, L>): BatchClock<V, A, T, L> {
  const fn = 'batchClock';
  const given = fields(fn, input);
  const { area, volume, batchVolume, parts, pailCapacity, marks, start } = given;
  const units = readObject(fn, 'units', given.units);
  const timeOf = (seconds: number) => write(fn, seconds, TIME, units.time, ['units', 'time']);
  const volumeOf = (m3: number) => write(fn, m3, VOLUME, units.volume, ['units', 'volume']).value;
  const area_m2 = read(fn, 'area', area, AREA, POSITIVE);
  const volume_m3 = read(fn, 'volume', volume, VOLUME, POSITIVE);
  const batch_m3 = read(fn, 'batchVolume', batchVolume, VOLUME, POSITIVE);
  const pail_m3 = readOr(Infinity, fn, 'pailCapacity', pailCapacity, VOLUME, POSITIVE);
  const division = readChoice(fn, 'division', given.division, DIVISIONS);
  const ratio = readVolumeParts(fn, parts);
  const pace = readPace(fn, given);
  const mixers = readCount(fn, 'mixers', given.mixers);
  const crews = readCount(fn, 'crews', given.crews);
  const stick = marks === undefined ? undefined : readClockPail(fn, marks);
  const first = start === undefined ? undefined : readInstant(fn, 'start', start);
  const noMoreThan = (limit_m3: number, what: string) => {
    if (batch_m3 > limit_m3 * (1 + 1e-12)) refuse(fn, 'conflict', ['batchVolume'], what, batchVolume);
  };
  noMoreThan(pail_m3, 'no more than the pail holds');
  noMoreThan(pace.statedFor_m3, 'no more than the volume the pot life is stated for');

  const wholeVolume = volumeOf(volume_m3);
  const whole = counted(wholeVolume);
  const wholeArea = counted(write(fn, area_m2, AREA, units.area, ['units', 'area']).value);
  const { count, each, last } = divide(fn, 'batchVolume', wholeVolume, volumeOf(batch_m3), division);
  const eachArea = toShare(wholeArea.times(each).div(whole));

  /** What all batches of one size have in common. */
  const kindOf = (size: Decimal, covers: Decimal) => {
    const share = size.div(whole).toNumber();
    const volumes = shareOut(size, ratio.weights).map((part) => part.toNumber());
    const volumes_m3 = volumes.map((part) => (part / whole.toNumber()) * volume_m3);
    const marked = stick?.({ names: ratio.names, volumes_m3 });
    const line = {
      volume: { value: size.toNumber(), unit: units.volume },
      area: { value: covers.toNumber(), unit: units.area },
      parts: ratio.names.map((name, i) => ({
        name,
        volume: { value: volumes[i] as number, unit: units.volume },
      })),
      ...(marked && { marks: marked.marks }),
    };
    return { line, placing_s: (share * area_m2) / pace.placingRate, cautions: marked?.cautions ?? [] };
  };
  const rest = kindOf(last, wholeArea.minus(eachArea.times(count - 1)));
  const full = count === 1 ? rest : kindOf(each, eachArea);

  const { stagger_s, pacedBy } = staggerOf(pace.mixer_s / mixers, full.placing_s / crews);
  const cycle_s = pace.ready_s + full.placing_s;
  // With several crews the last full batch may be down after the rest.
  const lastFull_s = count === 1 ? 0 : (count - 2) * stagger_s + full.placing_s;
  const duration_s = pace.ready_s + Math.max((count - 1) * stagger_s + rest.placing_s, lastFull_s);
  const time = (seconds: number): ClockTime<T> => {
    const after = timeOf(seconds);
    return first ? { after, at: laterBy(fn, first, seconds) } : { after };
  };
  const batches = Array.from({ length: count }, (_, i): ClockBatch<V, A, T, L> => {
    const { line, placing_s: own_s } = i === count - 1 ? rest : full;
    const start_s = i * stagger_s;
    const pourBy_s = Math.min(pace.usable_s, Math.max(pace.ready_s, pace.usable_s - own_s));
    return {
      number: i + 1,
      ...line,
      start: time(start_s),
      ...(pace.stood_s !== undefined && { standUntil: time(start_s + pace.stood_s) }),
      pourBy: time(start_s + pourBy_s),
      downBy: time(start_s + pace.usable_s),
      discardAt: time(start_s + pace.potLife_s),
    };
  });
  const { remedies, cautions } = batchCautions(fn, cycle_s, pace);
  const twoSizes = division === 'full and rest' && full !== rest && !last.eq(each);
  const markCautions = twoSizes ? [full, rest].flatMap(ofItsBatch) : rest.cautions;
  return {
    batches,
    stagger: timeOf(stagger_s),
    pacedBy,
    cycle: timeOf(cycle_s),
    usable: timeOf(pace.usable_s),
    duration: timeOf(duration_s),
    remedies,
    cautions: [...cautions, RATIO_BY_VOLUME, ...markCautions],
    basis: [
      basis(
        'batches',
        'batch.batchClock',
        'ceiling of volume / batchVolume batches, one every max((mixTime + carryTime) / mixers, placing / crews)',
        'common-practice',
        { ...paceOf(given), area, volume, batchVolume, division, parts: ratio.given, mixers, crews },
      ),
    ],
  };
}

/** The cautions of one size of batch, which say so where there are two. */
function ofItsBatch(kind: {
  readonly cautions: readonly Caution[];
  readonly line: { readonly volume: Volume };
}) {
  return kind.cautions.map((caution) => ({
    ...caution,
    params: { ...caution.params, ofBatch: kind.line.volume },
  }));
}

/** Reads the pail to be marked; answers what marks it for the parts of one batch. */
function readClockPail<L extends LengthUnit>(fn: string, marks: ClockPail<L>) {
  const path = ['marks'];
  const { pail, graduation, ratioTolerance, unit } = readObject(fn, 'marks', marks);
  const base = readPail(fn, pail, path);
  const graduation_m = read(fn, 'graduation', graduation, LENGTH, POSITIVE, path);
  const tolerance = readOptional(fn, 'ratioTolerance', ratioTolerance, SHARE, PART, path);
  return (pours: Pours) => marksOf(fn, pours, base, graduation_m, tolerance, unit, path);
}
