/** Our units as expressions of GNU units, and the program itself where the machine has it. */
import { spawnSync } from 'node:child_process';
import { pairs } from './definitions.ts';

/** A product after `/` belongs to the divisor there. Temperatures are functions, not units. */
export const EXPRESSIONS: Readonly<Record<string, string>> = {
  um: 'um',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  mil: 'mil',
  in: 'inch',
  ft: 'foot',
  yd: 'yard',
  mm2: 'mm^2',
  cm2: 'cm^2',
  m2: 'm^2',
  in2: 'inch^2',
  ft2: 'foot^2',
  yd2: 'yard^2',
  ml: 'ml',
  l: 'liter',
  m3: 'm^3',
  in3: 'inch^3',
  ft3: 'foot^3',
  yd3: 'yard^3',
  usfloz: 'usfloz',
  uspt: 'uspint',
  usqt: 'usquart',
  usgal: 'usgallon',
  impfloz: 'brfloz',
  imppt: 'brpint',
  impqt: 'brquart',
  impgal: 'brgallon',
  mg: 'mg',
  g: 'gram',
  kg: 'kg',
  t: 'tonne',
  oz: 'ounce',
  lb: 'pound',
  s: 's',
  min: 'minute',
  h: 'hour',
  d: 'day',
  degC: 'tempC',
  degF: 'tempF',
  K: 'tempK',
  deltaC: 'degC',
  deltaF: 'degF',
  '%': '0.01',
  fraction: '1',
  'm2/l': 'm^2 / liter',
  'ft2/usgal': 'foot^2 / usgallon',
  'ft2/impgal': 'foot^2 / brgallon',
  'g/m2': 'gram / m^2',
  'kg/m2': 'kg / m^2',
  'lb/ft2': 'pound / foot^2',
  'lb/yd2': 'pound / yard^2',
  'g/ml': 'gram / ml',
  'kg/l': 'kg / liter',
  'kg/m3': 'kg / m^3',
  'g/l': 'gram / liter',
  'lb/usgal': 'pound / usgallon',
  'lb/impgal': 'pound / brgallon',
  'lb/ft3': 'pound / foot^3',
  Pa: 'Pa',
  hPa: 'hPa',
  kPa: 'kPa',
  MPa: 'MPa',
  bar: 'bar',
  psi: 'psi',
  inHg: 'inHg',
  mmHg: 'mmHg',
  N: 'N',
  kN: 'kN',
  lbf: 'lbf',
  'm2/min': 'm^2 / minute',
  'm2/h': 'm^2 / hour',
  'ft2/min': 'foot^2 / minute',
  'ft2/h': 'foot^2 / hour',
  'l/min': 'liter / minute',
  'm3/h': 'm^3 / hour',
  'ft3/min': 'foot^3 / minute',
  'g/m2/24h': 'gram / m^2 day',
  'lb/1000ft2/24h': 'pound / 1000 foot^2 day',
  'ng/s/m2/Pa': 'ng / s m^2 Pa',
  perm: 'perm_0C',
  deg: 'degree',
  rad: 'radian',
};

/** What is converted for a pair: one, or on a scale of temperature a warm day. */
export const asked = ({ name }: { readonly name: string }): number => (name === 'temperature' ? 290 : 1);

/** The pairs that the program can answer, by name `from to`. */
export const gnuPairs = pairs.filter(({ from, to }) => from in EXPRESSIONS && to in EXPRESSIONS);

/** The version of the program on this machine, or nothing. */
export function gnuVersion(): string | undefined {
  const { stdout } = spawnSync('units', ['--version'], { encoding: 'utf8' });
  return (stdout as string | null)?.split('\n')[0];
}

/** What the program answers for every pair, by name. */
export function askGnuUnits(): Record<string, number> {
  const expression = (unit: string) => EXPRESSIONS[unit] ?? '';
  const questions = gnuPairs.flatMap((pair) => [
    pair.name === 'temperature' ? `${expression(pair.from)}(${asked(pair)})` : expression(pair.from),
    expression(pair.to),
  ]);
  const { stdout } = spawnSync('units', ['--terse', '--quiet', '--output-format', '%.17g'], {
    input: `${questions.join('\n')}\n`,
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C.UTF-8' },
  });
  const answers = stdout.trim().split('\n').map(Number);
  return Object.fromEntries(gnuPairs.map(({ from, to }, i) => [`${from} ${to}`, answers[i] ?? NaN]));
}
