import { SHARE } from '../core/dimensions.ts';
import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { NOT_NEGATIVE, type Limits } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOptional, write } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { dimensionOfUnit } from '../units/dimensionNamed.ts';
import { answer, valueIn } from '../units/valueIn.ts';
import { freedomField, stepOf, stepUnitOf, type StepUnit, type Uncertain } from './uncertain.ts';

/** How likely each value between two bounds is. */
export type BoundedDistribution = 'rectangular' | 'triangular' | 'arcsine';

/** Input of {@link typeBUncertainty}. */
export interface TypeBUncertaintyInput<U extends Unit = Unit> {
  /** The best estimate, in the middle between the bounds. */
  readonly estimate: Quantity<NoInfer<SameKind<U>>>;
  /** From the estimate to either bound. */
  readonly halfWidth: Quantity<NoInfer<StepUnit<U>>>;
  /** Rectangular where nothing more is known; triangular where the middle is likelier; arcsine for what swings. */
  readonly distribution: BoundedDistribution;
  /** How far the standard uncertainty itself may be off, as a part of it; left out where it is taken as exact. */
  readonly relativeUncertainty?: Share | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Half-widths to the square of a standard uncertainty. */
const DIVISOR: Readonly<Record<BoundedDistribution, number>> = { rectangular: 3, triangular: 6, arcsine: 2 };

/** At most what leaves one degree of freedom. */
const DOUBT: Limits = {
  above: 9.99999999999e-7,
  below: 0.707_106_781_188,
  words: ' from 0.0001 % to 70.71 %',
};

/**
 * How well a quantity is known of which only bounds are known: an instrument to ±0.5, a reading to a step (Type B).
 *
 * @formula
 * ```math
 * u = \frac{a}{\sqrt{3}}, \frac{a}{\sqrt{6}}, \frac{a}{\sqrt{2}}, \quad
 * \nu = \frac{1}{2} \left( \frac{\Delta u}{u} \right)^{-2}
 * ```
 * @units any kind, share; answers the same kind with an uncertainty, of temperatures a temperature difference.
 * @validRange halfWidth of 0 or more; relativeUncertainty from 0.0001 % to 70.71 %.
 * @monotone estimate +, halfWidth none, relativeUncertainty none
 * @accuracy Exact up to round-off.
 * @source jcgm-100-2008
 * @param input - Estimate, bounds, distribution and the unit wanted.
 * @returns The estimate in `input.unit` with its standard uncertainty.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * statistics.typeBUncertainty({
 *   estimate: { value: 18, unit: 'degC' },
 *   halfWidth: { value: 0.5, unit: 'deltaC' },
 *   distribution: 'rectangular',
 *   unit: 'degC',
 * }).standardUncertainty.value.toFixed(4); // => '0.2887'
 * ```
 */
export const typeBUncertainty = /* @__PURE__ */ monotone(
  { estimate: '+', halfWidth: 'none', relativeUncertainty: 'none' },
  <U extends Unit>(input: TypeBUncertaintyInput<U>): Uncertain<U> => {
    const fn = 'typeBUncertainty';
    const { estimate, halfWidth, distribution, relativeUncertainty, unit } = fields(fn, input);
    const dimension = dimensionOfUnit(fn, unit);
    const value = valueIn(fn, 'estimate', estimate, dimension, unit);
    const half = read<string>(fn, 'halfWidth', halfWidth, stepOf(dimension), NOT_NEGATIVE);
    const divisor = DIVISOR[readKey(fn, 'distribution', distribution, DIVISOR)];
    const doubt = readOptional(fn, 'relativeUncertainty', relativeUncertainty, SHARE, DOUBT);
    return {
      ...answer(fn, value, unit),
      standardUncertainty: write(
        fn,
        half / Math.sqrt(divisor),
        stepOf(dimension),
        stepUnitOf(unit, dimension),
      ),
      ...freedomField(doubt && 1 / (2 * doubt * doubt)),
    };
  },
);
