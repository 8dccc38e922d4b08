import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { DENSITY, EQUIVALENT_WEIGHT, MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Density, EquivalentWeight, Mass, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import { readObject } from '../core/readPlain.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

/** One side of a reaction as it goes into the mix. */
export interface ReactingSide {
  /** How much of it, by mass or by volume. */
  readonly amount: Mass | Volume;
  /** Its density, which a volume needs and a mass does not. */
  readonly density?: Density | undefined;
  /** How much of it carries one group for the other side. */
  readonly equivalentWeight: EquivalentWeight;
}

/** Input of {@link stoichiometricIndex}. */
export interface StoichiometricIndexInput<U extends ShareUnit = ShareUnit> {
  /** The resin: epoxy, polyol, or the amine side of a polyurea. */
  readonly resin: ReactingSide;
  /** The hardener: amine, or isocyanate. */
  readonly hardener: ReactingSide;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link stoichiometricIndex}. */
export interface StoichiometricIndex<U extends ShareUnit = ShareUnit> {
  /** Groups of the hardener for each group of the resin: 1 or 100 % when every group finds its partner. */
  readonly index: Quantity<U>;
  /** Share of the resin's groups that find no partner. */
  readonly resinLeft: Quantity<U>;
  /** Share of the hardener's groups that find no partner. */
  readonly hardenerLeft: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How many groups of the hardener meet each group of the resin in a mix, and what is left over for ever.
 *
 * @formula
 * ```math
 * r = \frac{m_B / E_B}{m_A / E_A} \qquad \mathrm{left} = 1 - r \ \text{or}\ 1 - 1/r
 * ```
 * @units masses, or volumes with densities; equivalent weights; answers shares.
 * @validRange all above 0; a density with every volume.
 * @accuracy Exact up to round-off, for complete reaction of the scarcer side.
 * No published figure was found worked out: it is the definition.
 * @source definition
 * @param input - Resin, hardener and the unit wanted.
 * @returns Index and leftover groups in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field; `missing` for a volume without density.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.stoichiometricIndex({
 *   resin: { amount: { value: 100, unit: 'g' }, equivalentWeight: { value: 190, unit: 'g/eq' } },
 *   hardener: { amount: { value: 40, unit: 'g' }, equivalentWeight: { value: 95, unit: 'g/eq' } },
 *   unit: '%',
 * });
 * [answer.index.value, answer.resinLeft.value].map((share) => share.toFixed(1)); // => ['80.0', '20.0']
 * ```
 */
export function stoichiometricIndex<U extends ShareUnit>(
  input: StoichiometricIndexInput<U>,
): StoichiometricIndex<U> {
  const fn = 'stoichiometricIndex';
  const { resin, hardener, unit } = fields(fn, input);
  const index = groupsOf(fn, 'hardener', hardener) / groupsOf(fn, 'resin', resin);
  const share = (value: number) => write(fn, value, SHARE, unit);
  const resinLeft = Math.max(0, 1 - index);
  const hardenerLeft = Math.max(0, 1 - 1 / index);
  const caution = (code: CautionCode, left: number): Caution[] =>
    left > 1e-12
      ? [{ code, severity: 'caution', params: { share: write(fn, left, SHARE, '%') }, source: 'definition' }]
      : [];
  return {
    index: share(index),
    resinLeft: share(resinLeft),
    hardenerLeft: share(hardenerLeft),
    cautions: [...caution('resin-left-over', resinLeft), ...caution('hardener-left-over', hardenerLeft)],
    basis: [
      basis(
        'index',
        'mix.stoichiometricIndex',
        '(hardener mass / weight) / (resin mass / weight)',
        'definition',
        {
          resin,
          hardener,
        },
      ),
    ],
  };
}

/** The reactive groups of one side, in kg per g/eq. */
function groupsOf(fn: string, key: 'resin' | 'hardener', side: ReactingSide): number {
  const { amount, density, equivalentWeight } = readObject(fn, key, side);
  const { base, dimension } = readOneOf(fn, 'amount', amount, [MASS, VOLUME], POSITIVE, [key]);
  const byVolume = dimension.kind === VOLUME.kind;
  const density_kgPerM3 =
    byVolume || density !== undefined ? read(fn, 'density', density, DENSITY, POSITIVE, [key]) : 1;
  const weight = read(fn, 'equivalentWeight', equivalentWeight, EQUIVALENT_WEIGHT, POSITIVE, [key]);
  return (byVolume ? base * density_kgPerM3 : base) / weight;
}
