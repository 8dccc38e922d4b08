import type { Verdict } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { Limits } from '../core/limits.ts';
import { fields } from '../core/read.ts';
import { readNumber } from '../core/readPlain.ts';
import { GLOSS } from './glossScale.ts';

/** Input of {@link polishLevel}. */
export interface PolishLevelInput {
  /** Image clarity (distinctness of image), in per cent as the instrument shows it. */
  readonly imageClarity: number;
  /** Haze as the instrument shows it. Not judged where not given. */
  readonly haze?: number | undefined;
}

/** How a polished concrete looks, by what it mirrors. */
export interface PolishLevel {
  /** From 1 to 4. */
  readonly level: 1 | 2 | 3 | 4;
  /** The same in a word. */
  readonly appearance: 'flat' | 'satin' | 'polished' | 'highly polished';
  /** Whether the haze is below 10; nothing where it was not given. */
  readonly haze?: Verdict | undefined;
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
 * @validRange imageClarity from 0 to 100, haze from 0 to 2000. Measured before any guard or sealer is on.
 * @accuracy Exact. The chart prints whole numbers; a part of one counts to the lower level. Levels of the chart of 2017.
 * @source polished-concrete-2017, astm-d5767, astm-d4039
 * @param input - Image clarity, and haze where it was measured.
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
  const { imageClarity, haze } = fields(fn, input);
  const clarity = readNumber(fn, 'imageClarity', imageClarity, CLARITY);
  const hazeRead = haze === undefined ? undefined : readNumber(fn, 'haze', haze, GLOSS);
  const row = LEVELS.find(([from]) => clarity >= from);
  const [, level, appearance] = row ?? ([0, 1, 'flat'] as const);
  return {
    level,
    appearance,
    ...(hazeRead !== undefined && { haze: hazeRead < HAZE_BELOW ? 'meets' : 'fails' }),
    cautions: [
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
    ],
  };
}
