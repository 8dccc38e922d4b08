import { judge, worstOf, type Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { fields, refuse } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import {
  readCoverage,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { GLOSS } from './glossScale.ts';
import { readScaleError } from './scale.ts';

/** Input of {@link glossLevel}. */
export interface GlossLevelInput extends Confidence {
  /** Gloss at 60°, in gloss units. */
  readonly gloss60: number;
  /** Sheen at 85°, in gloss units. Without it the low levels overlap. */
  readonly sheen85?: number | undefined;
  /** What the gloss may be off by. Taken as exact where not given. */
  readonly gloss60Error?: ReadingError<number> | undefined;
  /** What the sheen may be off by. Taken as exact where not given. */
  readonly sheen85Error?: ReadingError<number> | undefined;
}

/** A level of gloss, from 1 flat to 7 high gloss. */
export type GlossLevelName = 'G1' | 'G2' | 'G3' | 'G4' | 'G5' | 'G6' | 'G7';

/** Which levels of gloss a coat belongs to. */
export interface GlossLevel {
  /**
   * Every level that fits, or may fit; more than one where levels overlap or it is undecided, none where gloss and sheen
   * belong to none.
   */
  readonly levels: readonly GlossLevelName[];
  /** Whether a reading lies within its error of the end of a level, so that not all of these are sure to fit. */
  readonly undecided: boolean;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

type Ends = readonly [least: number, most: number];
/** Where the scale itself ends there is no end of a level. */
const ANY: Ends = [-Infinity, Infinity];
/** Gloss at 60° and sheen at 85°, ends included. G7 begins above 85: by more than a reading exactly there is granted. */
const LEVELS: readonly (readonly [GlossLevelName, gloss: Ends, sheen: Ends])[] = [
  ['G1', [-Infinity, 5], [-Infinity, 10]],
  ['G2', [-Infinity, 10], [10, 35]],
  ['G3', [10, 25], [10, 35]],
  ['G4', [20, 35], [35, Infinity]],
  ['G5', [35, 70], ANY],
  ['G6', [70, 85], ANY],
  ['G7', [85.000000001, Infinity], ANY],
];

/**
 * Which levels of gloss and sheen a coat belongs to.
 *
 * Where a reading lies within its error of the end of a level it is undecided whether that level fits.
 *
 * @formula
 * ```math
 * G_{least} \le G_{60} \le G_{most} \;\wedge\; S_{least} \le S_{85} \le S_{most}
 * ```
 * @units gloss units without dimension; answers levels.
 * @validRange gloss60, sheen85 and their errors from 0 to 2000. The levels overlap: gloss at 60° alone does not tell G3 from G4.
 * @accuracy Exact, ends included.
 * @source mpi-gloss, jcgm-100-2008
 * @param input - Gloss, sheen where it was measured, and what they may be off by.
 * @returns Every level that fits, and whether that is decided.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * inspect.glossLevel({ gloss60: 22 }).levels; // => ['G3', 'G4']
 * inspect.glossLevel({ gloss60: 22, sheen85: 40 }).levels; // => ['G4']
 * const near = inspect.glossLevel({ gloss60: 69, gloss60Error: 2 });
 * [near.undecided, near.levels]; // => [true, ['G5', 'G6']]
 * ```
 */
export function glossLevel(input: GlossLevelInput): GlossLevel {
  const fn = 'glossLevel';
  const { gloss60, sheen85, gloss60Error, sheen85Error } = fields(fn, input);
  const gloss = readNumber(fn, 'gloss60', gloss60, GLOSS);
  const sheen = sheen85 === undefined ? undefined : readNumber(fn, 'sheen85', sheen85, GLOSS);
  const coverage = readCoverage(fn, input);
  const glossOff = readScaleError(fn, 'gloss60Error', gloss60Error, coverage, GLOSS);
  const sheenOff = readScaleError(fn, 'sheen85Error', sheen85Error, coverage, GLOSS);
  if (sheen85 === undefined && sheen85Error !== undefined) {
    refuse(fn, 'conflict', ['sheen85Error'], 'given with a sheen only', sheen85Error);
  }

  const fitting = LEVELS.map(([level, glosses, sheens]) => ({
    level,
    byGloss: within(gloss, glossOff, glosses),
    bySheen: sheen === undefined ? 'meets' : within(sheen, sheenOff, sheens),
  })).filter(({ byGloss, bySheen }) => byGloss !== 'fails' && bySheen !== 'fails');
  const levels = fitting.map(({ level }) => level);
  const openByGloss = fitting.some(({ byGloss }) => byGloss === 'undecided');
  const openBySheen = fitting.some(({ bySheen }) => bySheen === 'undecided');
  const undecided = openByGloss || openBySheen;
  const about = (code: CautionCode, severity: Caution['severity'], params: Caution['params']): Caution => ({
    code,
    severity,
    params,
    source: 'mpi-gloss',
  });
  const named = levels.join(', ') || 'no level';
  const near = (scale: string, measured: number, uncertainty: number) => {
    const classes = levels.length > 1 ? named : `${named}, no level`;
    return about('class-undecided', 'caution', { scale, measured, uncertainty, classes });
  };
  return {
    levels,
    undecided,
    cautions: [
      ...(openByGloss ? [near('gloss at 60°', gloss, glossOff)] : []),
      ...(sheen !== undefined && openBySheen ? [near('sheen at 85°', sheen, sheenOff)] : []),
      ...(!undecided && levels.length !== 1 ? [about('gloss-level-open', 'note', { levels: named })] : []),
    ],
    basis: [
      basis('levels', `inspect.${fn}`, 'levels with gloss and sheen between their ends', 'mpi-gloss', {
        gloss60: gloss,
        sheen85: sheen,
      }),
      ...uncertaintyBasis(`inspect.${fn}`, { gloss60Error, sheen85Error }, input),
    ],
  };
}

/** Whether a reading lies between two ends, itself included. */
function within(value: number, error: number, [least, most]: Ends): Verdict {
  return worstOf([judge(value - least, error, value), judge(most - value, error, value)]);
}
