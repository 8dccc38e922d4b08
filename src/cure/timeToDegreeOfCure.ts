import { SHARE, TIME } from '../core/dimensions.ts';
import { PART } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { integrate } from './integrate.ts';
import { readKinetics, type Kinetics } from './kinetics.ts';

/** Input of {@link timeToDegreeOfCure}. */
export interface TimeToDegreeOfCureInput<U extends TimeUnit = TimeUnit> extends Kinetics {
  /** How much must have reacted: the degree of cure at the gel point, say. */
  readonly degreeOfCure: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * How long it takes until a share of a resin has reacted; until it gels, with the degree of cure at the gel point.
 *
 * With `heating` it is the time in a pail that loses no heat, which shows how much a large mass may shorten a pot life.
 *
 * @formula
 * ```math
 * t = \int_0^{\alpha} \frac{da}{(k_1 + k_2 \, a^m)(1 - a)^n}
 * ```
 * @units share, rate constants, numbers, temperatures, molar energy; answers time.
 * @validRange degreeOfCure from 0 % to below 100 %; k1 above 0, k2 0 or more, orders from 0 to 20; rise 0 or more.
 * @monotone degreeOfCure +, k1 -, k2 -
 * @accuracy Within a relative 1e-9 of the closed forms. No published figure: rate constants are published as slopes
 * only, so that the closed forms of textbooks are the check.
 * @source definition, kamal-1974
 * @param input - Rate equation, degree of cure and the unit wanted.
 * @returns The time in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * const mix = { k1: { value: 0.01, unit: '1/min' }, n: 2, degreeOfCure: { value: 50, unit: '%' }, unit: 'min' } as const;
 * cure.timeToDegreeOfCure(mix).value.toFixed(4); // => '100.0000'
 * const heating = {
 *   start: { value: 20, unit: 'degC' },
 *   rise: { value: 150, unit: 'deltaC' },
 *   activationEnergy: { value: 50, unit: 'kJ/mol' },
 * } as const;
 * cure.timeToDegreeOfCure({ ...mix, heating }).value.toFixed(1); // => '13.7'
 * ```
 */
export const timeToDegreeOfCure = /* @__PURE__ */ monotone(
  { degreeOfCure: '+', k1: '-', k2: '-' },
  <U extends TimeUnit>(input: TimeToDegreeOfCureInput<U>): Quantity<U> => {
    const given = fields('timeToDegreeOfCure', input);
    const rate = readKinetics('timeToDegreeOfCure', given);
    const degree = read('timeToDegreeOfCure', 'degreeOfCure', given.degreeOfCure, SHARE, PART);
    const time_s = integrate('timeToDegreeOfCure', (at) => 1 / rate(at), -Math.log1p(-degree));
    return write('timeToDegreeOfCure', time_s, TIME, given.unit);
  },
);
