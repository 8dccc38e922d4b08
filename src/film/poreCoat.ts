import { across } from '../core/across.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { VOLUME } from '../core/dimensions.ts';
import { inside } from '../core/inside.ts';
import { POSITIVE } from '../core/limits.ts';
import type { SpreadRate, Volume } from '../core/quantity.ts';
import type { Range, Ranged } from '../core/range.ts';
import { fields, read } from '../core/read.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { areaCovered } from './areaCovered.ts';

/** Input of {@link poreCoat}. */
export interface PoreCoatInput<U extends AreaUnit = AreaUnit> {
  /** Mixed material in one cup, what stays in it taken off. */
  readonly cup: Volume;
  /** Rate of a test square on this floor, or the range for such floors. */
  readonly spreadRate: Ranged<SpreadRate>;
  /** Unit of the answer. */
  readonly unit: U;
}

/** How a coat that is pulled tight is controlled. */
export interface PoreCoat<U extends AreaUnit = AreaUnit> {
  /** What one cup must cover: mark it on the floor before it is poured. */
  readonly areaPerCup: Range<U>;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * What floor one cup of a pore coat covers. Pulled tight, the resin stands in the pores: there is no film that a gauge
 * could read, so the area of a cup is the only control.
 *
 * @formula
 * ```math
 * A_\text{cup} = V_\text{cup} \, S
 * ```
 * @units volume, spread rate as a value or a range; answers area.
 * @validRange cup and spreadRate above 0.
 * @accuracy Exact up to round-off: relative error below 6e-16. In use a cup is held to about 10 %.
 * @source common-practice
 * @param input - Cup, rate and the unit wanted.
 * @returns The area per cup as a range; `likely` where the rate has one.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import { between } from 'coating-math/core';
 * import * as film from 'coating-math/film';
 *
 * const { areaPerCup } = film.poreCoat({
 *   cup: { value: 20, unit: 'usfloz' },
 *   spreadRate: between(600, 800, 'ft2/usgal', { likely: 672 }),
 *   unit: 'ft2',
 * });
 * [areaPerCup.low.value, areaPerCup.likely?.value, areaPerCup.high.value].map((v) => v?.toFixed(0));
 * // => ['94', '105', '125']
 * ```
 */
export function poreCoat<U extends AreaUnit>(input: PoreCoatInput<U>): PoreCoat<U> {
  const { cup, spreadRate, unit } = fields('poreCoat', input);
  read('poreCoat', 'cup', cup, VOLUME, POSITIVE);
  const { low, likely, high } = inside('poreCoat', [], () =>
    across(areaCovered, { volume: cup, spreadRate, unit }),
  );
  return {
    areaPerCup: { low, ...(likely && { likely }), high },
    cautions: [{ code: 'pulled-tight', severity: 'note', params: {}, source: 'common-practice' }],
    basis: [basis('areaPerCup', 'film.areaCovered', 'A = V · S', 'common-practice', { cup, spreadRate })],
  };
}
