import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { FORCE } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Force } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';

/** Input of {@link frictionCoefficient}. */
export interface FrictionCoefficientInput {
  /** Force along the floor that keeps the slider moving, or sets it in motion. */
  readonly horizontalForce: Force;
  /** Force that presses the slider on the floor: its weight. */
  readonly normalForce: Force;
}

/** A coefficient of friction. */
export interface FrictionCoefficient {
  /** Without unit. */
  readonly coefficient: number;
  /** What belongs with it; never empty. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/**
 * The coefficient of friction out of a pull along the floor and the weight on it.
 *
 * @formula
 * ```math
 * \mu = \frac{F}{N}
 * ```
 * @units forces; answers a number without unit.
 * @validRange forces above 0.
 * @accuracy Exact up to round-off: relative error below 5e-16. No published figure: it is the definition.
 * @source definition
 * @param input - Both forces.
 * @returns The coefficient, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect.frictionCoefficient({
 *   horizontalForce: { value: 27, unit: 'N' },
 *   normalForce: { value: 60, unit: 'N' },
 * }).coefficient; // => 0.45
 * ```
 */
export function frictionCoefficient(input: FrictionCoefficientInput): FrictionCoefficient {
  const fn = 'frictionCoefficient';
  const { horizontalForce, normalForce } = fields(fn, input);
  const horizontal_N = read(fn, 'horizontalForce', horizontalForce, FORCE, POSITIVE);
  const normal_N = read(fn, 'normalForce', normalForce, FORCE, POSITIVE);
  const coefficient = horizontal_N / normal_N;
  if (!Number.isFinite(coefficient)) refuse(fn, 'too-large', [], 'finite', coefficient);
  return {
    coefficient,
    cautions: [{ code: 'pull-is-no-method', severity: 'note', params: {}, source: 'common-practice' }],
    basis: [
      basis('coefficient', `inspect.${fn}`, 'horizontal force / normal force', 'definition', {
        horizontalForce,
        normalForce,
      }),
    ],
  };
}
