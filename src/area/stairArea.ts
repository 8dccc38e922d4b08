import { AREA, LENGTH } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import { readCount } from '../core/readPlain.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link stairArea}. */
export interface StairAreaInput<U extends AreaUnit = AreaUnit> {
  /** Number of treads. */
  readonly steps: number;
  /** Number of risers where it is not that of the treads, as for a flight up to a floor that is coated apart. */
  readonly risers?: number | undefined;
  /** From the nosing back to the riser above. */
  readonly tread: Length;
  /** From one tread up to the next. */
  readonly riser: Length;
  /** What the coat goes around and under the nosing of each tread. None where not given. */
  readonly nosingWrap?: Length | undefined;
  /** Number of landings; goes with `landing`. */
  readonly landings?: number | undefined;
  /** Length of each landing in the direction of walking; goes with `landings`. */
  readonly landing?: Length | undefined;
  /** Width of the stair and of its landings. */
  readonly width: Length;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a stair: treads, risers, what wraps around the nosings, and landings. Treads alone would miss two fifths of
 * its steps.
 *
 * @formula
 * ```math
 * A = \left( n_t \, (t + w) + n_r \, r + n_l \, l \right) b
 * ```
 * @units counts, lengths; answers area.
 * @validRange steps, risers and landings whole numbers of 1 or more; tread, riser, landing and width above 0;
 * nosingWrap 0 or more. A landing wider than the stair, as at a half turn, is a `rectangleArea`.
 * @monotone tread +, riser +, nosingWrap +, landing +, width +
 * @accuracy Exact up to round-off: relative error below 1e-15.
 * @source common-practice
 * @param input - Counts, lengths and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * const inch = (value: number) => ({ value, unit: 'in' as const });
 * area.stairArea({
 *   steps: 18,
 *   tread: inch(11),
 *   riser: inch(7),
 *   nosingWrap: inch(1),
 *   width: inch(44),
 *   unit: 'ft2',
 * }).value.toFixed(1); // => '104.5'
 * ```
 */
export const stairArea = /* @__PURE__ */ monotone(
  { tread: '+', riser: '+', nosingWrap: '+', landing: '+', width: '+' },
  <U extends AreaUnit>(input: StairAreaInput<U>): Quantity<U> => {
    const { steps, risers = steps, tread, riser, nosingWrap, width, unit } = fields('stairArea', input);
    const { landings, landing } = input;
    const treadCount = readCount('stairArea', 'steps', steps);
    const riserCount = readCount('stairArea', 'risers', risers);
    const tread_m = read('stairArea', 'tread', tread, LENGTH, POSITIVE);
    const riser_m = read('stairArea', 'riser', riser, LENGTH, POSITIVE);
    const wrap_m = readOr(0, 'stairArea', 'nosingWrap', nosingWrap, LENGTH, NOT_NEGATIVE);
    const landings_m =
      landings === undefined && landing === undefined
        ? 0
        : readCount('stairArea', 'landings', landings) *
          read('stairArea', 'landing', landing, LENGTH, POSITIVE);
    const width_m = read('stairArea', 'width', width, LENGTH, POSITIVE);
    const flights_m = treadCount * (tread_m + wrap_m) + riserCount * riser_m;
    return write('stairArea', (flights_m + landings_m) * width_m, AREA, unit);
  },
);
