import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH, SHARE } from '../core/dimensions.ts';
import type { Quantity, Share } from '../core/quantity.ts';
import { fields, write } from '../core/read.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { ruleCautions } from './filmCautions.ts';
import { readFilmLimits, type SpecifiedFilm } from './filmLimits.ts';
import type { FilmRule } from './filmRules.ts';
import { readFilmRule } from './readFilmRule.ts';
import type { FilmSubstrate } from './substrates.ts';

/** Input of {@link filmRuleLimits}. */
export interface FilmRuleLimitsInput<U extends LengthUnit = LengthUnit> {
  /** The rule that the specification names. */
  readonly rule: FilmRule;
  /** What lies under the film. */
  readonly substrate: FilmSubstrate;
  /** The film that the specification asks for. */
  readonly specified: SpecifiedFilm;
  /** Unit of the answer. */
  readonly unit: U;
}

/** The thicknesses that a rule holds the film to. What is not there is not asked. */
export interface FilmRuleLimits<U extends LengthUnit = LengthUnit> {
  /** Name of the rule with edition and level. */
  readonly rule: string;
  /** Least mean of a spot; least reading where the rule has one reading to a spot. */
  readonly spotLeast?: Quantity<U> | undefined;
  /** Greatest mean of a spot. */
  readonly spotMost?: Quantity<U> | undefined;
  /** Least mean of an area. */
  readonly meanLeast?: Quantity<U> | undefined;
  /** Greatest mean of an area. */
  readonly meanMost?: Quantity<U> | undefined;
  /** Share of the spots that may lie below the specified least thickness. */
  readonly lowShare?: Share | undefined;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Between which thicknesses a film must lie by the rule that the specification names.
 *
 * Each rule has its own table: 80 and 120 % on metal are not 75 and 125 % on concrete. Rows that are known from memory or
 * from restatements only are marked in the basis.
 *
 * @formula
 * ```math
 * d_{least} = k_{least} \, d_{specified,least} \qquad d_{most} = k_{most} \, d_{specified,most}
 * ```
 * @units lengths; answers lengths, share.
 * @validRange thicknesses above 0, the greatest at or above the least; ISO 19840 from 40 µm. SSPC-PA 2 on metal,
 * SSPC-PA 9 on concrete, ISO 19840 and IMO MSC.215(82) on steel.
 * @accuracy Exact up to round-off: relative error below 5e-16.
 * @source sspc-pa-2, sspc-pa-9, iso-19840, imo-msc-215-82
 * @param input - Rule, substrate, specified film and the unit wanted.
 * @returns The limits in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the rule is not for that substrate.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const limits = inspect.filmRuleLimits({
 *   rule: { rule: 'SSPC-PA 9:2015', level: 3, areasIn: 'ft2' },
 *   substrate: 'concrete',
 *   specified: { least: { value: 16, unit: 'mil' }, most: { value: 24, unit: 'mil' } },
 *   unit: 'mil',
 * });
 * [limits.spotLeast, limits.spotMost].map((limit) => limit?.value.toFixed(1)); // => ['12.0', '30.0']
 * ```
 */
export function filmRuleLimits<U extends LengthUnit>(input: FilmRuleLimitsInput<U>): FilmRuleLimits<U> {
  const fn = 'filmRuleLimits';
  const { rule, substrate, specified, unit } = fields(fn, input);
  const base = readFilmRule(fn, rule, substrate);
  const limits = readFilmLimits(fn, base, specified);
  const thickness = (key: 'spotLeast' | 'spotMost' | 'meanLeast' | 'meanMost') => {
    const limit_m = limits[key];
    return limit_m === undefined ? {} : { [key]: write(fn, limit_m, LENGTH, unit) };
  };
  // Refuses the unit also where the rule asks for no thickness.
  write(fn, limits.least, LENGTH, unit);
  const { lowShare } = base.terms;
  return {
    rule: base.name,
    ...thickness('spotLeast'),
    ...thickness('spotMost'),
    ...thickness('meanLeast'),
    ...(base.terms.meanMost !== 'unknown' && thickness('meanMost')),
    ...(lowShare !== undefined && { lowShare: write(fn, lowShare, SHARE, '%') }),
    cautions: ruleCautions(base),
    basis: [
      basis(
        'limits',
        `inspect.${fn}`,
        'share of the rule · specified thickness',
        base.cited,
        {
          rule,
          substrate,
          specified,
        },
        base.assumption,
      ),
    ],
  };
}
