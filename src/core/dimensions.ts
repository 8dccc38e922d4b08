/**
 * The exact definition of every unit of the library, one table per kind of quantity. A number stands for exactly
 * its decimal digits, a pair for a fraction.
 *
 * International yard and pound (1959): 1 in = 25.4 mm, 1 lb = 0.45359237 kg. US gallon 231 in³, imperial gallon
 * 4.54609 l, standard gravity 9.80665 m/s², conventional mercury 13595.1 kg/m³, 24 h to the day.
 * The comment on each table names its base unit, in which the formulas compute.
 */
import { dimension, type Dimension } from './dimension.ts';
import type {
  AngleUnit,
  AreaUnit,
  DensityUnit,
  EquivalentWeightUnit,
  FlowUnit,
  ForceUnit,
  HeatPerMassUnit,
  HydroxylNumberUnit,
  LengthUnit,
  MassPerAreaUnit,
  MassUnit,
  MolarEnergyUnit,
  MolarMassUnit,
  PermeanceUnit,
  PressureUnit,
  RateConstantUnit,
  ShareUnit,
  SpecificHeatUnit,
  SpeedUnit,
  SpreadRateUnit,
  TemperatureDifferenceUnit,
  TemperatureUnit,
  TimeUnit,
  VapourEmissionUnit,
  VolumeUnit,
  WorkRateUnit,
} from './unitCodes.ts';

/** Base: m. */
export const LENGTH: Dimension<LengthUnit> = /* @__PURE__ */ dimension('a length', {
  um: 1e-6,
  mm: 0.001,
  cm: 0.01,
  m: 1,
  mil: 2.54e-5,
  in: 0.0254,
  ft: 0.3048,
  yd: 0.9144,
});

/** Base: m². */
export const AREA: Dimension<AreaUnit> = /* @__PURE__ */ dimension('an area', {
  mm2: 1e-6,
  cm2: 0.0001,
  m2: 1,
  in2: 0.00064516,
  ft2: 0.09290304,
  yd2: 0.83612736,
});

/** Base: m³. */
export const VOLUME: Dimension<VolumeUnit> = /* @__PURE__ */ dimension('a volume', {
  ml: 1e-6,
  l: 0.001,
  m3: 1,
  in3: 1.6387064e-5,
  ft3: 0.028316846592,
  yd3: 0.764554857984,
  usfloz: [0.003785411784, 128],
  uspt: [0.003785411784, 8],
  usqt: [0.003785411784, 4],
  usgal: 0.003785411784,
  impfloz: [0.00454609, 160],
  imppt: [0.00454609, 8],
  impqt: [0.00454609, 4],
  impgal: 0.00454609,
});

/** Base: kg. */
export const MASS: Dimension<MassUnit> = /* @__PURE__ */ dimension('a mass', {
  mg: 1e-6,
  g: 0.001,
  kg: 1,
  t: 1000,
  oz: 0.028349523125,
  lb: 0.45359237,
});

/** Base: s. */
export const TIME: Dimension<TimeUnit> = /* @__PURE__ */ dimension('a time', {
  s: 1,
  min: 60,
  h: 3600,
  d: 86400,
});

/** Base: °C. A point on a scale; where each scale starts stands in `temperature.ts`. */
export const TEMPERATURE: Dimension<TemperatureUnit> = /* @__PURE__ */ dimension('a temperature', {
  degC: 1,
  degF: [5, 9],
  K: 1,
});

/** Base: K. */
export const TEMPERATURE_DIFFERENCE: Dimension<TemperatureDifferenceUnit> = /* @__PURE__ */ dimension(
  'a temperature difference',
  { deltaC: 1, deltaF: [5, 9] },
);

/** Base: 1. */
export const SHARE: Dimension<ShareUnit> = /* @__PURE__ */ dimension('a share', {
  '%': 0.01,
  fraction: 1,
  ppm: 1e-6,
});

/** Base: m²/m³. */
export const SPREAD_RATE: Dimension<SpreadRateUnit> = /* @__PURE__ */ dimension('a spread rate', {
  'm2/l': 1000,
  'ft2/usgal': [9290304, 378541.1784],
  'ft2/impgal': [9290304, 454609],
});

/** Base: kg/m². */
export const MASS_PER_AREA: Dimension<MassPerAreaUnit> = /* @__PURE__ */ dimension('a mass per area', {
  'g/m2': 0.001,
  'kg/m2': 1,
  'lb/ft2': [45359237, 9290304],
  'lb/yd2': [45359237, 83612736],
});

/** Base: kg/m³. */
export const DENSITY: Dimension<DensityUnit> = /* @__PURE__ */ dimension('a density', {
  'g/ml': 1000,
  'kg/l': 1000,
  'kg/m3': 1,
  'g/l': 1,
  'lb/usgal': [45359237, 378541.1784],
  'lb/impgal': [45359237, 454609],
  'lb/ft3': [45359237, 2831684.6592],
  'mg/m3': 1e-6,
  'ug/m3': 1e-9,
});

/** Base: Pa. */
export const PRESSURE: Dimension<PressureUnit> = /* @__PURE__ */ dimension('a pressure', {
  Pa: 1,
  hPa: 100,
  kPa: 1000,
  MPa: 1000000,
  bar: 100000,
  psi: [4.4482216152605, 0.00064516],
  inHg: 3386.388640341,
  mmHg: 133.322387415,
});

/** Base: N. */
export const FORCE: Dimension<ForceUnit> = /* @__PURE__ */ dimension('a force', {
  N: 1,
  kN: 1000,
  lbf: 4.4482216152605,
});

/** Base: m²/s. */
export const WORK_RATE: Dimension<WorkRateUnit> = /* @__PURE__ */ dimension('a work rate', {
  'm2/min': [1, 60],
  'm2/h': [1, 3600],
  'ft2/min': 0.001548384,
  'ft2/h': 2.58064e-5,
});

/** Base: m³/s. */
export const FLOW: Dimension<FlowUnit> = /* @__PURE__ */ dimension('a flow', {
  'l/min': [1, 60e3],
  'm3/h': [1, 3600],
  'ft3/min': 0.0004719474432,
});

/** Base: m/s. */
export const SPEED: Dimension<SpeedUnit> = /* @__PURE__ */ dimension('a speed', {
  'm/s': 1,
  'km/h': [5, 18],
  mph: 0.44704,
});

/** Base: g/(m²·24 h). */
export const VAPOUR_EMISSION: Dimension<VapourEmissionUnit> = /* @__PURE__ */ dimension('a vapour emission', {
  'g/m2/24h': 1,
  'lb/1000ft2/24h': [45359237, 9290304],
  'kg/m2/h': 24000,
  'lb/ft2/h': [45359237, 387.096],
});

/** Base: ng/(s·m²·Pa). */
export const PERMEANCE: Dimension<PermeanceUnit> = /* @__PURE__ */ dimension('a permeance', {
  'ng/s/m2/Pa': 1,
  // 64798910 ng to the grain, over 3600 s · 0.09290304 m² · 3386.388640341 Pa, in lowest terms
  perm: ['253120742187500000000', '4424144052784859109'],
});

/** Base: kJ/mol. */
export const MOLAR_ENERGY: Dimension<MolarEnergyUnit> = /* @__PURE__ */ dimension('a molar energy', {
  'kJ/mol': 1,
});

/** Base: g/eq. */
export const EQUIVALENT_WEIGHT: Dimension<EquivalentWeightUnit> = /* @__PURE__ */ dimension(
  'an equivalent weight',
  {
    'g/eq': 1,
  },
);

/** Base: g/mol. */
export const MOLAR_MASS: Dimension<MolarMassUnit> = /* @__PURE__ */ dimension('a molar mass', { 'g/mol': 1 });

/** Base: mg/g. */
export const HYDROXYL_NUMBER: Dimension<HydroxylNumberUnit> = /* @__PURE__ */ dimension('a hydroxyl number', {
  'mgKOH/g': 1,
});

/** Base: 1/s. */
export const RATE_CONSTANT: Dimension<RateConstantUnit> = /* @__PURE__ */ dimension('a rate constant', {
  '1/s': 1,
  '1/min': [1, 60],
  '1/h': [1, 3600],
});

/** Base: J/g. */
export const HEAT_PER_MASS: Dimension<HeatPerMassUnit> = /* @__PURE__ */ dimension('a heat per mass', {
  'J/g': 1,
  'kJ/kg': 1,
});

/** Base: J/(g·K). */
export const SPECIFIC_HEAT: Dimension<SpecificHeatUnit> = /* @__PURE__ */ dimension('a specific heat', {
  'J/g/K': 1,
  'kJ/kg/K': 1,
});

/** Base: rad. `Math.PI` stands for the circle constant itself. */
export const ANGLE: Dimension<AngleUnit> = /* @__PURE__ */ dimension('an angle', {
  deg: [Math.PI, 180],
  rad: 1,
});
