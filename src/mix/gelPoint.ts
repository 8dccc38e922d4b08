import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { SHARE } from '../core/dimensions.ts';
import { POSITIVE, type Limits } from '../core/limits.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import type { ShareUnit } from '../core/unitCodes.ts';

const GELATION = { source: 'flory-stockmayer', status: 'memory' } as const;

/** Input of {@link gelPoint}. */
export interface GelPointInput<U extends ShareUnit = ShareUnit> {
  /** Groups on each molecule of the resin, as a mean: 2 for a plain epoxy. */
  readonly resinFunctionality: number;
  /** Groups on each molecule of the hardener, as a mean: 4 for a diamine with epoxy. */
  readonly hardenerFunctionality: number;
  /** Groups of the hardener for each group of the resin. */
  readonly index: Share;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link gelPoint}. */
export interface GelPoint<U extends ShareUnit = ShareUnit> {
  /** Whether the mix ever becomes solid. */
  readonly gels: boolean;
  /** Share of the resin's groups that have reacted when it gels; not there where it never does. */
  readonly resinConversion?: Quantity<U> | undefined;
  /** Least index at which it gels; not there where it gels at none. */
  readonly leastIndex?: Quantity<U> | undefined;
  /** Greatest index at which it gels; not there where it gels at none. */
  readonly mostIndex?: Quantity<U> | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** A molecule with one group ends a chain. */
const BRANCHING: Limits = { above: 1.000000000001, below: 1e100, words: ' above 1' };

/**
 * How far a mix must react until it gels, and how far off ratio it may be and still gel at all.
 *
 * @formula
 * ```math
 * p = \sqrt{\frac{r}{(f_e - 1)(f_a - 1)}} \qquad \frac{1}{(f_e - 1)(f_a - 1)} \le r \le (f_e - 1)(f_a - 1)
 * ```
 * @units numbers, share; answers shares.
 * @validRange functionalities above 1, index above 0. Ideal step growth: equal reactivity, no rings, one reaction.
 * @accuracy Exact up to round-off for the ideal network; real gels lie a few per cent beside it.
 * @source flory-stockmayer
 * @param input - Functionalities, index and the unit wanted.
 * @returns Whether and when it gels, and the limits of the index in `input.unit`.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.gelPoint({
 *   resinFunctionality: 2,
 *   hardenerFunctionality: 4,
 *   index: { value: 100, unit: '%' },
 *   unit: '%',
 * });
 * [answer.gels, answer.resinConversion?.value.toFixed(1)]; // => [true, '57.7']
 * ```
 */
export function gelPoint<U extends ShareUnit>(input: GelPointInput<U>): GelPoint<U> {
  const fn = 'gelPoint';
  const { resinFunctionality, hardenerFunctionality, index, unit } = fields(fn, input);
  const resin = readNumber(fn, 'resinFunctionality', resinFunctionality, BRANCHING);
  const hardener = readNumber(fn, 'hardenerFunctionality', hardenerFunctionality, BRANCHING);
  const ratio = read(fn, 'index', index, SHARE, POSITIVE);
  const branching = (resin - 1) * (hardener - 1);
  const slack = 1 + 1e-12;
  const gels = ratio * branching * slack >= 1 && ratio <= branching * slack;
  const share = (value: number) => write(fn, value, SHARE, unit);
  const ends =
    branching * slack >= 1 ? { leastIndex: share(1 / branching), mostIndex: share(branching) } : undefined;
  return {
    gels,
    ...(gels && { resinConversion: share(Math.sqrt(ratio / branching)) }),
    ...ends,
    cautions: gels
      ? []
      : [
          {
            code: ends ? 'never-gels' : 'gels-at-no-ratio',
            severity: 'danger',
            params: ends ?? { resinFunctionality, hardenerFunctionality },
            ...GELATION,
          },
        ],
    basis: [
      basis('resinConversion', 'mix.gelPoint', 'sqrt(index / ((fe − 1)(fa − 1)))', GELATION, {
        resinFunctionality,
        hardenerFunctionality,
        index,
      }),
    ],
  };
}
