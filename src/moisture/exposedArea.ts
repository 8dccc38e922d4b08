import { AREA } from '../core/dimensions.ts';
import { POSITIVE } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Area, Quantity } from '../core/quantity.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';

/** Input of {@link exposedArea}. */
export interface ExposedAreaInput<U extends AreaUnit = AreaUnit> {
  /** Inside of the flange of the dome. */
  readonly flangeArea: Area;
  /** Outside of the dish that stands under it. */
  readonly dishArea: Area;
  /** Unit of the answer. */
  readonly unit: U;
}

/**
 * The concrete that can breathe under the dome of a calcium chloride test: what the dish covers does not.
 *
 * @formula
 * ```math
 * A = A_{flange} - A_{dish}
 * ```
 * @units areas; answers area.
 * @validRange both above 0, the dish smaller than the flange. Forgetting the dish reports 8.5 % too little.
 * @monotone flangeArea +, dishArea -
 * @accuracy Exact up to round-off.
 * @source astm-f1869
 * @param input - Flange, dish and the unit wanted.
 * @returns The exposed area in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * moisture.exposedArea({
 *   flangeArea: { value: 70, unit: 'in2' },
 *   dishArea: { value: 5.94, unit: 'in2' },
 *   unit: 'in2',
 * }).value.toFixed(2); // => '64.06'
 * ```
 */
export const exposedArea = /* @__PURE__ */ monotone(
  { flangeArea: '+', dishArea: '-' },
  <U extends AreaUnit>(input: ExposedAreaInput<U>): Quantity<U> => {
    const { flangeArea, dishArea, unit } = fields('exposedArea', input);
    const flange_m2 = read('exposedArea', 'flangeArea', flangeArea, AREA, POSITIVE);
    const dish_m2 = read('exposedArea', 'dishArea', dishArea, AREA, POSITIVE);
    if (dish_m2 >= flange_m2) {
      refuse('exposedArea', 'conflict', ['dishArea'], 'smaller than the flange', dishArea);
    }
    return write('exposedArea', flange_m2 - dish_m2, AREA, unit);
  },
);
