import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import {
  readCoverage,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { classesOf, readScaleError } from './scale.ts';
import { PENDULUM, SLIP_METHODS } from './slipMethods.ts';

/** Input of {@link pendulumClass}. */
export interface PendulumClassInput extends Confidence {
  /** Pendulum test value of one place, wet. */
  readonly pendulumValue: number;
  /** What the value may be off by. Taken as exact where not given. */
  readonly readingError?: ReadingError<number> | undefined;
}

/** How likely people are to slip. */
export type SlipPotential = 'high' | 'moderate' | 'low';

/** How likely a place is to make people slip. */
export interface PendulumClass {
  /** Potential for a slip; undecided where the value lies within its error of the next class. */
  readonly slipPotential: SlipPotential | 'undecided';
  /** Every class that the value may belong to, the most slippery first. */
  readonly possible: readonly SlipPotential[];
  /** What belongs with it; never empty. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/** Where each class begins. */
const CLASSES: readonly (readonly [from: number, name: SlipPotential])[] = [
  [0, 'high'],
  [25, 'moderate'],
  [36, 'low'],
];

/**
 * How likely people are to slip at a place, by its pendulum value.
 *
 * A value within its error of the next class is undecided between the two, and never the better one alone.
 *
 * @formula
 * ```math
 * v < 25: \text{high}, \quad 25 \le v < 36: \text{moderate}, \quad v \ge 36: \text{low}
 * ```
 * @units pendulum value without unit; answers a class.
 * @validRange pendulumValue from 0 to 150; one place at a time, never a mean of places;
 * readingError from 0 to 150.
 * @accuracy Exact; the classes are from memory and printed for whole numbers, a part of one counts down.
 * A value exactly on a boundary belongs to the class above it.
 * @source hse-pendulum, jcgm-100-2008
 * @param input - Pendulum value, and what it may be off by.
 * @returns The class, or the classes between which it is undecided.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect.pendulumClass({ pendulumValue: 29 }).slipPotential; // => 'moderate'
 * const near = inspect.pendulumClass({ pendulumValue: 37, readingError: 3 });
 * [near.slipPotential, near.possible]; // => ['undecided', ['moderate', 'low']]
 * ```
 */
export function pendulumClass(input: PendulumClassInput): PendulumClass {
  const fn = 'pendulumClass';
  const { pendulumValue, readingError } = fields(fn, input);
  const { limits } = SLIP_METHODS['pendulum wet'];
  const value = readNumber(fn, 'pendulumValue', pendulumValue, limits);
  const error = readScaleError(fn, 'readingError', readingError, readCoverage(fn, input), limits);
  const possible = classesOf(CLASSES, value, error);
  const [first, second] = possible as [SlipPotential, SlipPotential?];
  const undecided: Caution = {
    code: 'slip-class-undecided',
    severity: 'danger',
    params: { measured: value, uncertainty: error, classes: possible.join(', ') },
    ...PENDULUM,
  };
  return {
    slipPotential: second ? 'undecided' : first,
    possible,
    cautions: [
      ...(second ? [undecided] : []),
      {
        code: 'slip-of-that-day',
        severity: 'note',
        params: { method: 'pendulum wet' },
        ...PENDULUM,
      },
    ],
    basis: [
      basis('slipPotential', `inspect.${fn}`, 'below 25 high, below 36 moderate, else low', PENDULUM, {
        pendulumValue: value,
      }),
      ...uncertaintyBasis(`inspect.${fn}`, { readingError }, input),
    ],
  };
}
