import { LENGTH } from '../core/dimensions.ts';
import { TEST_DUST } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Length, Quantity, Share, Time } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import type { Confidence, ReadingError } from '../statistics/readingError.ts';
import { testsFor } from './count.ts';
import { DEPTH_SHARE, type DryingSides } from './drying.ts';
import { assessHumidity } from './humidity.ts';
import { testNotes, type WorstAssessment } from './worst.ts';

const METHOD = { source: 'astm-f2170', status: 'memory' } as const;

/** One hole with its probe. */
export interface HumidityProbe {
  /** What the probe reads. */
  readonly relativeHumidity: Share;
  /** Depth of the hole. */
  readonly depth: Length;
  /** How long the hole had been closed when it was read. */
  readonly closedFor: Time;
}

/** Input of {@link inSlabHumidityTest}. */
export interface InSlabHumidityTestInput<U extends ShareUnit = ShareUnit> extends Confidence {
  /** Area of the floor that the holes stand for. */
  readonly floorArea: Area;
  /** Thickness of the slab. */
  readonly slabThickness: Length;
  /** From which sides the slab dries. */
  readonly drying: DryingSides;
  /** How long a hole must be closed before it is read: 72 h in older editions of the method, 24 h since 2018. */
  readonly equilibration: Time;
  /** All holes of the floor. */
  readonly tests: readonly HumidityProbe[];
  /** Highest humidity that the instructions of the system allow. */
  readonly limit: Quantity<U>;
  /** What the probes may be off by, in points of relative humidity. */
  readonly relativeHumidityError?: ReadingError<Share> | undefined;
}

/**
 * Whether the humidity in the slab is within what the system allows, by probes in drilled holes.
 *
 * The highest hole governs. A hole that is not deep enough reads low: over the limit it counts, below it decides
 * nothing. A hole read too early decides nothing; over the limit it leaves the floor undecided and is named.
 *
 * @formula
 * ```math
 * \max_i \varphi_i \le \varphi_{limit}, \quad d_i \ge 0.4\,h \;\text{(one side)} \;\text{or}\; 0.2\,h \;\text{(both)}
 * ```
 * @units area, lengths, times, shares; answers share.
 * @validRange floorArea up to 1e9 m²; humidities and limit above 0 and up to 100 %; lengths and times above 0, holes less
 * deep than the slab.
 * @accuracy Exact. A reading exactly on the limit meets it; probes are usually good to 2 or 3 % of humidity.
 * @source astm-f2170, california-dmv-flooring
 * @param input - Floor, slab, holes, the limit of the system and what the probes may be off by.
 * @returns The verdict with the highest humidity, in the unit of the limit.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const hole = (percent: number) => ({
 *   relativeHumidity: { value: percent, unit: '%' } as const,
 *   depth: { value: 2.5, unit: 'in' } as const,
 *   closedFor: { value: 26, unit: 'h' } as const,
 * });
 * const slab = moisture.inSlabHumidityTest({
 *   floorArea: { value: 800, unit: 'ft2' },
 *   slabThickness: { value: 6, unit: 'in' },
 *   drying: 'one side',
 *   equilibration: { value: 24, unit: 'h' },
 *   tests: [hole(71), hole(88), hole(69)],
 *   limit: { value: 80, unit: '%' },
 * });
 * // The mean of the holes is 76 %.
 * [slab.verdict, slab.measured.value]; // => ['fails', 88]
 * ```
 */
export function inSlabHumidityTest<U extends ShareUnit>(
  input: InSlabHumidityTestInput<U>,
): WorstAssessment<U> {
  const fn = 'inSlabHumidityTest';
  const { floorArea, slabThickness, drying } = fields(fn, input);
  const share = DEPTH_SHARE[readKey(fn, 'drying', drying, DEPTH_SHARE)];
  const slab_m = read(fn, 'slabThickness', slabThickness, LENGTH, POSITIVE);
  const deepEnough_m = slab_m * share * (1 - 1e-12);
  return assessHumidity(fn, input, {
    method: METHOD,
    assumption: `holes at least ${share} of the slab deep`,
    inputs: { floorArea, slabThickness, drying },
    testsNeeded: testsFor(fn, 'in-slab humidity', floorArea),
    always: [...testNotes(METHOD), TEST_DUST],
    readsLow: ({ depth }, path) => {
      const depth_m = read(fn, 'depth', depth, LENGTH, POSITIVE, path);
      if (depth_m >= slab_m) refuse(fn, 'conflict', [...path, 'depth'], 'less than the slab', depth);
      return depth_m < deepEnough_m ? ['probe-too-shallow'] : [];
    },
  });
}
