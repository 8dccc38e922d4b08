import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import { SLIP_METHODS } from './slipMethods.ts';

/** Input of {@link pendulumClass}. */
export interface PendulumClassInput {
  /** Pendulum test value of one place, wet. */
  readonly pendulumValue: number;
}

/** How likely a place is to make people slip. */
export interface PendulumClass {
  /** Potential for a slip. */
  readonly slipPotential: 'high' | 'moderate' | 'low';
  /** What belongs with it; never empty. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How likely people are to slip at a place, by its pendulum value.
 *
 * @formula
 * ```math
 * v < 25: \text{high}, \quad 25 \le v < 36: \text{moderate}, \quad v \ge 36: \text{low}
 * ```
 * @units pendulum value without unit; answers a class.
 * @validRange pendulumValue from 0 to 150; one place at a time, never a mean of places.
 * @accuracy Exact; the classes are from memory and printed for whole numbers, a part of one counts down.
 * @source hse-pendulum
 * @param input - Pendulum value.
 * @returns The class.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect.pendulumClass({ pendulumValue: 29 }).slipPotential; // => 'moderate'
 * ```
 */
export function pendulumClass(input: PendulumClassInput): PendulumClass {
  const fn = 'pendulumClass';
  const { pendulumValue } = fields(fn, input);
  const value = readNumber(fn, 'pendulumValue', pendulumValue, SLIP_METHODS['pendulum wet'].limits);
  return {
    slipPotential: value < 25 ? 'high' : value < 36 ? 'moderate' : 'low',
    cautions: [
      {
        code: 'slip-of-that-day',
        severity: 'note',
        params: { method: 'pendulum wet' },
        source: 'hse-pendulum',
      },
    ],
    basis: [
      basis(
        'slipPotential',
        `inspect.${fn}`,
        'below 25 high, below 36 moderate, else low',
        'hse-pendulum',
        { pendulumValue: value },
        'the classes are from memory',
      ),
    ],
  };
}
