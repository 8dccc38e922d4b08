/** The codes of all units, by kind of quantity. Types only: what each code means stands in `dimensions.ts`. */

/** Units of length; `mil` is 0.001 in. There is no survey foot. */
export type LengthUnit = 'um' | 'mm' | 'cm' | 'm' | 'mil' | 'in' | 'ft' | 'yd';
/** Units of area. */
export type AreaUnit = 'mm2' | 'cm2' | 'm2' | 'in2' | 'ft2' | 'yd2';
/** Units of volume; each gallon, pint and fluid ounce says whose it is. */
export type VolumeUnit =
  | 'ml'
  | 'l'
  | 'm3'
  | 'in3'
  | 'ft3'
  | 'yd3'
  | 'usfloz'
  | 'uspt'
  | 'usqt'
  | 'usgal'
  | 'impfloz'
  | 'imppt'
  | 'impqt'
  | 'impgal';
/** Units of mass; `oz` is the ounce of weight, 1/16 lb, and `t` the metric tonne. */
export type MassUnit = 'mg' | 'g' | 'kg' | 't' | 'oz' | 'lb';
/** Units of time. */
export type TimeUnit = 's' | 'min' | 'h' | 'd';
/** Scales of temperature, for a point on the scale. */
export type TemperatureUnit = 'degC' | 'degF' | 'K';
/** Units of a difference between two temperatures. */
export type TemperatureDifferenceUnit = 'deltaC' | 'deltaF';
/** Units of a part of a whole. */
export type ShareUnit = '%' | 'fraction';
/** Units of area covered by a volume. */
export type SpreadRateUnit = 'm2/l' | 'ft2/usgal' | 'ft2/impgal';
/** Units of mass spread over an area. */
export type MassPerAreaUnit = 'g/m2' | 'kg/m2' | 'lb/ft2' | 'lb/yd2';
/** Units of mass in a volume. */
export type DensityUnit = 'g/ml' | 'kg/l' | 'kg/m3' | 'g/l' | 'lb/usgal' | 'lb/impgal' | 'lb/ft3';
/** Units of pressure and of bond stress; mercury columns are the conventional ones at 0 °C. */
export type PressureUnit = 'Pa' | 'hPa' | 'kPa' | 'MPa' | 'bar' | 'psi' | 'inHg' | 'mmHg';
/** Units of force. */
export type ForceUnit = 'N' | 'kN' | 'lbf';
/** Units of area worked in a time. */
export type WorkRateUnit = 'm2/min' | 'm2/h' | 'ft2/min' | 'ft2/h';
/** Units of volume moved in a time. */
export type FlowUnit = 'l/min' | 'm3/h' | 'ft3/min';
/** Units of speed. */
export type SpeedUnit = 'm/s' | 'km/h' | 'mph';
/** Units of water vapour leaving a slab; the last two are for what dries off fresh concrete. */
export type VapourEmissionUnit = 'g/m2/24h' | 'lb/1000ft2/24h' | 'kg/m2/h' | 'lb/ft2/h';
/** Units of vapour permeance; `perm` is 1 grain/(h·ft²·inHg) with mercury at 0 °C. */
export type PermeanceUnit = 'ng/s/m2/Pa' | 'perm';
/** Units of energy per amount of substance. */
export type MolarEnergyUnit = 'kJ/mol';
/** Units of mass that carries one reactive group. */
export type EquivalentWeightUnit = 'g/eq';
/** Units of mass per amount of substance. */
export type MolarMassUnit = 'g/mol';
/** Units of a hydroxyl number: the potassium hydroxide that stands for the hydroxyl groups of a gram. */
export type HydroxylNumberUnit = 'mgKOH/g';
/** Units of a rate constant: how much of what is left reacts in a time. */
export type RateConstantUnit = '1/s' | '1/min' | '1/h';
/** Units of heat set free by a mass. */
export type HeatPerMassUnit = 'J/g' | 'kJ/kg';
/** Units of heat that warms a mass by a degree. */
export type SpecificHeatUnit = 'J/g/K' | 'kJ/kg/K';
/** Units of plane angle. */
export type AngleUnit = 'deg' | 'rad';
