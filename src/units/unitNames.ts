/** What people call each unit, for `describeUnit`, for reading and for writing. What each is worth stands in core. */
import type { DimensionName, Unit } from '../core/dimensionOf.ts';

/** Full name, symbol, code in the Unified Code for Units of Measure where that has the same unit, and source. */
type UnitName = readonly [
  name: string,
  symbol: string,
  ucum: string,
  source: 'ucum-2.2' | 'nist-sp-811' | 'gnu-units-2.22' | 'definition',
];

/** No symbol stands for two units: whatever is written with one is read back as the same. */
export const UNIT_NAMES: Readonly<Record<Unit, UnitName>> = {
  um: ['micrometre', 'µm', 'um', 'ucum-2.2'],
  mm: ['millimetre', 'mm', 'mm', 'ucum-2.2'],
  cm: ['centimetre', 'cm', 'cm', 'ucum-2.2'],
  m: ['metre', 'm', 'm', 'ucum-2.2'],
  mil: ['thousandth of an inch', 'mil', '[mil_i]', 'ucum-2.2'],
  in: ['inch', 'in', '[in_i]', 'ucum-2.2'],
  ft: ['international foot', 'ft', '[ft_i]', 'ucum-2.2'],
  yd: ['international yard', 'yd', '[yd_i]', 'ucum-2.2'],

  mm2: ['square millimetre', 'mm²', 'mm2', 'ucum-2.2'],
  cm2: ['square centimetre', 'cm²', 'cm2', 'ucum-2.2'],
  m2: ['square metre', 'm²', 'm2', 'ucum-2.2'],
  in2: ['square inch', 'in²', '[sin_i]', 'ucum-2.2'],
  ft2: ['square foot', 'ft²', '[sft_i]', 'ucum-2.2'],
  yd2: ['square yard', 'yd²', '[syd_i]', 'ucum-2.2'],

  ml: ['millilitre', 'mL', 'mL', 'ucum-2.2'],
  l: ['litre', 'L', 'L', 'ucum-2.2'],
  m3: ['cubic metre', 'm³', 'm3', 'ucum-2.2'],
  in3: ['cubic inch', 'in³', '[cin_i]', 'ucum-2.2'],
  ft3: ['cubic foot', 'ft³', '[cft_i]', 'ucum-2.2'],
  yd3: ['cubic yard', 'yd³', '[cyd_i]', 'ucum-2.2'],
  usfloz: ['US fluid ounce', 'US fl oz', '[foz_us]', 'ucum-2.2'],
  uspt: ['US liquid pint', 'US pt', '[pt_us]', 'ucum-2.2'],
  usqt: ['US liquid quart', 'US qt', '[qt_us]', 'ucum-2.2'],
  usgal: ['US gallon', 'US gal', '[gal_us]', 'ucum-2.2'],
  impfloz: ['imperial fluid ounce', 'imp fl oz', '[foz_br]', 'ucum-2.2'],
  imppt: ['imperial pint', 'imp pt', '[pt_br]', 'ucum-2.2'],
  impqt: ['imperial quart', 'imp qt', '[qt_br]', 'ucum-2.2'],
  impgal: ['imperial gallon', 'imp gal', '[gal_br]', 'ucum-2.2'],

  mg: ['milligram', 'mg', 'mg', 'ucum-2.2'],
  g: ['gram', 'g', 'g', 'ucum-2.2'],
  kg: ['kilogram', 'kg', 'kg', 'ucum-2.2'],
  t: ['tonne', 't', 't', 'ucum-2.2'],
  oz: ['avoirdupois ounce, by weight', 'oz wt', '[oz_av]', 'ucum-2.2'],
  lb: ['avoirdupois pound', 'lb', '[lb_av]', 'ucum-2.2'],

  s: ['second', 's', 's', 'ucum-2.2'],
  min: ['minute', 'min', 'min', 'ucum-2.2'],
  h: ['hour', 'h', 'h', 'ucum-2.2'],
  d: ['day of 24 hours', 'd', 'd', 'ucum-2.2'],

  degC: ['degree Celsius, a point on the scale', '°C', 'Cel', 'ucum-2.2'],
  degF: ['degree Fahrenheit, a point on the scale', '°F', '[degF]', 'ucum-2.2'],
  K: ['kelvin, a point on the scale', 'K', 'K', 'ucum-2.2'],
  deltaC: ['degree Celsius, a difference', 'Δ°C', 'K', 'ucum-2.2'],
  deltaF: ['degree Fahrenheit, a difference', 'Δ°F', '', 'definition'],

  '%': ['percent', '%', '%', 'ucum-2.2'],
  fraction: ['fraction of the whole', 'fraction', '1', 'ucum-2.2'],

  'm2/l': ['square metre per litre', 'm²/L', 'm2/L', 'ucum-2.2'],
  'ft2/usgal': ['square foot per US gallon', 'ft²/US gal', '[sft_i]/[gal_us]', 'ucum-2.2'],
  'ft2/impgal': ['square foot per imperial gallon', 'ft²/imp gal', '[sft_i]/[gal_br]', 'ucum-2.2'],

  'g/m2': ['gram per square metre', 'g/m²', 'g/m2', 'ucum-2.2'],
  'kg/m2': ['kilogram per square metre', 'kg/m²', 'kg/m2', 'ucum-2.2'],
  'lb/ft2': ['pound per square foot', 'lb/ft²', '[lb_av]/[sft_i]', 'ucum-2.2'],
  'lb/yd2': ['pound per square yard', 'lb/yd²', '[lb_av]/[syd_i]', 'ucum-2.2'],

  'g/ml': ['gram per millilitre', 'g/mL', 'g/mL', 'ucum-2.2'],
  'kg/l': ['kilogram per litre', 'kg/L', 'kg/L', 'ucum-2.2'],
  'kg/m3': ['kilogram per cubic metre', 'kg/m³', 'kg/m3', 'ucum-2.2'],
  'g/l': ['gram per litre', 'g/L', 'g/L', 'ucum-2.2'],
  'lb/usgal': ['pound per US gallon', 'lb/US gal', '[lb_av]/[gal_us]', 'ucum-2.2'],
  'lb/impgal': ['pound per imperial gallon', 'lb/imp gal', '[lb_av]/[gal_br]', 'ucum-2.2'],
  'lb/ft3': ['pound per cubic foot', 'lb/ft³', '[lb_av]/[cft_i]', 'ucum-2.2'],

  Pa: ['pascal', 'Pa', 'Pa', 'ucum-2.2'],
  hPa: ['hectopascal', 'hPa', 'hPa', 'ucum-2.2'],
  kPa: ['kilopascal', 'kPa', 'kPa', 'ucum-2.2'],
  MPa: ['megapascal, newton per square millimetre', 'MPa', 'MPa', 'ucum-2.2'],
  bar: ['bar', 'bar', 'bar', 'ucum-2.2'],
  psi: ['pound-force per square inch', 'psi', '[psi]', 'ucum-2.2'],
  inHg: ['conventional inch of mercury at 0 °C', 'inHg', '', 'nist-sp-811'],
  mmHg: ['conventional millimetre of mercury at 0 °C', 'mmHg', '', 'nist-sp-811'],

  N: ['newton', 'N', 'N', 'ucum-2.2'],
  kN: ['kilonewton', 'kN', 'kN', 'ucum-2.2'],
  lbf: ['pound-force', 'lbf', '[lbf_av]', 'ucum-2.2'],

  'm2/min': ['square metre per minute', 'm²/min', 'm2/min', 'ucum-2.2'],
  'm2/h': ['square metre per hour', 'm²/h', 'm2/h', 'ucum-2.2'],
  'ft2/min': ['square foot per minute', 'ft²/min', '[sft_i]/min', 'ucum-2.2'],
  'ft2/h': ['square foot per hour', 'ft²/h', '[sft_i]/h', 'ucum-2.2'],

  'l/min': ['litre per minute', 'L/min', 'L/min', 'ucum-2.2'],
  'm3/h': ['cubic metre per hour', 'm³/h', 'm3/h', 'ucum-2.2'],
  'ft3/min': ['cubic foot per minute', 'ft³/min', '[cft_i]/min', 'ucum-2.2'],

  'm/s': ['metre per second', 'm/s', 'm/s', 'ucum-2.2'],
  'km/h': ['kilometre per hour', 'km/h', 'km/h', 'ucum-2.2'],
  mph: ['mile per hour', 'mph', '[mi_i]/h', 'ucum-2.2'],

  'g/m2/24h': ['gram per square metre in 24 hours', 'g/m²/24 h', 'g/m2/d', 'ucum-2.2'],
  'lb/1000ft2/24h': [
    'pound per 1000 square feet in 24 hours',
    'lb/1000 ft²/24 h',
    '[lb_av]/(1000.[sft_i])/d',
    'ucum-2.2',
  ],

  'kg/m2/h': ['kilogram per square metre and hour', 'kg/m²/h', 'kg/m2/h', 'ucum-2.2'],
  'lb/ft2/h': ['pound per square foot and hour', 'lb/ft²/h', '[lb_av]/[sft_i]/h', 'ucum-2.2'],

  'ng/s/m2/Pa': ['nanogram per second, square metre and pascal', 'ng/s/m²/Pa', 'ng/s/m2/Pa', 'ucum-2.2'],
  perm: ['US perm: grain per hour, square foot and inch of mercury at 0 °C', 'perm', '', 'gnu-units-2.22'],

  'kJ/mol': ['kilojoule per mole', 'kJ/mol', 'kJ/mol', 'ucum-2.2'],
  'g/eq': ['gram per equivalent', 'g/eq', 'g/eq', 'ucum-2.2'],

  'g/mol': ['gram per mole', 'g/mol', 'g/mol', 'ucum-2.2'],
  'mgKOH/g': ['milligram of potassium hydroxide per gram', 'mg KOH/g', '', 'definition'],
  '1/s': ['per second', '1/s', '/s', 'ucum-2.2'],
  '1/min': ['per minute', '1/min', '/min', 'ucum-2.2'],
  '1/h': ['per hour', '1/h', '/h', 'ucum-2.2'],
  'J/g': ['joule per gram', 'J/g', 'J/g', 'ucum-2.2'],
  'kJ/kg': ['kilojoule per kilogram', 'kJ/kg', 'kJ/kg', 'ucum-2.2'],
  'J/g/K': ['joule per gram and kelvin', 'J/g/K', 'J/g/K', 'ucum-2.2'],
  'kJ/kg/K': ['kilojoule per kilogram and kelvin', 'kJ/kg/K', 'kJ/kg/K', 'ucum-2.2'],

  deg: ['degree of angle', 'deg', 'deg', 'ucum-2.2'],
  rad: ['radian', 'rad', 'rad', 'ucum-2.2'],
};

/** The base unit of each kind, in which its definitions are given. */
export const BASE_UNITS: Readonly<Record<DimensionName, string>> = {
  length: 'm',
  area: 'm²',
  volume: 'm³',
  mass: 'kg',
  time: 's',
  temperature: '°C',
  'temperature difference': 'K',
  share: '1',
  'spread rate': 'm²/m³',
  'mass per area': 'kg/m²',
  density: 'kg/m³',
  pressure: 'Pa',
  force: 'N',
  'work rate': 'm²/s',
  flow: 'm³/s',
  speed: 'm/s',
  'vapour emission': 'g/m²/24 h',
  permeance: 'ng/s/m²/Pa',
  'molar energy': 'kJ/mol',
  'equivalent weight': 'g/eq',
  'molar mass': 'g/mol',
  'hydroxyl number': 'mg KOH/g',
  'rate constant': '1/s',
  'heat per mass': 'J/g',
  'specific heat': 'J/(g·K)',
  angle: 'rad',
};
