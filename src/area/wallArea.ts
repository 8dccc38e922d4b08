import { AREA, LENGTH } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Length, Quantity } from '../core/quantity.ts';
import { fields, read, readOr, refuse, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link wallArea}. */
export interface WallAreaInput<U extends AreaUnit = AreaUnit> {
  /** Along the floor. */
  readonly length: Length;
  /** How high it is coated: of a wall, an upstand or a kerb. */
  readonly height: Length;
  /** Doors and other openings within that height, all together. None where not given. */
  readonly openings?: Area | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * Area of a wall or an upstand, less its openings.
 *
 * @formula
 * ```math
 * A = l \, h - A_o
 * ```
 * @units lengths, area; answers area.
 * @validRange length and height above 0; openings 0 or more and no more than the wall.
 * @monotone length +, height +, openings -
 * @accuracy Exact up to round-off: below 1e-15 of the area without openings.
 * @source definition
 * @param input - The wall and the unit wanted.
 * @returns The area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field, or `conflict` where the openings are more than the wall.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * area.wallArea({
 *   length: { value: 30, unit: 'm' },
 *   height: { value: 100, unit: 'mm' },
 *   openings: { value: 0.2, unit: 'm2' },
 *   unit: 'm2',
 * }).value.toFixed(2); // => '2.80'
 * ```
 */
export const wallArea = /* @__PURE__ */ monotone(
  { length: '+', height: '+', openings: '-' },
  <U extends AreaUnit>(input: WallAreaInput<U>): Quantity<U> => {
    const { length, height, openings, unit } = fields('wallArea', input);
    const length_m = read('wallArea', 'length', length, LENGTH, POSITIVE);
    const height_m = read('wallArea', 'height', height, LENGTH, POSITIVE);
    const openings_m2 = readOr(0, 'wallArea', 'openings', openings, AREA, NOT_NEGATIVE);
    const wall_m2 = length_m * height_m;
    if (openings_m2 > wall_m2 * (1 + 1e-12)) {
      refuse('wallArea', 'conflict', ['openings'], 'no more than the wall', openings);
    }
    return write('wallArea', Math.max(wall_m2 - openings_m2, 0), AREA, unit);
  },
);
