import { dimension, factorOf, type Dimension } from './dimension.ts';
import * as tables from './dimensions.ts';
import { BELOW_ABSOLUTE_ZERO } from './limits.ts';
import { AT_ZERO_CELSIUS } from './temperature.ts';
import type * as codes from './unitCodes.ts';

/** Every kind of quantity and the codes of its units. */
export interface UnitsByDimension {
  readonly length: codes.LengthUnit;
  readonly area: codes.AreaUnit;
  readonly volume: codes.VolumeUnit;
  readonly mass: codes.MassUnit;
  readonly time: codes.TimeUnit;
  readonly temperature: codes.TemperatureUnit;
  readonly 'temperature difference': codes.TemperatureDifferenceUnit;
  readonly share: codes.ShareUnit;
  readonly 'spread rate': codes.SpreadRateUnit;
  readonly 'mass per area': codes.MassPerAreaUnit;
  readonly density: codes.DensityUnit;
  readonly pressure: codes.PressureUnit;
  readonly force: codes.ForceUnit;
  readonly 'work rate': codes.WorkRateUnit;
  readonly flow: codes.FlowUnit;
  readonly speed: codes.SpeedUnit;
  readonly 'vapour emission': codes.VapourEmissionUnit;
  readonly permeance: codes.PermeanceUnit;
  readonly 'molar energy': codes.MolarEnergyUnit;
  readonly 'equivalent weight': codes.EquivalentWeightUnit;
  readonly 'molar mass': codes.MolarMassUnit;
  readonly 'hydroxyl number': codes.HydroxylNumberUnit;
  readonly 'rate constant': codes.RateConstantUnit;
  readonly 'heat per mass': codes.HeatPerMassUnit;
  readonly 'specific heat': codes.SpecificHeatUnit;
  readonly angle: codes.AngleUnit;
}

/** Name of a kind of quantity. */
export type DimensionName = keyof UnitsByDimension;
/** Every unit code of the library. */
export type Unit = UnitsByDimension[DimensionName];

/**
 * The units of the same kind as one unit: what it can be converted to. None for a unit that may be of one kind or of
 * another, and all for one of which nothing is known.
 */
export type SameKind<U extends Unit> = [Exclude<Unit, codes.TemperatureUnit>] extends [U]
  ? U
  : {
      [D in keyof UnitsByDimension]: [U] extends [UnitsByDimension[D]] ? UnitsByDimension[D] : never;
    }[keyof UnitsByDimension];

/** Every kind of quantity. */
export const DIMENSIONS = [
  tables.LENGTH,
  tables.AREA,
  tables.VOLUME,
  tables.MASS,
  tables.TIME,
  tables.TEMPERATURE,
  tables.TEMPERATURE_DIFFERENCE,
  tables.SHARE,
  tables.SPREAD_RATE,
  tables.MASS_PER_AREA,
  tables.DENSITY,
  tables.PRESSURE,
  tables.FORCE,
  tables.WORK_RATE,
  tables.FLOW,
  tables.SPEED,
  tables.VAPOUR_EMISSION,
  tables.PERMEANCE,
  tables.MOLAR_ENERGY,
  tables.EQUIVALENT_WEIGHT,
  tables.MOLAR_MASS,
  tables.HYDROXYL_NUMBER,
  tables.RATE_CONSTANT,
  tables.HEAT_PER_MASS,
  tables.SPECIFIC_HEAT,
  tables.ANGLE,
] as unknown as readonly Dimension<Unit>[];

/** Stands in for the kind of a quantity whose unit is not known, so that the refusal reads the same. */
export const UNKNOWN: Dimension<string> = /* @__PURE__ */ dimension('a quantity', { 'known units': NaN });

/** What leads from a number in one unit to base units and back. */
export interface UnitScale {
  readonly unit: string;
  readonly dimension: Dimension<Unit>;
  /** One unit in base units. */
  readonly factor: number;
  /** What the unit shows where the base unit shows 0. */
  readonly zero: number;
  /** Least value there is, in base units; where nothing is least, minus infinity. */
  readonly least: number;
}

const scales: ReadonlyMap<unknown, UnitScale> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ DIMENSIONS.flatMap((dimension) =>
    Object.keys(dimension.exact).map((unit) => {
      const factor = factorOf(dimension, unit) as number;
      const zero = (AT_ZERO_CELSIUS as Partial<Record<string, number>>)[unit];
      const least = zero === undefined ? -Infinity : BELOW_ABSOLUTE_ZERO;
      return [unit, { unit, dimension, factor, zero: zero ?? 0, least }];
    }),
  ),
);

/** The scale of a unit code; nothing for a code that is not one of ours. */
export function scaleOf(unit: unknown): UnitScale | undefined {
  return scales.get(unit);
}

/** The kind of quantity that a unit code belongs to; nothing for a code that is not one of ours. */
export function dimensionOf(unit: unknown): Dimension<Unit> | undefined {
  return scaleOf(unit)?.dimension;
}
