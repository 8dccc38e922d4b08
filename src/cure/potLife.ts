import { echo } from '../core/echo.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { MASS, TIME, VOLUME } from '../core/dimensions.ts';
import { heatInThePail } from '../core/hazards.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Mass, Quantity, Temperature, Time, Volume } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { ruleBasis } from './timeAt.ts';
import { celsiusAt, readTimeRule, type TimeRule } from './timeRule.ts';

/** Input of {@link potLife}. */
export interface PotLifeInput<U extends TimeUnit = TimeUnit, S extends Volume | Mass = Volume | Mass> {
  /** How the pot life depends on temperature, from the product's instructions. */
  readonly rule: TimeRule;
  /** Volume or mass for which the instructions state it. */
  readonly statedFor: S;
  /** What is to be mixed at once; no more than that. As much as stated where not given. */
  readonly batch?: Volume | Mass | undefined;
  /** Temperature of the material in the pail. */
  readonly at: Temperature;
  /** Stand time after mixing that the instructions ask for before use. None where not given. */
  readonly induction?: Time | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link potLife}. */
export interface PotLifeAnswer<U extends TimeUnit = TimeUnit, S extends Volume | Mass = Volume | Mass> {
  /** From the start of mixing to the end of use. */
  readonly potLife: Quantity<U>;
  /** What is left of it after the stand time; 0 where nothing is. */
  readonly workingTime: Quantity<U>;
  /** The amount for which both hold: a larger one has less time. */
  readonly statedFor: S;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How long a mixed batch stays usable at the temperature of the material, for no more than the stated mass.
 *
 * The heat of the reaction stays in the pail, so a larger batch is faster; by how much no formula tells, and none is
 * used here.
 *
 * @formula
 * ```math
 * t_w = \max(0,\ t(T) - t_i)
 * ```
 * @units times, temperatures, volume or mass; answers times.
 * @validRange between the ends of the rule; batch no more than statedFor. A stand time as long as the
 * pot life is a caution, and the working time is 0.
 * @accuracy Exact up to round-off, relative error below 1e-14; as good as the rule and the stated figures.
 * @source ufgs-09971, astm-d2471, ufc-3-190-06
 * @param input - Rule, amount it is stated for, temperature, stand time and the unit wanted.
 * @returns Pot life and working time in `input.unit`, the amount they hold for, and the cautions.
 * @throws An `InputError` that names the field; `out-of-range` outside the ends or for a larger batch.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * const answer = cure.potLife({
 *   rule: {
 *     rule: 'halving',
 *     time: { value: 24, unit: 'min' },
 *     temperature: { value: 70, unit: 'degF' },
 *     step: { value: 18, unit: 'deltaF' },
 *     from: { value: 50, unit: 'degF' },
 *     to: { value: 90, unit: 'degF' },
 *   },
 *   statedFor: { value: 2, unit: 'usgal' },
 *   at: { value: 88, unit: 'degF' },
 *   unit: 'min',
 * });
 * [answer.potLife.value.toFixed(2), answer.cautions[0]?.code]; // => ['12.00', 'rule-of-thumb']
 * ```
 */
export function potLife<U extends TimeUnit, S extends Volume | Mass>(
  input: PotLifeInput<U, S>,
): PotLifeAnswer<U, S> {
  const { rule, statedFor, batch, at, induction, unit } = fields('potLife', input);
  const base = readTimeRule('potLife', 'rule', rule);
  const stated = readOneOf('potLife', 'statedFor', statedFor, [VOLUME, MASS]);
  if (batch !== undefined) {
    const batchBase = read('potLife', 'batch', batch, stated.dimension, POSITIVE);
    if (batchBase > stated.base * (1 + 1e-12)) {
      refuse(
        'potLife',
        'out-of-range',
        ['batch'],
        'no more than the amount the pot life is stated for',
        batch,
      );
    }
  }
  const potLife_s = base.seconds(celsiusAt('potLife', base, 'at', at));
  const induction_s = readOr(0, 'potLife', 'induction', induction, TIME, NOT_NEGATIVE);
  const working_s = induction_s < potLife_s * (1 - 1e-12) ? potLife_s - induction_s : 0;
  const life = write('potLife', potLife_s, TIME, unit);
  const outlasted: Caution = {
    code: 'stand-time-outlasts-pot-life',
    severity: 'caution',
    params: { induction: write('potLife', induction_s, TIME, unit), potLife: life },
    source: 'common-practice',
  };
  return {
    potLife: life,
    workingTime: write('potLife', working_s, TIME, unit),
    statedFor: echo(statedFor),
    cautions: [...base.cautions, ...(working_s === 0 ? [outlasted] : []), heatInThePail(life, statedFor)],
    basis: [ruleBasis('potLife', 'cure.potLife', rule, at)],
  };
}
