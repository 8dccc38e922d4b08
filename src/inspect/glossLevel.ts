import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import { GLOSS } from './glossScale.ts';

/** Input of {@link glossLevel}. */
export interface GlossLevelInput {
  /** Gloss at 60°, in gloss units. */
  readonly gloss60: number;
  /** Sheen at 85°, in gloss units. Without it the low levels overlap. */
  readonly sheen85?: number | undefined;
}

/** A level of gloss, from 1 flat to 7 high gloss. */
export type GlossLevelName = 'G1' | 'G2' | 'G3' | 'G4' | 'G5' | 'G6' | 'G7';

/** Which levels of gloss a coat belongs to. */
export interface GlossLevel {
  /** Every level that fits; more than one where levels overlap, none where gloss and sheen belong to none. */
  readonly levels: readonly GlossLevelName[];
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

const ANY: readonly [least: number, most: number] = [0, GLOSS.below];
/** Gloss at 60° and sheen at 85°, ends included; G7 begins above 85. */
const LEVELS: readonly (readonly [GlossLevelName, gloss: typeof ANY, sheen: typeof ANY])[] = [
  ['G1', [0, 5], [0, 10]],
  ['G2', [0, 10], [10, 35]],
  ['G3', [10, 25], [10, 35]],
  ['G4', [20, 35], [35, GLOSS.below]],
  ['G5', [35, 70], ANY],
  ['G6', [70, 85], ANY],
  ['G7', [85.00000000000001, GLOSS.below], ANY],
];

/**
 * Which levels of gloss and sheen a coat belongs to.
 *
 * @formula
 * ```math
 * G_{least} \le G_{60} \le G_{most} \;\wedge\; S_{least} \le S_{85} \le S_{most}
 * ```
 * @units gloss units without dimension; answers levels.
 * @validRange gloss60 and sheen85 from 0 to 2000. The levels overlap: gloss at 60° alone does not tell G3 from G4.
 * @accuracy Exact, ends included.
 * @source mpi-gloss
 * @param input - Gloss, and sheen where it was measured.
 * @returns Every level that fits.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect.glossLevel({ gloss60: 22 }).levels; // => ['G3', 'G4']
 * inspect.glossLevel({ gloss60: 22, sheen85: 40 }).levels; // => ['G4']
 * ```
 */
export function glossLevel(input: GlossLevelInput): GlossLevel {
  const fn = 'glossLevel';
  const { gloss60, sheen85 } = fields(fn, input);
  const gloss = readNumber(fn, 'gloss60', gloss60, GLOSS);
  const sheen = sheen85 === undefined ? undefined : readNumber(fn, 'sheen85', sheen85, GLOSS);
  const within = (value: number | undefined, [least, most]: typeof ANY) =>
    value === undefined || (value >= least && value <= most);
  const fitting = LEVELS.filter(([, glosses, sheens]) => within(gloss, glosses) && within(sheen, sheens));
  const levels = fitting.map(([level]) => level);
  return {
    levels,
    cautions:
      levels.length === 1
        ? []
        : [
            {
              code: 'gloss-level-open',
              severity: 'note',
              params: { levels: levels.join(', ') || 'no level' },
              source: 'mpi-gloss',
            },
          ],
    basis: [
      basis('levels', `inspect.${fn}`, 'levels with gloss and sheen between their ends', 'mpi-gloss', {
        gloss60: gloss,
        sheen85: sheen,
      }),
    ],
  };
}
