import type * as units from './unitCodes.ts';

/** A number that never travels without its unit. Plain JSON: no class, no hidden mark. */
export interface Quantity<U extends string = string> {
  /** How many of the unit. */
  readonly value: number;
  /** Unit code. */
  readonly unit: U;
}

/** A length or a thickness. */
export type Length = Quantity<units.LengthUnit>;
/** An area. */
export type Area = Quantity<units.AreaUnit>;
/** A volume. */
export type Volume = Quantity<units.VolumeUnit>;
/** A mass. */
export type Mass = Quantity<units.MassUnit>;
/** A span of time. */
export type Time = Quantity<units.TimeUnit>;
/** A point on a temperature scale. */
export type Temperature = Quantity<units.TemperatureUnit>;
/** A difference between two temperatures: 5 °F of it are 2.8 °C, not −15 °C. */
export type TemperatureDifference = Quantity<units.TemperatureDifferenceUnit>;
/** A part of a whole. */
export type Share = Quantity<units.ShareUnit>;
/** An area covered by a volume. */
export type SpreadRate = Quantity<units.SpreadRateUnit>;
/** A mass spread over an area. */
export type MassPerArea = Quantity<units.MassPerAreaUnit>;
/** A mass in a volume. */
export type Density = Quantity<units.DensityUnit>;
/** A pressure or a bond stress. */
export type Pressure = Quantity<units.PressureUnit>;
/** A force. */
export type Force = Quantity<units.ForceUnit>;
/** An area worked in a time. */
export type WorkRate = Quantity<units.WorkRateUnit>;
/** A volume moved in a time. */
export type Flow = Quantity<units.FlowUnit>;
/** A speed, such as of the wind. */
export type Speed = Quantity<units.SpeedUnit>;
/** Water vapour leaving a slab. */
export type VapourEmission = Quantity<units.VapourEmissionUnit>;
/** How easily a layer lets water vapour through. */
export type Permeance = Quantity<units.PermeanceUnit>;
/** Energy per amount of substance. */
export type MolarEnergy = Quantity<units.MolarEnergyUnit>;
/** Mass that carries one reactive group. */
export type EquivalentWeight = Quantity<units.EquivalentWeightUnit>;
/** A plane angle. */
export type Angle = Quantity<units.AngleUnit>;
