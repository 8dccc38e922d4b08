import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH } from '../core/dimensions.ts';
import type { LikelyRange } from '../core/range.ts';
import { fields, write } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import type { LengthUnit } from '../core/unitCodes.ts';

/** A segment of a surface profile comparator: G for grit, S for shot, from the finest to the coarsest. */
export type ComparatorSegment = 'G-1' | 'G-2' | 'G-3' | 'G-4' | 'S-1' | 'S-2' | 'S-3' | 'S-4';

/** Input of {@link comparatorProfile}. */
export interface ComparatorProfileInput<U extends LengthUnit = LengthUnit> {
  /** Segment that the steel looks and feels like. */
  readonly segment: ComparatorSegment;
  /** Unit of the answer. */
  readonly unit: U;
}

/** What a segment stands for. */
export interface ComparatorProfile<U extends LengthUnit = LengthUnit> {
  /** From the valleys to the peaks: the nominal height as likely, its tolerance as the ends. */
  readonly peakToValley: LikelyRange<U>;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

/** Nominal height of each segment and its tolerance in µm: quoted from memory. */
const SEGMENTS: Readonly<Record<ComparatorSegment, readonly [nominal_um: number, tolerance_um: number]>> = {
  'G-1': [25, 3],
  'G-2': [60, 10],
  'G-3': [100, 15],
  'G-4': [150, 20],
  'S-1': [25, 3],
  'S-2': [40, 5],
  'S-3': [70, 10],
  'S-4': [100, 15],
};
const STANDARD = { source: 'iso-8503-1', status: 'memory' } as const;

/**
 * How high the peaks of blasted steel stand over its valleys, from the segment of the comparator that it looks and feels
 * like: of frames, plates and drain bodies that a floor is laid against. `profileDepth` makes a depth to fill of it.
 *
 * @formula
 * ```math
 * R = R_\text{nominal} \pm \Delta R
 * ```
 * @units a segment, which has no unit; answers a length.
 * @validRange segments 1 to 4 for grit and for shot. Steel only: the comparator is not made for concrete.
 * @accuracy The table is quoted from memory and not confirmed; a segment is judged by eye and fingernail.
 * @source iso-8503-1
 * @param input - Segment and the unit wanted.
 * @returns The nominal height and its tolerance as a range.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as film from 'coating-math/film';
 *
 * const { low, likely, high } = film.comparatorProfile({ segment: 'G-2', unit: 'um' }).peakToValley;
 * [low, likely, high].map(({ value }) => value.toFixed(0)); // => ['50', '60', '70']
 * ```
 */
export function comparatorProfile<U extends LengthUnit>(
  input: ComparatorProfileInput<U>,
): ComparatorProfile<U> {
  const { segment, unit } = fields('comparatorProfile', input);
  const [nominal_um, tolerance_um] = SEGMENTS[readKey('comparatorProfile', 'segment', segment, SEGMENTS)];
  const height = (um: number) => write('comparatorProfile', um / 1e6, LENGTH, unit);
  return {
    peakToValley: {
      low: height(nominal_um - tolerance_um),
      likely: height(nominal_um),
      high: height(nominal_um + tolerance_um),
    },
    cautions: [{ code: 'comparator-is-for-steel', severity: 'note', params: { segment }, ...STANDARD }],
    basis: [basis('peakToValley', 'film.comparatorProfile', 'table of segments', STANDARD, { segment })],
  };
}
