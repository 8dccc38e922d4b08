import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { HEAT_PER_MASS, SHARE, SPECIFIC_HEAT, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import type { HeatPerMass, Quantity, Share, SpecificHeat } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import type { TemperatureDifferenceUnit } from '../core/unitCodes.ts';

/** Input of {@link adiabaticRise}. */
export interface AdiabaticRiseInput<U extends TemperatureDifferenceUnit = TemperatureDifferenceUnit> {
  /** Heat that the mixed resin sets free for its own mass: the answer of `reactionHeat`. */
  readonly heat: HeatPerMass;
  /** Heat that warms the mixed resin by a degree. */
  readonly specificHeat: SpecificHeat;
  /** Share of the whole mass that is filler or sand. None where not given. */
  readonly fillerShare?: Share | undefined;
  /** Heat that warms the filler by a degree; goes with `fillerShare`. */
  readonly fillerSpecificHeat?: SpecificHeat | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link adiabaticRise}. */
export interface AdiabaticRise<U extends TemperatureDifferenceUnit = TemperatureDifferenceUnit> {
  /** How much the mix warms when none of its heat is lost. */
  readonly rise: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How much a mix would warm if none of its heat were lost: what a full pail comes near to, and a thin film never.
 *
 * @formula
 * ```math
 * \Delta T = \frac{(1 - f) \, h}{(1 - f) \, c_r + f \, c_f}
 * ```
 * @units heat per mass, specific heats, share; answers temperature difference.
 * @validRange heat and specific heats above 0; fillerShare from 0 % to below 100 %, with fillerSpecificHeat: both or neither.
 * @accuracy Exact up to round-off; an upper bound, since heat is lost and specific heat grows with temperature.
 * @source common-practice, udel-epoxy-smoke
 * @param input - Heat, specific heats, filler and the unit wanted.
 * @returns The rise in `input.unit`, not rounded, and the caution.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as cure from 'coating-math/cure';
 *
 * cure.adiabaticRise({
 *   heat: { value: 400, unit: 'J/g' },
 *   specificHeat: { value: 2, unit: 'J/g/K' },
 *   unit: 'deltaC',
 * }).rise; // => { value: 200, unit: 'deltaC' }
 * ```
 */
export function adiabaticRise<U extends TemperatureDifferenceUnit>(
  input: AdiabaticRiseInput<U>,
): AdiabaticRise<U> {
  const fn = 'adiabaticRise';
  const { heat, specificHeat, fillerShare, fillerSpecificHeat, unit } = fields(fn, input);
  const heat_JPerG = read(fn, 'heat', heat, HEAT_PER_MASS, POSITIVE);
  const resin_JPerGK = read(fn, 'specificHeat', specificHeat, SPECIFIC_HEAT, POSITIVE);
  const share = readOptional(fn, 'fillerShare', fillerShare, SHARE, PART);
  const filler_JPerGK = readOptional(fn, 'fillerSpecificHeat', fillerSpecificHeat, SPECIFIC_HEAT, POSITIVE);
  if (share !== undefined && filler_JPerGK === undefined) {
    refuse(fn, 'missing', ['fillerSpecificHeat'], 'a specific heat with fillerShare', fillerSpecificHeat);
  }
  if (share === undefined && filler_JPerGK !== undefined) {
    refuse(fn, 'missing', ['fillerShare'], 'a share with fillerSpecificHeat', fillerShare);
  }
  const filler = share ?? 0;
  const rise_K = ((1 - filler) * heat_JPerG) / ((1 - filler) * resin_JPerGK + filler * (filler_JPerGK ?? 0));
  const rise = write(fn, rise_K, TEMPERATURE_DIFFERENCE, unit);
  return {
    rise,
    cautions: [{ code: 'heats-itself', severity: 'danger', params: { rise }, source: 'udel-epoxy-smoke' }],
    basis: [
      basis(
        'rise',
        'cure.adiabaticRise',
        'heat of the resin / heat that warms resin and filler',
        'definition',
        {
          heat,
          specificHeat,
          fillerShare,
          fillerSpecificHeat,
        },
      ),
    ],
  };
}
