import type { Caution, CautionCode } from '../core/caution.ts';
import { SHARE, TIME, VOLUME, WORK_RATE } from '../core/dimensions.ts';
import { heatInThePail, SKIN_AND_EYES } from '../core/hazards.ts';
import { NOT_NEGATIVE, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import type { Quantity, Share, Time, Volume, WorkRate } from '../core/quantity.ts';
import { read, readOr, write } from '../core/read.ts';

/** What limits every batch: how long the resin gives and how long the crew takes. */
export interface Pace {
  /** Pot life at the temperature of the material, from the start of mixing: the answer of `cure.potLife`. */
  readonly potLife: Time;
  /** Volume for which the pot life is stated. No batch is larger: its pot life would be shorter. */
  readonly statedFor: Volume;
  /** Share of the pot life in which the batch must be down. */
  readonly usableShare: Share;
  /** Stand time after mixing that the instructions ask for before use. None where not given. */
  readonly induction?: Time | undefined;
  /** Time to measure and mix one batch. */
  readonly mixTime: Time;
  /** Time to carry it to the edge and pour it. */
  readonly carryTime: Time;
  /** Area that the hands on one batch place in a time. */
  readonly placingRate: WorkRate;
}

/** A pace in s, m³ and m²/s. */
export interface BasePace {
  readonly potLife_s: number;
  /** Pot life and volume as they came, for the cautions. */
  readonly potLife: Time;
  readonly statedFor: Volume;
  readonly statedFor_m3: number;
  /** From the start of mixing until the batch must be down. */
  readonly usable_s: number;
  /** From the start of mixing until placing begins. */
  readonly ready_s: number;
  /** What is left for placing; 0 where nothing is, or no more than round-off. */
  readonly placing_s: number;
  /** How long the mixer is busy with a batch: mixing and carrying, not standing. */
  readonly mixer_s: number;
  /** From the start of mixing until the stand time is over; nothing where none is asked for. */
  readonly stood_s: number | undefined;
  readonly placingRate: number;
}

/** The fields of a pace alone, to be named as what went in. */
export function paceOf(pace: Pace): Pace {
  const { potLife, statedFor, usableShare, induction, mixTime, carryTime, placingRate } = pace;
  return { potLife, statedFor, usableShare, induction, mixTime, carryTime, placingRate };
}

/** Reads what limits every batch. */
export function readPace(fn: string, pace: Pace): BasePace {
  const { potLife, statedFor, usableShare, induction, mixTime, carryTime, placingRate } = pace;
  const potLife_s = read(fn, 'potLife', potLife, TIME, POSITIVE);
  const statedFor_m3 = read(fn, 'statedFor', statedFor, VOLUME, POSITIVE);
  const share = read(fn, 'usableShare', usableShare, SHARE, PART_OR_WHOLE);
  const induction_s = readOr(0, fn, 'induction', induction, TIME, NOT_NEGATIVE);
  const mix_s = read(fn, 'mixTime', mixTime, TIME, POSITIVE);
  const carry_s = read(fn, 'carryTime', carryTime, TIME, NOT_NEGATIVE);
  const usable_s = potLife_s * share;
  const ready_s = mix_s + induction_s + carry_s;
  return {
    potLife_s,
    potLife,
    statedFor,
    statedFor_m3,
    usable_s,
    ready_s,
    placing_s: ready_s < usable_s * (1 - 1e-12) ? usable_s - ready_s : 0,
    mixer_s: mix_s + carry_s,
    stood_s: induction_s > 0 ? mix_s + induction_s : undefined,
    placingRate: read(fn, 'placingRate', placingRate, WORK_RATE, POSITIVE),
  };
}

/** What can be done when a batch does not fit its pot life. */
export type Remedy =
  | 'smaller batch'
  | 'more hands'
  | 'cooler material'
  | 'faster mixing'
  | 'slower hardener by the instructions';

/** What helps where even mixing and carrying take too long: neither hands nor a smaller batch change that. */
const MIXING_REMEDIES: readonly Remedy[] = [
  'cooler material',
  'faster mixing',
  'slower hardener by the instructions',
];

/** What can be done about a batch of this cycle, nothing where it fits, and the cautions of mixing it. */
export function batchCautions(
  fn: string,
  cycle_s: number,
  pace: BasePace,
): { readonly remedies: readonly Remedy[]; readonly cautions: readonly Caution[] } {
  const minutes = (seconds: number): Quantity<'min'> => write(fn, seconds, TIME, 'min');
  const short = (code: CautionCode, needed_s: number): Caution => ({
    code,
    severity: 'caution',
    params: { needed: minutes(needed_s), usable: minutes(pace.usable_s) },
    source: 'common-practice',
  });
  const always: readonly Caution[] = [heatInThePail(pace.potLife, pace.statedFor), SKIN_AND_EYES];
  if (pace.placing_s === 0) {
    return { remedies: MIXING_REMEDIES, cautions: [short('no-time-to-place', pace.ready_s), ...always] };
  }
  if (cycle_s <= pace.usable_s * (1 + 1e-12)) return { remedies: [], cautions: always };
  return {
    remedies: ['smaller batch', 'more hands', ...MIXING_REMEDIES],
    cautions: [short('pot-life-too-short', cycle_s), ...always],
  };
}
