import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { TEMPERATURE_DIFFERENCE, TIME } from '../core/dimensions.ts';
import { readInstant, type Instant } from '../core/instant.ts';
import type { Quantity, Temperature, TemperatureDifference } from '../core/quantity.ts';
import { fields, refuse, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';
import type { TemperatureDifferenceUnit } from '../core/unitCodes.ts';
import {
  readCoverage,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { CLIMATE } from './limits.ts';
import { CONDENSATION, OUTGASSING, readBlind, trendOf, type Trend } from './trend.ts';

/** The temperature of the floor at a time. */
export interface SurfaceReading {
  /** When it was read. */
  readonly at: Instant;
  /** Temperature of the floor. */
  readonly surface: Temperature;
}

/** Input of {@link slabTrend}. */
export interface SlabTrendInput<
  U extends TemperatureDifferenceUnit = TemperatureDifferenceUnit,
> extends Confidence {
  /** First reading. */
  readonly earlier: SurfaceReading;
  /** Second reading, at the same place with the same instrument. */
  readonly later: SurfaceReading;
  /** A change that the instrument cannot tell from none. Every change counts where it is not given. */
  readonly changeError?: ReadingError<TemperatureDifference> | undefined;
  /** Unit of the change. */
  readonly unit: U;
}

/** Where the temperature of a floor is going, and what two rules that contradict each other say of it. */
export interface SlabTrend<U extends TemperatureDifferenceUnit = TemperatureDifferenceUnit> {
  /** Which way; undecided where the change is smaller than the instrument can tell. */
  readonly trend: Trend;
  /** Later less earlier. */
  readonly change: Quantity<U>;
  /** Half the width in which the true change lies, where its error was given. */
  readonly uncertainty?: Quantity<U> | undefined;
  /** Time between the readings. */
  readonly elapsed: Quantity<'h'>;
  /** By the rule for concrete: lay on a falling or steady slab, because rising air in the pores blows bubbles. */
  readonly outgassing: Verdict;
  /** By the rule for condensation: lay on a rising surface, because a falling one comes closer to the dew point. */
  readonly condensation: Verdict;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Whether the floor is warming or cooling, with the two findings that follow from it and pull in opposite ways.
 *
 * Which of the two weighs more is for the product instructions and the installer: a porous slab under its first coat
 * outgasses, a sealed one does not; a margin over the dew point that holds through the night answers condensation.
 *
 * @formula
 * ```math
 * \Delta t = t_{later} - t_{earlier}
 * ```
 * @units temperatures, instants, temperature difference; answers temperature difference and time.
 * @validRange temperatures from −100 to 100 °C; later after earlier.
 * @accuracy Exact; two readings say nothing of what lies between them, however far apart they are: take them
 * within the hours before laying.
 * @source ufc-3-190-06, jpcl-blistering-2007, common-practice
 * @param input - Two readings, what the instrument cannot tell, and the unit of the change.
 * @returns The trend, the change and the verdict of each rule.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * const noon = climate.slabTrend({
 *   earlier: { at: '2025-04-07T10:00:00-05:00', surface: { value: 54, unit: 'degF' } },
 *   later: { at: '2025-04-07T12:00:00-05:00', surface: { value: 59, unit: 'degF' } },
 *   unit: 'deltaF',
 * });
 * [noon.trend, noon.outgassing, noon.condensation]; // => ['rising', 'fails', 'meets']
 * ```
 */
export function slabTrend<U extends TemperatureDifferenceUnit>(input: SlabTrendInput<U>): SlabTrend<U> {
  const fn = 'slabTrend';
  const { earlier, later, changeError, unit } = fields(fn, input);
  const reading = (key: 'earlier' | 'later', given: SurfaceReading) => {
    const { at, surface } = readObject(fn, key, given);
    return {
      ms: readInstant(fn, 'at', at, [key]).ms,
      surface_C: readTemperature(fn, 'surface', surface, CLIMATE, [key]),
    };
  };
  const first = reading('earlier', earlier);
  const second = reading('later', later);
  if (second.ms <= first.ms) refuse(fn, 'conflict', ['later', 'at'], 'after the earlier reading', later.at);
  const blind_K = readBlind(fn, changeError, readCoverage(fn, input));

  const change_K = second.surface_C - first.surface_C;
  const trend = trendOf(change_K, blind_K);
  const change = write(fn, change_K, TEMPERATURE_DIFFERENCE, unit);
  const elapsed = write(fn, (second.ms - first.ms) / 1000, TIME, 'h');
  const about = (code: CautionCode, severity: Caution['severity'], source: string): Caution => ({
    code,
    severity,
    params: { change, elapsed },
    source,
  });
  const cautions: Readonly<Record<Trend, Caution[]>> = {
    rising: [
      about('outgassing', 'caution', 'jpcl-blistering-2007'),
      about('rising-suits-condensation', 'note', 'ufc-3-190-06'),
    ],
    steady: [about('surface-not-rising', 'caution', 'ufc-3-190-06')],
    falling: [
      about('surface-not-rising', 'caution', 'ufc-3-190-06'),
      about('falling-suits-outgassing', 'note', 'common-practice'),
    ],
    undecided: [about('trend-undecided', 'caution', 'common-practice')],
  };
  return {
    trend,
    change,
    ...(blind_K > 0 && { uncertainty: write(fn, blind_K, TEMPERATURE_DIFFERENCE, unit) }),
    elapsed,
    outgassing: OUTGASSING[trend],
    condensation: CONDENSATION[trend],
    cautions: cautions[trend],
    basis: [
      basis(
        'change',
        `climate.${fn}`,
        'later − earlier',
        'ufc-3-190-06',
        { earlier: earlier.surface, later: later.surface, changeError },
        'the rule of a falling or steady slab is from memory of concrete practice',
      ),
      ...uncertaintyBasis(`climate.${fn}`, { changeError }, input),
    ],
  };
}
