import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import { counted, shareOut } from '../core/decimal.ts';
import { MASS } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Mass, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import type { MassUnit } from '../core/unitCodes.ts';
import { readWeightParts, type WeightPart } from './parts.ts';

/** Input of {@link splitByWeight}. */
export interface SplitByWeightInput<U extends MassUnit = MassUnit> {
  /** What is to be mixed, all parts together, on the scale. */
  readonly total: Mass;
  /** The ratio by weight, in pouring order. */
  readonly parts: readonly WeightPart[];
  /** Unit of the answer. */
  readonly unit: U;
}

/** How much of one part, by mass. */
export interface PartMass<U extends MassUnit = MassUnit> {
  /** Name of the part. */
  readonly name: string;
  /** How much of it. */
  readonly mass: Quantity<U>;
}

/** Answer of {@link splitByWeight}. */
export interface WeightSplit<U extends MassUnit = MassUnit> {
  /** What is shared out, to 12 digits. */
  readonly total: Quantity<U>;
  /** How much of each part, in the order given. They add up to the total exactly. */
  readonly parts: readonly PartMass<U>[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How much of each part goes on the scale for a mix whose ratio is stated by weight.
 *
 * @formula
 * ```math
 * m_i = m \, \frac{w_i}{\sum_j w_j}
 * ```
 * @units mass, numbers of parts; answers masses.
 * @validRange total above 0; one part or more, each above 0. A ratio by volume is refused: see `weightRatio`.
 * @accuracy Worked out in decimals to 14 digits; the last part takes what is left, so that the parts add up exactly.
 * @source definition, nchrp-423
 * @param input - Total, ratio and the unit wanted.
 * @returns The mass of each part in `input.unit`.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const parts = [{ name: 'A', weightParts: 100 }, { name: 'B', weightParts: 60 }];
 * mix.splitByWeight({ total: { value: 4, unit: 'kg' }, parts, unit: 'kg' }).parts.map(({ mass }) => mass.value);
 * // => [2.5, 1.5]
 * ```
 */
export function splitByWeight<U extends MassUnit>(input: SplitByWeightInput<U>): WeightSplit<U> {
  const { total, parts, unit } = fields('splitByWeight', input);
  const total_kg = read('splitByWeight', 'total', total, MASS, POSITIVE);
  const { names, weights, given } = readWeightParts('splitByWeight', parts);
  const whole = counted(write('splitByWeight', total_kg, MASS, unit).value);
  const masses = shareOut(whole, weights);
  return {
    total: { value: whole.toNumber(), unit },
    parts: names.map((name, i) => ({ name, mass: { value: masses[i]?.toNumber() ?? 0, unit } })),
    basis: [
      basis('parts', 'mix.splitByWeight', 'total · parts / sum of parts', 'definition', {
        total,
        parts: given,
      }),
    ],
  };
}
