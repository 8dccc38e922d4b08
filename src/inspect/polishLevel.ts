import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { InputPath } from '../core/InputError.ts';
import type { Limits } from '../core/limits.ts';
import { fields, refuse } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import {
  halfWidthOf,
  readCoverage,
  readErrorBy,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';
import { GLOSS } from './glossScale.ts';

/** Input of {@link polishLevel}. */
export interface PolishLevelInput extends Confidence {
  /** Image clarity (distinctness of image), in per cent as the instrument shows it. */
  readonly imageClarity: number;
  /** Haze as the instrument shows it. Not judged where not given. */
  readonly haze?: number | undefined;
  /** What the haze may be off by. Taken as exact where not given. */
  readonly hazeError?: ReadingError<number> | undefined;
}

/** How a polished concrete looks, by what it mirrors. */
export interface PolishLevel {
  /** From 1 to 4. */
  readonly level: 1 | 2 | 3 | 4;
  /** The same in a word. */
  readonly appearance: 'flat' | 'satin' | 'polished' | 'highly polished';
  /** Whether the haze is below 10; nothing where it was not given. */
  readonly haze?: Verdict | undefined;
  /** Half the width in which the haze lies, where its error was given. */
  readonly hazeUncertainty?: number | undefined;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

const CLARITY: Limits = { above: -5e-324, below: 100.0000000001, words: ' from 0 to 100' };
/** From the highest: where a level begins. */
const LEVELS: readonly (readonly [from: number, PolishLevel['level'], PolishLevel['appearance']])[] = [
  [70, 4, 'highly polished'],
  [40, 3, 'polished'],
  [10, 2, 'satin'],
  [0, 1, 'flat'],
];
const HAZE_BELOW = 10;

/**
 * Which level of appearance a polished concrete has, by the sharpness of what it mirrors; gloss alone does not tell.
 *
 * @formula
 * ```math
 * c < 10: 1, \quad c < 40: 2, \quad c < 70: 3, \quad \text{else } 4
 * ```
 * @units image clarity and haze without dimension; answers a level.
 * @validRange imageClarity from 0 to 100, haze and hazeError from 0 to 2000. Measured before any guard or sealer is on.
 * @accuracy Exact. The chart prints whole numbers; a part of one counts to the lower level. Levels of the chart of 2017.
 * @source polished-concrete-2017, astm-d5767, astm-d4039, jcgm-100-2008
 * @param input - Image clarity, and haze where it was measured, with what it may be off by.
 * @returns The level and its name.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const floor = inspect.polishLevel({ imageClarity: 52, haze: 14 });
 * [floor.level, floor.appearance, floor.haze]; // => [3, 'polished', 'fails']
 * ```
 */
export function polishLevel(input: PolishLevelInput): PolishLevel {
  const fn = 'polishLevel';
  const { imageClarity, haze, hazeError } = fields(fn, input);
  const clarity = readNumber(fn, 'imageClarity', imageClarity, CLARITY);
  const hazeRead = haze === undefined ? undefined : readNumber(fn, 'haze', haze, GLOSS);
  if (hazeRead === undefined && hazeError !== undefined) {
    refuse(fn, 'missing', ['haze'], 'there beside its error', haze);
  }
  const coverage = readCoverage(fn, input);
  const size = (key: string, off: number, path: InputPath) => readNumber(fn, key, off, GLOSS, path);
  const off = halfWidthOf(readErrorBy(fn, 'hazeError', hazeError, coverage, size), coverage);
  const row = LEVELS.find(([from]) => clarity >= from);
  const [, level, appearance] = row ?? ([0, 1, 'flat'] as const);
  return {
    level,
    appearance,
    ...(hazeRead !== undefined && { haze: againstHaze(hazeRead, off) }),
    ...(off > 0 && { hazeUncertainty: off }),
    cautions: [
      { code: 'polish-before-guard', severity: 'note', params: {}, source: 'polished-concrete-2017' },
    ],
    basis: [
      basis(
        'level',
        `inspect.${fn}`,
        'levels from 0, 10, 40 and 70; haze below 10',
        'polished-concrete-2017',
        { imageClarity: clarity, haze: hazeRead, hazeError },
        'parts of a per cent between the printed whole numbers count to the lower level',
      ),
      ...uncertaintyBasis(`inspect.${fn}`, { hazeError }, input),
    ],
  };
}

/** The haze is to be below its limit: on it, it fails. */
function againstHaze(haze: number, off: number): Verdict {
  if (haze + off < HAZE_BELOW) return 'meets';
  return haze - off >= HAZE_BELOW ? 'fails' : 'undecided';
}
