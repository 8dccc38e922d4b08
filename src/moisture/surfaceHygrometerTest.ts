import type { Caution } from '../core/caution.ts';
import type { Quantity, Share, Time } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import type { Confidence, ReadingError } from '../statistics/readingError.ts';
import { assessHumidity } from './humidity.ts';
import { testNotes, type WorstAssessment } from './worst.ts';

const METHOD = { source: 'bs-8203', status: 'memory' } as const;
const HEATING_OFF: Caution = {
  code: 'box-heating-off',
  severity: 'note',
  params: { before: { value: 96, unit: 'h' } },
  source: 'bs-8203',
  status: 'memory',
};

/** One sealed box on the floor. */
export interface HygrometerBox {
  /** What the hygrometer under the box reads. */
  readonly relativeHumidity: Share;
  /** How long the box had been sealed to the floor when it was read. */
  readonly closedFor: Time;
}

/** Input of {@link surfaceHygrometerTest}. */
export interface SurfaceHygrometerTestInput<U extends ShareUnit = ShareUnit> extends Confidence {
  /** How long a box must be sealed before it is read: at least 72 h by British practice, longer on thick slabs. */
  readonly equilibration: Time;
  /** All boxes on the floor. */
  readonly tests: readonly HygrometerBox[];
  /** Highest humidity at the surface that the instructions of the system allow. */
  readonly limit: Quantity<U>;
  /** What the hygrometers may be off by, in points of relative humidity. */
  readonly relativeHumidityError?: ReadingError<Share> | undefined;
}

/**
 * Whether the humidity at the surface of the slab is within what the system allows, by hygrometers in sealed boxes.
 *
 * A box on the surface and a probe in the slab are different tests: 75 % of one is not 75 % of the other.
 *
 * @formula
 * ```math
 * \max_i \varphi_i \le \varphi_{limit}
 * ```
 * @units times, shares; answers share.
 * @validRange humidities and limit above 0 and up to 100 %; times above 0. How many boxes a floor asks for is not
 * judged.
 * @accuracy Exact. A reading exactly on the limit meets it.
 * @source bs-8203
 * @param input - Boxes, the limit of the system and what the hygrometers may be off by.
 * @returns The verdict with the highest humidity, in the unit of the limit.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const box = (percent: number, hours: number) => ({
 *   relativeHumidity: { value: percent, unit: '%' } as const,
 *   closedFor: { value: hours, unit: 'h' } as const,
 * });
 * const floor = {
 *   equilibration: { value: 72, unit: 'h' },
 *   limit: { value: 75, unit: '%' },
 * } as const;
 * moisture.surfaceHygrometerTest({ ...floor, tests: [box(71, 80), box(74, 80)] }).verdict; // => 'meets'
 * moisture.surfaceHygrometerTest({ ...floor, tests: [box(71, 24)] }).verdict; // => 'undecided'
 * ```
 */
export function surfaceHygrometerTest<U extends ShareUnit>(
  input: SurfaceHygrometerTestInput<U>,
): WorstAssessment<U> {
  const fn = 'surfaceHygrometerTest';
  return assessHumidity(fn, fields(fn, input), {
    method: METHOD,
    always: [...testNotes(METHOD), HEATING_OFF],
  });
}
