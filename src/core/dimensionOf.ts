import type { Dimension } from './dimension.ts';
import * as tables from './dimensions.ts';
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
  readonly angle: codes.AngleUnit;
}

/** Name of a kind of quantity. */
export type DimensionName = keyof UnitsByDimension;
/** Every unit code of the library. */
export type Unit = UnitsByDimension[DimensionName];

/** The kinds of quantity by name. */
export const DIMENSIONS: Readonly<Record<DimensionName, Dimension<Unit>>> = {
  length: tables.LENGTH,
  area: tables.AREA,
  volume: tables.VOLUME,
  mass: tables.MASS,
  time: tables.TIME,
  temperature: tables.TEMPERATURE,
  'temperature difference': tables.TEMPERATURE_DIFFERENCE,
  share: tables.SHARE,
  'spread rate': tables.SPREAD_RATE,
  'mass per area': tables.MASS_PER_AREA,
  density: tables.DENSITY,
  pressure: tables.PRESSURE,
  force: tables.FORCE,
  'work rate': tables.WORK_RATE,
  flow: tables.FLOW,
  speed: tables.SPEED,
  'vapour emission': tables.VAPOUR_EMISSION,
  permeance: tables.PERMEANCE,
  'molar energy': tables.MOLAR_ENERGY,
  'equivalent weight': tables.EQUIVALENT_WEIGHT,
  angle: tables.ANGLE,
} as never;

const byUnit = new Map<unknown, Dimension<Unit>>();

/** The kind of quantity that a unit code belongs to; nothing for a code that is not one of ours. */
export function dimensionOf(unit: unknown): Dimension<Unit> | undefined {
  if (byUnit.size === 0) {
    for (const dimension of Object.values(DIMENSIONS)) {
      for (const code of Object.keys(dimension.factor)) byUnit.set(code, dimension);
    }
  }
  return byUnit.get(unit);
}
