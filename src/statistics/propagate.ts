import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { dimensionOf } from '../core/dimensionOf.ts';
import { inside } from '../core/inside.ts';
import type { Formula } from '../core/monotone.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, refuse } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import { answer } from '../units/valueIn.ts';
import { coverageFactorOf, readConfidence, tableFreedom } from './confidence.ts';
import { groupsOf, readCorrelations, type Correlation } from './correlation.ts';
import { effectiveFreedom } from './effectiveFreedom.ts';
import { bendingVariance, moving, sensitivityOf } from './derivatives.ts';
import { slotsOf, type Slot } from './slots.ts';
import { freedomField, stepUnitOf, type StepUnit, type Uncertain } from './uncertain.ts';

/** The input of a formula, where each quantity may also say how well it is known. */
export type WithUncertainty<T> =
  T extends Quantity<infer U>
    ? T | Uncertain<U>
    : T extends object
      ? { readonly [K in keyof T]: WithUncertainty<T[K]> }
      : T;

/** Input of {@link propagate}, beside the formula. */
export interface PropagateInput<I> {
  /** The input of the formula; what carries a standard uncertainty is propagated, wherever it stands. */
  readonly inputs: WithUncertainty<I>;
  /** Inputs that are off together; pairs that are not named are independent. */
  readonly correlations?: readonly Correlation[] | undefined;
  /** How sure the expanded uncertainty is to hold the true value; left out, there is none in the answer. */
  readonly confidence?: Share | undefined;
}

/** How one uncertain input moves the answer. */
export interface Sensitivity<U extends string = string> {
  /** Units of the answer for one unit of the input, both as given. */
  readonly sensitivity: number;
  /** The standard uncertainty of the answer, were this input the only uncertain one. */
  readonly contribution: Quantity<StepUnit<U>>;
}

/** The answer of a formula with what the uncertainty of its inputs makes of it. */
export interface Propagated<U extends string = string> extends Uncertain<U> {
  /** By name of the input, with points between where it stands deeper: `tests.0.gain`. */
  readonly sensitivities: Readonly<Record<string, Sensitivity<U>>>;
  /** Degrees of freedom as a table has them: truncated. Left out where there are infinitely many. */
  readonly tableDegreesOfFreedom?: number | undefined;
  /** Student's factor for the level of confidence, where one was asked for. */
  readonly coverageFactor?: number | undefined;
  /** Half the width that holds the true value with that confidence, where one was asked for. */
  readonly expandedUncertainty?: Quantity<StepUnit<U>> | undefined;
  /** The standard uncertainty with the terms of second order, for independent inputs that leave room for them. */
  readonly secondOrderUncertainty?: Quantity<StepUnit<U>> | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** More than this part of the first order added by the second is worth a word. */
const WORTH_A_WORD = 1.05;

/**
 * How well the answer of a formula is known when its inputs are uncertain: first-order propagation by the GUM, through
 * any formula of this library or your own.
 *
 * The sensitivities are taken from the formula itself, by differences. Inputs that hang together are named in
 * `correlations`; their degrees of freedom then count once, the fewest of them, as if they had been read together.
 *
 * @formula
 * ```math
 * u_c^2 = \sum_i \sum_j c_i c_j\, u_i u_j\, r_{ij}, \quad c_i = \frac{\partial f}{\partial x_i}, \quad
 * \nu = \frac{u_c^4}{\sum_g u_g^4 / \nu_g}, \quad U = t_p(\lfloor \nu \rfloor)\, u_c
 * ```
 * @units those of the formula.
 * @validRange that of the formula. At the very end of a valid range the sensitivity is taken from the inside.
 * @accuracy Sensitivities within a relative 1e-8 of analytic ones for smooth formulas. Where the formula bends within
 * the uncertainty a caution says so, and the terms of second order stand beside.
 * @source jcgm-100-2008
 * @param formula - A function of one input object that answers one quantity.
 * @param input - Its input with uncertainties, correlations and the level of confidence.
 * @returns The answer with its standard uncertainty, sensitivities, degrees of freedom and expanded uncertainty.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 * import * as statistics from 'coating-math/statistics';
 *
 * const taped = (value: number) =>
 *   statistics.typeBUncertainty({
 *     estimate: { value, unit: 'ft' },
 *     halfWidth: { value: 3, unit: 'in' },
 *     distribution: 'rectangular',
 *     unit: 'ft',
 *   });
 * const room = statistics.propagate(area.rectangleArea, {
 *   inputs: { length: taped(32), width: taped(18), unit: 'ft2' },
 *   confidence: { value: 95, unit: '%' },
 * });
 * [room.value, room.standardUncertainty.value.toFixed(2)]; // => [576, '5.30']
 * room.sensitivities['length']?.sensitivity.toFixed(6); // => '18.000000'
 * room.expandedUncertainty?.value.toFixed(1); // => '10.4'
 * ```
 */
export function propagate<F extends Formula, const U extends ReturnType<F>['unit']>(
  formula: F,
  input: PropagateInput<Parameters<F>[0]> & { readonly inputs: { readonly unit?: U } },
): Propagated<U> {
  const fn = 'propagate';
  if (typeof formula !== 'function') refuse(fn, 'wrong-type', ['formula'], 'a function', formula);
  const { inputs, correlations, confidence } = fields(fn, input);
  const { plain, slots } = slotsOf(fn, readObject(fn, 'inputs', inputs as object));
  const matrix = readCorrelations(fn, correlations, slots);
  const level = confidence === undefined ? undefined : readConfidence(fn, confidence);

  const run = formula as unknown as (input: object) => Quantity<U>;
  const here = inside(fn, ['inputs'], () => run(plain));
  const dimension = dimensionOf((here as Quantity | undefined)?.unit);
  if (!dimension) return refuse(fn, 'wrong-type', ['formula'], 'a formula that answers one quantity', here);
  const at = moving(run, plain);
  const sensitivities = slots.map((slot) => sensitivityOf(fn, at, here.value, slot));
  const parts = slots.map((slot, i) => (sensitivities[i] as number) * slot.uncertainty);

  const groups = groupsOf(matrix).map((places) => ({
    variance: varianceOf(places, parts, matrix),
    freedom: fewest(places.map((i) => (slots[i] as Slot).freedom)),
  }));
  const variance = groups.reduce((sum, group) => sum + group.variance, 0);
  const freedom = effectiveFreedom(variance, groups);
  const uncertainty = Math.sqrt(variance);
  const independent = groups.length === slots.length;
  const bending = independent ? bendingVariance(at, here.value, slots, parts) : undefined;
  const secondOrder = bending === undefined ? undefined : Math.sqrt(Math.max(0, variance + bending));

  const step = stepUnitOf(here.unit, dimension);
  const inSteps = (value: number) => answer(fn, value, step);
  const asTabled = tableFreedom(freedom);
  const factor = level === undefined ? undefined : coverageFactorOf(level, asTabled);
  const about = (code: CautionCode, params: Caution['params']): Caution => ({
    code,
    severity: 'caution',
    params,
    source: 'jcgm-100-2008',
  });
  return {
    ...answer(fn, here.value, here.unit),
    standardUncertainty: inSteps(uncertainty),
    ...freedomField(freedom),
    ...(asTabled !== undefined && { tableDegreesOfFreedom: asTabled }),
    ...(factor !== undefined && {
      coverageFactor: factor,
      expandedUncertainty: inSteps(factor * uncertainty),
    }),
    ...(secondOrder !== undefined && { secondOrderUncertainty: inSteps(secondOrder) }),
    sensitivities: Object.fromEntries(
      slots.map(({ name }, i) => [
        name,
        {
          sensitivity: (sensitivities[i] as number) + 0,
          contribution: inSteps(Math.abs(parts[i] as number)),
        },
      ]),
    ),
    cautions: [
      ...(independent && bending === undefined ? [about('uncertainty-leaves-range', {})] : []),
      ...(secondOrder !== undefined && secondOrder > WORTH_A_WORD * uncertainty
        ? [about('formula-bends', { first: inSteps(uncertainty), second: inSteps(secondOrder) })]
        : []),
    ],
    basis: [
      basis(
        'standardUncertainty',
        `statistics.${fn}`,
        'u² = Σ Σ c_i c_j u_i u_j r_ij',
        'jcgm-100-2008',
        { inputs, correlations, confidence },
        'first order, normally distributed',
      ),
    ],
  };
}

/** The variance of the answer by inputs that hang together. */
function varianceOf(
  places: readonly number[],
  parts: readonly number[],
  matrix: readonly (readonly number[])[],
): number {
  let variance = 0;
  for (const i of places) {
    for (const j of places) {
      variance +=
        (parts[i] as number) * (parts[j] as number) * ((matrix[i] as readonly number[])[j] as number);
    }
  }
  // Inputs that cancel may leave a little less than nothing.
  return Math.max(0, variance);
}

/** The fewest degrees of freedom; nothing where all have infinitely many. */
function fewest(freedoms: readonly (number | undefined)[]): number | undefined {
  const known = freedoms.filter((freedom) => freedom !== undefined);
  return known.length > 0 ? Math.min(...known) : undefined;
}
