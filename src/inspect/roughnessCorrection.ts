import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readChoice, readKey } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { SUBSTRATES, type FilmSubstrate } from './substrates.ts';

/** How rough the steel is under the film, as compared with a comparator; `unknown` where nobody looked. */
export type SteelRoughness = 'fine' | 'medium' | 'coarse' | 'unknown';

/** Input of {@link roughnessCorrection}. */
export interface RoughnessCorrectionInput<U extends LengthUnit = LengthUnit> {
  /** What the gauge shows that was set on smooth steel. */
  readonly reading: Length;
  /** What lies under the film. */
  readonly substrate: FilmSubstrate;
  /** How rough it is. */
  readonly roughness: SteelRoughness;
  /** Unit of the answer. */
  readonly unit: U;
}

/** A reading corrected for the roughness under the film. */
export interface RoughnessCorrection<U extends LengthUnit = LengthUnit> {
  /** The film above the peaks. */
  readonly thickness: Quantity<U>;
  /** What was taken off. */
  readonly correction: Quantity<U>;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/** In µm; from memory. */
const CORRECTION_UM: Readonly<Record<SteelRoughness, number>> = {
  fine: 10,
  medium: 25,
  coarse: 40,
  unknown: 25,
};
const CITED = { source: 'iso-19840', status: 'memory' } as const;
const UM_M = 1e-6;

/**
 * The film above the peaks of rough steel, from the reading of a gauge that was set on smooth steel.
 *
 * @formula
 * ```math
 * d = d_{reading} - c_{roughness}
 * ```
 * @units lengths; answers lengths.
 * @validRange reading above the correction of 10, 25 or 40 µm; steel only.
 * @accuracy Exact up to round-off; the corrections are round figures, from memory of the standard.
 * @source iso-19840
 * @param input - Reading, substrate, roughness and the unit wanted.
 * @returns The corrected thickness and the correction in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` on another substrate or for a reading below the correction.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const film = inspect.roughnessCorrection({
 *   reading: { value: 185, unit: 'um' },
 *   substrate: 'steel',
 *   roughness: 'medium',
 *   unit: 'um',
 * });
 * film.thickness.value.toFixed(0); // => '160'
 * ```
 */
export function roughnessCorrection<U extends LengthUnit>(
  input: RoughnessCorrectionInput<U>,
): RoughnessCorrection<U> {
  const fn = 'roughnessCorrection';
  const { reading, substrate, roughness, unit } = fields(fn, input);
  if (readChoice(fn, 'substrate', substrate, SUBSTRATES) !== 'steel') {
    refuse(fn, 'conflict', ['substrate'], 'steel: nothing else has these corrections', substrate);
  }
  const correction_m = CORRECTION_UM[readKey(fn, 'roughness', roughness, CORRECTION_UM)] * UM_M;
  const reading_m = read(fn, 'reading', reading, LENGTH, POSITIVE);
  if (reading_m <= correction_m) {
    refuse(fn, 'conflict', ['reading'], 'above the correction for roughness', reading);
  }
  const known = 'the corrections are from memory';
  return {
    thickness: write(fn, reading_m - correction_m, LENGTH, unit),
    correction: write(fn, correction_m, LENGTH, unit),
    cautions: [
      {
        code: 'rule-not-from-standard',
        severity: 'note',
        params: { rule: 'ISO 19840:2012', known },
        ...CITED,
      },
    ],
    basis: [
      basis(
        'thickness',
        `inspect.${fn}`,
        'reading − correction',
        CITED,
        { reading, substrate, roughness },
        known,
      ),
    ],
  };
}
