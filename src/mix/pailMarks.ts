import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH, SHARE, VOLUME } from '../core/dimensions.ts';
import { toField, type FieldValue } from '../core/fieldValue.ts';
import type { InputPath } from '../core/InputError.ts';
import { PART, POSITIVE } from '../core/limits.ts';
import type { Length, Quantity, Share } from '../core/quantity.ts';
import { fields, read, readOptional, write } from '../core/read.ts';
import { readNames, readObjects } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { checkFits, heightOf, readPail, volumeBelow, type BasePail, type Pail } from './pail.ts';
import { type PartVolume } from './parts.ts';
import { readingCaution } from './readingCaution.ts';

/** Input of {@link pailMarks}. */
export interface PailMarksInput<U extends LengthUnit = LengthUnit> {
  /** What is poured, in pouring order: the answer of a split, or with pigment between the parts. */
  readonly pours: readonly PartVolume[];
  /** The pail they are poured into. */
  readonly pail: Pail;
  /** Smallest step that can be read on the stick or the wall of the pail. */
  readonly graduation: Length;
  /** How far a part may be off against the first, from the instructions. Where not given, the caution says how far it is. */
  readonly ratioTolerance?: Share | undefined;
  /** Unit of the marks. */
  readonly unit: U;
}

/** What the reading of the marks does to the ratio of one part to the first. */
export interface RatioOff {
  /** With every mark read exactly as rounded. */
  readonly atMarks: Quantity<'%'>;
  /** With the first mark read one step high and this one a step low. */
  readonly low: Quantity<'%'>;
  /** With the first mark read one step low and this one a step high. */
  readonly high: Quantity<'%'>;
}

/** One mark on the pail. */
export interface PailMark<U extends LengthUnit = LengthUnit> {
  /** What is poured up to this mark. */
  readonly name: string;
  /** Height above the bottom to which the pail is filled when this has been poured. */
  readonly mark: FieldValue<U>;
  /** Height of this part alone, for parts that are each measured in a pail of their own of the same size. */
  readonly alone: FieldValue<U>;
  /** How far this part may come out against the first. Not for the first itself, nor where no step can measure it. */
  readonly off?: RatioOff | undefined;
  /** There where the steps are too coarse to measure this part, so that nothing is to be poured to this mark. */
  readonly tooCoarse?: true | undefined;
}

/** Answer of {@link pailMarks}. */
export interface PailMarks<U extends LengthUnit = LengthUnit> {
  /** The marks, in pouring order. */
  readonly marks: readonly PailMark<U>[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Where to mark a pail, so that each part is poured up to its line, and what a misread line does to the ratio.
 *
 * @formula
 * ```math
 * h_i = \frac{\sqrt[3]{r_0^3 + \tfrac{3}{\pi} k \sum_{j \le i} V_j} - r_0}{k}
 * ```
 * @units volumes, lengths, share; answers lengths and shares.
 * @validRange volumes, diameters, height and graduation above 0; all pours together no more than the pail holds.
 * A pail of any taper, none included.
 * @accuracy Heights to a relative error below 2e-15; each mark is as good as the graduation.
 * @source definition, common-practice
 * @param input - Pours, pail, graduation and the unit wanted.
 * @returns The height of each mark in `input.unit`, of all so far and of each part alone, exact and on the graduation,
 * and the cautions.
 * @throws An `InputError` that names the field; `conflict` when the pail does not hold the pours.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.pailMarks({
 *   pours: [
 *     { name: 'A', volume: { value: 2, unit: 'l' } },
 *     { name: 'B', volume: { value: 1, unit: 'l' } },
 *   ],
 *   pail: { diameter: { value: 200, unit: 'mm' }, height: { value: 250, unit: 'mm' } },
 *   graduation: { value: 1, unit: 'mm' },
 *   unit: 'mm',
 * });
 * answer.marks.map(({ name, mark }) => [name, mark.field.value]); // => [['A', 64], ['B', 95]]
 * answer.marks[1]?.off?.low.value.toFixed(1); // => '-10.8'
 * answer.cautions[0]?.code; // => 'reading-not-judged'
 * ```
 */
export function pailMarks<U extends LengthUnit>(input: PailMarksInput<U>): PailMarks<U> {
  const { pours, pail, graduation, ratioTolerance, unit } = fields('pailMarks', input);
  const list = readObjects('pailMarks', 'pours', pours, 1);
  const volumes_m3 = list.map((pour, i) =>
    read('pailMarks', 'volume', pour.volume, VOLUME, POSITIVE, ['pours', i]),
  );
  const names = readNames('pailMarks', list, ['pours']);
  const base = readPail('pailMarks', pail);
  const graduation_m = read('pailMarks', 'graduation', graduation, LENGTH, POSITIVE);
  const tolerance = readOptional('pailMarks', 'ratioTolerance', ratioTolerance, SHARE, PART);
  const { marks, cautions } = marksOf(
    'pailMarks',
    { names, volumes_m3 },
    base,
    graduation_m,
    tolerance,
    unit,
  );
  return {
    marks,
    cautions,
    basis: [
      basis('marks', 'mix.pailMarks', '(cbrt(r0³ + 3·k·volume/π) − r0) / k', 'definition', {
        pours: list.map(({ name, volume }) => ({ name, volume })),
        pail,
        graduation,
        ratioTolerance,
      }),
    ],
  };
}

/** What is poured, in pouring order. */
export interface Pours {
  readonly names: readonly string[];
  readonly volumes_m3: readonly number[];
}

/** The marks of pours in base units: of a batch as well as of {@link pailMarks}. */
export function marksOf<U extends LengthUnit>(
  fn: string,
  pours: Pours,
  pail: BasePail,
  graduation_m: number,
  tolerance: number | undefined,
  unit: U,
  path: InputPath = [],
): { readonly marks: readonly PailMark<U>[]; readonly cautions: readonly Caution[] } {
  const { names, volumes_m3 } = pours;
  let poured_m3 = 0;
  const filled_m3 = volumes_m3.map((volume) => (poured_m3 += volume));
  checkFits(fn, pail, poured_m3, path);
  const lengthOf = (metres: number) => write(fn, metres, LENGTH, unit, [...path, 'unit']);
  const step = lengthOf(graduation_m);
  const markOf = (m3: number) => toField(lengthOf(heightOf(pail, m3)), step.value, 'nearest');
  const heights = filled_m3.map(markOf);
  const steps = heights.map(({ field }) => Math.round(field.value / step.value));
  const [first = 0] = steps;
  const tooCoarse = (i: number) => first <= 1 || steps[i] === steps[i - 1];
  const reading = { pail, volumes_m3, steps, graduation_m };
  const marks = names.map((name, i): PailMark<U> => {
    const off = i > 0 && first > 1 && offOf(fn, i, reading);
    const alone = markOf(volumes_m3[i] as number);
    return {
      name,
      mark: heights[i] as FieldValue<U>,
      alone,
      ...(off && { off }),
      ...(tooCoarse(i) && { tooCoarse: true }),
    };
  });
  const cautions = marks.flatMap(({ name, off, tooCoarse }): Caution[] => {
    if (tooCoarse) {
      const params = { name, graduation: step };
      return [{ code: 'too-small-to-measure', severity: 'caution', params, source: 'common-practice' }];
    }
    if (!off) return [];
    const exact = Math.abs(off.atMarks.value) / 100;
    const misread = Math.max(-off.low.value, off.high.value) / 100;
    return readingCaution(fn, name, step, { exact, misread }, tolerance);
  });
  return { marks, cautions };
}

/** What one step of reading does to the ratio of the pour `i` to the first. */
function offOf(
  fn: string,
  i: number,
  reading: {
    readonly pail: BasePail;
    readonly volumes_m3: readonly number[];
    readonly steps: readonly number[];
    readonly graduation_m: number;
  },
): RatioOff {
  const { pail, volumes_m3, steps, graduation_m } = reading;
  const upTo = (mark: number, misread: number) =>
    volumeBelow(pail, ((steps[mark] as number) + misread) * graduation_m);
  /** The first mark misread by `first` steps, this one by `own`; the marks between them as they are. */
  const off = (first: number, own: number) => {
    const below_m3 = upTo(i - 1, i === 1 ? first : 0);
    const poured_m3 = Math.max(0, upTo(i, own) - below_m3);
    const wanted = (volumes_m3[i] as number) / (volumes_m3[0] as number);
    return write(fn, poured_m3 / upTo(0, first) / wanted - 1, SHARE, '%');
  };
  return { atMarks: off(0, 0), low: off(1, -1), high: off(-1, 1) };
}
