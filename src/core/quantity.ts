import { dimensionOf, type Unit } from './dimensionOf.ts';
import { refuse } from './read.ts';
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
/** Mass per amount of substance. */
export type MolarMass = Quantity<units.MolarMassUnit>;
/** What a titration finds of hydroxyl groups, as potassium hydroxide per mass. */
export type HydroxylNumber = Quantity<units.HydroxylNumberUnit>;
/** How much of what is left reacts in a time. */
export type RateConstant = Quantity<units.RateConstantUnit>;
/** Heat set free by a mass. */
export type HeatPerMass = Quantity<units.HeatPerMassUnit>;
/** Heat that warms a mass by a degree. */
export type SpecificHeat = Quantity<units.SpecificHeatUnit>;
/** A plane angle. */
export type Angle = Quantity<units.AngleUnit>;

/**
 * A number with its unit. Writing `{ value, unit }` yourself is just as good; this checks both at once.
 *
 * @param value - How many of the unit.
 * @param unit - Unit code.
 * @returns The quantity as plain data, its unit known to the compiler.
 * @throws An `InputError`: `not-finite` or `wrong-unit`.
 * @example
 * ```ts
 * import { quantity } from 'coating-math/core';
 *
 * quantity(16, 'mil'); // => { value: 16, unit: 'mil' }
 * ```
 */
export function quantity<U extends Unit>(value: number, unit: U): Quantity<U> {
  if (!Number.isFinite(value)) refuse('quantity', 'not-finite', ['value'], 'a finite number', value);
  if (!dimensionOf(unit)) refuse('quantity', 'wrong-unit', ['unit'], 'a unit code of this library', unit);
  return { value: value + 0, unit };
}
