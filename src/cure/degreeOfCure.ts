import { SHARE, TIME } from '../core/dimensions.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Time } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { ShareUnit } from '../core/unitCodes.ts';
import { integrate } from './integrate.ts';
import { degreeOf, readKinetics, type Kinetics } from './kinetics.ts';

/** Input of {@link degreeOfCure}. */
export interface DegreeOfCureInput<U extends ShareUnit = ShareUnit> extends Kinetics {
  /** Time since the reaction began. */
  readonly time: Time;
  /** Unit of the answer. */
  readonly unit: U;
}

/** −ln(1 − α) at which nothing that a double can show is left to react. */
const CURED = 40;

/**
 * How much of a resin has reacted after a time.
 *
 * For comparing mixes and for the size of things; rate equations fitted to hot laboratory samples say too little of a
 * floor that cures at the temperature of the room. Cure times in the instructions come first.
 *
 * @formula
 * ```math
 * \frac{d\alpha}{dt} = (k_1 + k_2 \, \alpha^m)(1 - \alpha)^n
 * ```
 * @units time, rate constants, numbers, temperatures, molar energy; answers share.
 * @validRange k1 above 0, k2 and time 0 or more, orders from 0 to 20; rise 0 or more.
 * @monotone time +, k1 +, k2 +
 * @accuracy Within 1e-9 of the closed forms of first to third order and of m = n = 1. No published figure: rate
 * constants are published as slopes only, so that the closed forms of textbooks are the check.
 * @source definition, kamal-1974
 * @param input - Rate equation, time and the unit wanted.
 * @returns The degree of cure in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * cure.degreeOfCure({
 *   k1: { value: 0.01, unit: '1/min' },
 *   n: 2,
 *   time: { value: 100, unit: 'min' },
 *   unit: '%',
 * }).value.toFixed(6); // => '50.000000'
 * ```
 */
export const degreeOfCure = /* @__PURE__ */ monotone(
  { time: '+', k1: '+', k2: '+' },
  <U extends ShareUnit>(input: DegreeOfCureInput<U>): Quantity<U> => {
    const given = fields('degreeOfCure', input);
    const rate = readKinetics('degreeOfCure', given);
    const time_s = read('degreeOfCure', 'time', given.time, TIME, NOT_NEGATIVE);
    const u = integrate('degreeOfCure', (_, at) => rate(at), time_s, CURED);
    return write('degreeOfCure', degreeOf(u), SHARE, given.unit);
  },
);
