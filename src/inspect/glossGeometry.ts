import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import { GLOSS } from './glossScale.ts';

/** Input of {@link glossGeometry}. */
export interface GlossGeometryInput {
  /** Gloss at 60°, in gloss units. */
  readonly gloss60: number;
}

/** Which angle tells floors of that gloss apart best. */
export interface GlossGeometry {
  /** Angle to measure at, in degrees. */
  readonly geometry: 20 | 60 | 85;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/**
 * At which angle gloss should be measured: 60° is the usual one, 20° tells high gloss apart, 85° low gloss.
 *
 * @formula
 * ```math
 * G_{60} > 70: 20°, \quad G_{60} < 10: 85°, \quad \text{else } 60°
 * ```
 * @units gloss units without dimension; answers degrees.
 * @validRange gloss60 from 0 to 2000.
 * @accuracy Exact: 70 and 10 themselves stay at 60°.
 * @source astm-d523
 * @param input - Gloss at 60°.
 * @returns The angle.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * [8, 10, 70, 78].map((gloss60) => inspect.glossGeometry({ gloss60 }).geometry); // => [85, 60, 60, 20]
 * ```
 */
export function glossGeometry(input: GlossGeometryInput): GlossGeometry {
  const fn = 'glossGeometry';
  const { gloss60 } = fields(fn, input);
  const gloss = readNumber(fn, 'gloss60', gloss60, GLOSS);
  return {
    geometry: gloss > 70 ? 20 : gloss < 10 ? 85 : 60,
    cautions: [],
    basis: [
      basis('geometry', `inspect.${fn}`, 'above 70 20°, below 10 85°, else 60°', 'astm-d523', {
        gloss60: gloss,
      }),
    ],
  };
}
