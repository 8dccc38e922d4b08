import type { Exact } from '../core/dimension.ts';
import type { DimensionName, Unit } from '../core/dimensionOf.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import { AT_ZERO_CELSIUS } from '../core/temperature.ts';
import type { TemperatureUnit } from '../core/unitCodes.ts';
import { dimensionOfUnit, nameOf } from './dimensionNamed.ts';
import { exactText } from './exactText.ts';
import { BASE_UNITS, UNIT_NAMES } from './unitNames.ts';

/** All there is to say about a unit. */
export interface UnitDescription<U extends Unit = Unit> {
  /** Its code in this library. */
  readonly unit: U;
  /** Kind of quantity. */
  readonly dimension: DimensionName;
  /** Full name. */
  readonly name: string;
  /** How it is written; no two units are written alike. */
  readonly symbol: string;
  /** Its code in the Unified Code for Units of Measure, where that has the same unit. */
  readonly ucum?: string | undefined;
  /** What one of it is worth, exactly; for a scale of temperature what the number x on it means. */
  readonly definition: string;
  /** Id in the register of sources. */
  readonly source: string;
}

/**
 * Name, symbol and exact definition of a unit, for legends, reports and doubters.
 *
 * @param unit - Unit code.
 * @returns The description as plain data.
 * @throws An `InputError`: `wrong-unit`.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.describeUnit('usfloz').definition; // => '473176473/16000000000000 m³'
 * units.describeUnit('mil');
 * // => {
 * //   unit: 'mil',
 * //   dimension: 'length',
 * //   name: 'thousandth of an inch',
 * //   symbol: 'mil',
 * //   ucum: '[mil_i]',
 * //   definition: '127/5000000 m',
 * //   source: 'ucum-2.2',
 * // }
 * ```
 */
export function describeUnit<U extends Unit>(unit: U): UnitDescription<U> {
  const dimension = dimensionOfUnit('describeUnit', unit);
  const kind = nameOf(dimension);
  const [name, symbol, ucum, source] = UNIT_NAMES[unit];
  const worth = exactText(dimension.exact[unit] as Exact);
  const zero = exactText(dimension.kind === TEMPERATURE.kind ? AT_ZERO_CELSIUS[unit as TemperatureUnit] : 0);
  const base = BASE_UNITS[kind];
  return {
    unit,
    dimension: kind,
    name,
    symbol,
    ...(ucum && { ucum }),
    definition: zero === '0' ? `${worth} ${base}` : `(x − ${zero}) · ${worth} ${base}`,
    source,
  };
}
