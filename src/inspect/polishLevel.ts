import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { fields, refuse } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import {
  readCoverage,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { CLARITY, GLOSS } from './glossScale.ts';
import { classesOf, reaches, readScaleError } from './scale.ts';

/** Input of {@link polishLevel}. */
export interface PolishLevelInput extends Confidence {
  /** Image clarity (distinctness of image), in per cent as the instrument shows it. */
  readonly imageClarity: number;
  /** Haze as the instrument shows it. Not judged where not given. */
  readonly haze?: number | undefined;
  /** What the image clarity may be off by. Taken as exact where not given. */
  readonly imageClarityError?: ReadingError<number> | undefined;
  /** What the haze may be off by. Taken as exact where not given. */
  readonly hazeError?: ReadingError<number> | undefined;
}

/** A level of appearance, from 1 flat to 4 highly polished. */
export type PolishLevelNumber = 1 | 2 | 3 | 4;

/** How a polished concrete looks, by what it mirrors. */
export interface PolishLevel {
  /** From 1 to 4; undecided where the image clarity lies within its error of the next level. */
  readonly level: PolishLevelNumber | 'undecided';
  /** Every level that the image clarity may belong to, the lowest first. */
  readonly possible: readonly PolishLevelNumber[];
  /** The level in a word. */
  readonly appearance: 'flat' | 'satin' | 'polished' | 'highly polished' | 'undecided';
  /** Whether the haze is below 10; nothing where it was not given. */
  readonly haze?: Verdict | undefined;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/** Where each level begins. */
const LEVELS: readonly (readonly [from: number, level: PolishLevelNumber])[] = [
  [0, 1],
  [10, 2],
  [40, 3],
  [70, 4],
];
const WORDS: Readonly<Record<PolishLevel['level'], PolishLevel['appearance']>> = {
  1: 'flat',
  2: 'satin',
  3: 'polished',
  4: 'highly polished',
  undecided: 'undecided',
};
const HAZE_BELOW = 10;
/** What it says of the haze that it reaches the limit it is to be below. */
const HAZE: Readonly<Record<Verdict, Verdict>> = {
  meets: 'fails',
  fails: 'meets',
  undecided: 'undecided',
};

/**
 * Which level of appearance a polished concrete has, by the sharpness of what it mirrors; gloss alone does not tell.
 *
 * A reading within its error of the next level is undecided between the two, and never the better one alone.
 *
 * @formula
 * ```math
 * c < 10: 1, \quad c < 40: 2, \quad c < 70: 3, \quad \text{else } 4
 * ```
 * @units image clarity and haze without dimension; answers a level.
 * @validRange imageClarity from 0 to 100, haze from 0 to 2000, and so their errors. Measured before any guard or sealer is on.
 * @accuracy Exact. The chart prints whole numbers; a part of one counts to the lower level. Levels of the chart of 2017.
 * @source polished-concrete-2017, astm-d5767, astm-d4039, jcgm-100-2008
 * @param input - Image clarity, haze where it was measured, and what they may be off by.
 * @returns The level and its name, or the levels between which it is undecided.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const floor = inspect.polishLevel({ imageClarity: 52, haze: 14 });
 * [floor.level, floor.appearance, floor.haze]; // => [3, 'polished', 'fails']
 * const near = inspect.polishLevel({ imageClarity: 71, imageClarityError: 2 });
 * [near.level, near.possible]; // => ['undecided', [3, 4]]
 * ```
 */
export function polishLevel(input: PolishLevelInput): PolishLevel {
  const fn = 'polishLevel';
  const { imageClarity, haze, imageClarityError, hazeError } = fields(fn, input);
  const clarity = readNumber(fn, 'imageClarity', imageClarity, CLARITY);
  const hazeRead = haze === undefined ? undefined : readNumber(fn, 'haze', haze, GLOSS);
  const coverage = readCoverage(fn, input);
  const clarityOff = readScaleError(fn, 'imageClarityError', imageClarityError, coverage, CLARITY);
  const hazeOff = readScaleError(fn, 'hazeError', hazeError, coverage, GLOSS);
  if (haze === undefined && hazeError !== undefined) {
    refuse(fn, 'conflict', ['hazeError'], 'given with a haze only', hazeError);
  }

  const possible = classesOf(LEVELS, clarity, clarityOff);
  const [first, second] = possible as [PolishLevelNumber, PolishLevelNumber?];
  const level = second ? 'undecided' : first;
  const hazeVerdict = hazeRead === undefined ? undefined : HAZE[reaches(hazeRead, hazeOff, HAZE_BELOW)];
  const about = (scale: string, measured: number, uncertainty: number, classes: string): Caution => ({
    code: 'class-undecided',
    severity: 'caution',
    params: { scale, measured, uncertainty, classes },
    source: 'polished-concrete-2017',
  });
  return {
    level,
    possible,
    appearance: WORDS[level],
    ...(hazeVerdict && { haze: hazeVerdict }),
    cautions: [
      ...(second ? [about('image clarity', clarity, clarityOff, `levels ${possible.join(', ')}`)] : []),
      ...(hazeRead !== undefined && hazeVerdict === 'undecided'
        ? [about('haze', hazeRead, hazeOff, `below ${HAZE_BELOW} or not`)]
        : []),
      { code: 'polish-before-guard', severity: 'note', params: {}, source: 'polished-concrete-2017' },
    ],
    basis: [
      basis(
        'level',
        `inspect.${fn}`,
        'levels from 0, 10, 40 and 70; haze below 10',
        'polished-concrete-2017',
        { imageClarity: clarity, haze: hazeRead },
        'parts of a per cent between the printed whole numbers count to the lower level',
      ),
      ...uncertaintyBasis(`inspect.${fn}`, { imageClarityError, hazeError }, input),
    ],
  };
}
