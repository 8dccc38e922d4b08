import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import { GLOSS } from './glossScale.ts';

/** Input of {@link hazeIndex}. */
export interface HazeIndexInput {
  /** Gloss at 60°, in gloss units. */
  readonly gloss60: number;
  /** Gloss at 20° at the same place. */
  readonly gloss20: number;
}

/** Haze of a high gloss. */
export interface HazeIndex {
  /** Without unit. */
  readonly hazeIndex: number;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How milky a high gloss looks: what is bright at 60° and dull at 20°.
 *
 * @formula
 * ```math
 * H = G_{60} - G_{20}
 * ```
 * @units gloss units without dimension; answers the same.
 * @validRange gloss from 0 to 2000; means something for high gloss only.
 * @accuracy Exact; the difference is from memory of the standard. The haze of other instruments is on other scales.
 * @source astm-d4039
 * @param input - Gloss at both angles.
 * @returns The haze index.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect.hazeIndex({ gloss60: 88, gloss20: 71 }).hazeIndex; // => 17
 * ```
 */
export function hazeIndex(input: HazeIndexInput): HazeIndex {
  const fn = 'hazeIndex';
  const { gloss60, gloss20 } = fields(fn, input);
  const at60 = readNumber(fn, 'gloss60', gloss60, GLOSS);
  const at20 = readNumber(fn, 'gloss20', gloss20, GLOSS);
  return {
    hazeIndex: at60 - at20,
    cautions:
      at60 > 70 ? [] : [{ code: 'haze-of-low-gloss', severity: 'note', params: {}, source: 'astm-d4039' }],
    basis: [
      basis(
        'hazeIndex',
        `inspect.${fn}`,
        'gloss60 − gloss20',
        'astm-d4039',
        { gloss60: at60, gloss20: at20 },
        'the index is from memory',
      ),
    ],
  };
}
