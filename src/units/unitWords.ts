/** The words people type and say for units, in English and Spanish, without spaces, dots and accents. */
import type { Unit } from '../core/dimensionOf.ts';
import { UNIT_NAMES } from './unitNames.ts';

/** Words beside code and symbol of a unit. A word that stands in several lines may mean each of them. */
const WORDS: Partial<Readonly<Record<Unit, string>>> = {
  um: 'μ micron microns micrometre micrometres micrometer micrometers micra micras',
  mm: 'millimetre millimetres millimeter millimeters milimetro milimetros',
  cm: 'centimetre centimetres centimeter centimeters centimetro centimetros',
  m: 'metre metres meter meters metro metros',
  mil: 'mils thou milesima milesimas',
  in: '" ins inch inches pulgada pulgadas pulg',
  ft: "' foot feet pie pies",
  yd: 'yds yard yards yarda yardas',
  ft2: 'sf',
  yd2: 'sy',
  ml: 'cc cm3 millilitre millilitres milliliter milliliters mililitro mililitros',
  l: 'dm3 ltr litre litres liter liters litro litros',
  ft3: 'cf',
  yd3: 'cy',
  usfloz: 'floz fluidoz fluidounce fluidounces onzaliquida onzasliquidas oz ozs ounce ounces onza onzas',
  impfloz: 'floz fluidoz fluidounce fluidounces onzaliquida onzasliquidas oz ozs ounce ounces onza onzas',
  uspt: 'pt pts pint pints pinta pintas',
  imppt: 'pt pts pint pints pinta pintas',
  usqt: 'qt qts quart quarts cuarto cuartos',
  impqt: 'qt qts quart quarts cuarto cuartos',
  usgal: 'gal gals gallon gallons galon galones',
  impgal: 'gal gals gallon gallons galon galones',
  mg: 'milligram milligrams miligramo miligramos',
  g: 'gm gram grams gramo gramos',
  kg: 'kgs kilo kilos kilogram kilograms kilogramo kilogramos',
  t: 'tonne tonnes metricton metrictons',
  oz: 'wtoz ozbyweight ouncesbyweight ozs ounce ounces onza onzas',
  lb: 'lbs pound pounds libra libras',
  s: 'sec secs second seconds segundo segundos',
  min: 'mins minute minutes minuto minutos',
  h: 'hr hrs hour hours hora horas',
  d: 'day days dia dias',
  degC: '° degree degrees grado grados c degreec degreesc degreecelsius degreescelsius celsius centigrade gradosc',
  degF: '° degree degrees grado grados f degreef degreesf degreefahrenheit degreesfahrenheit fahrenheit gradosf',
  K: 'kelvin kelvins',
  deltaC: '° degree degrees grado grados',
  deltaF: '° degree degrees grado grados',
  deg: '° degree degrees grado grados',
  '%': 'percent pct porciento %rh',
  'g/m2': 'gsm',
  psi: 'lbf/in2 lb/in2',
  MPa: 'N/mm2',
  hPa: 'mbar millibar millibars',
  bar: 'bars',
  inHg: '"Hg inchesofmercury',
  perm: 'perms usperm usperms',
  N: 'newton newtons',
  kN: 'kilonewton kilonewtons',
  lbf: 'poundforce poundsforce',
  'l/min': 'lpm',
  'ft3/min': 'cfm',
  'km/h': 'kph',
  rad: 'radian radians',
};

/** What a unit can also stand for where the kind of quantity is known and it is of another kind. */
const OTHERWISE: Partial<Readonly<Record<Unit, readonly Unit[]>>> = {
  degC: ['deltaC'],
  degF: ['deltaF'],
  K: ['deltaC'],
  deg: ['degC', 'degF', 'deltaC', 'deltaF'],
  lb: ['lbf'],
};

/** Parts of units that are no units themselves. */
const PARTS = ['ng', 'kJ', 'mol', 'eq'];
/** The longest unit has so many parts. */
const MOST_PARTS = 4;

/** In other cases these would be a thousand, a million or a thousand million times as much. */
const CASE_MATTERS = ['mg', 'MPa', 'K'];

const meanings = new Map<string, string[]>();

function learn(word: string, code: string): void {
  const known = meanings.get(word) ?? [];
  if (!known.includes(code)) meanings.set(word, [...known, code]);
}

function learnAll(): void {
  for (const [code, [, symbol]] of Object.entries(UNIT_NAMES)) {
    for (const word of [code, wordOf(symbol), ...(WORDS[code as Unit]?.split(' ') ?? [])]) {
      learn(word, code);
      if (!CASE_MATTERS.includes(word)) learn(word.toLowerCase(), code);
    }
  }
  for (const part of PARTS) learn(part.toLowerCase(), part);
}

/**
 * A unit as it was written, with `/` for "per" and for a product below it, and without accents, dots, brackets and the
 * spaces that mean nothing.
 */
export function wordOf(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\u0301/g, '')
    .replace(/ (?:per|por) /gi, '/')
    .replace(/(?<=\/.*) ?[·⋅] ?/g, '/')
    .replace(/(?<=\p{L}) ?\^ ?(?=\d)/gu, '')
    .replace(/[.,()]/g, '')
    .trim()
    .replace(/(?<!\p{L}) | (?!\d)/gu, '');
}

/** The units that a word may mean: all of `sure`, or of `otherwise` where none of those is of the kind due. */
export function unitsMeant(word: string): { sure: readonly Unit[]; otherwise: readonly Unit[] } {
  if (meanings.size === 0) learnAll();
  const whole = codesOf(word);
  const codes = whole.length > 0 ? whole : quotientsOf(word.split('/'));
  const sure = codes.filter((code): code is Unit => Object.hasOwn(UNIT_NAMES, code));
  return { sure, otherwise: sure.flatMap((code) => OTHERWISE[code] ?? []) };
}

/** What parts between `/` may mean together: a unit of that code, or one that is also called so. */
function quotientsOf(parts: readonly string[]): readonly string[] {
  if (parts.length > MOST_PARTS) return [];
  return parts
    .map((part) => codesOf(part).map((code) => (code === 'd' ? '24h' : code)))
    .reduce((all, part) => all.flatMap((before) => part.map((code) => `${before}/${code}`)))
    .flatMap((quotient) => meanings.get(quotient.toLowerCase()) ?? []);
}

/** The codes of a word without `/`, or of a part between two of them. */
function codesOf(word: string): readonly string[] {
  const lower = word.toLowerCase();
  const key = CASE_MATTERS.some((code) => code.toLowerCase() === lower) ? word : lower;
  return meanings.get(key) ?? powersOf(key) ?? ofCountry(key) ?? manyOf(key);
}

/** `sqft`, `squarefeet`, `ft2`; `cuft`, `cubicfeet`, `ft3`. */
function powersOf(word: string): readonly string[] | undefined {
  const square = /^(?:square|sq)(\p{L}+)$|^(\p{L}+)(?:2|squared|cuadrados?)$/u.exec(word);
  const cube = /^(?:cubic|cu)(\p{L}+)$|^(\p{L}+)(?:3|cubed|cubicos?)$/u.exec(word);
  const found = square ?? cube;
  const side = meanings.get(found?.[1] ?? found?.[2] ?? '');
  return side?.flatMap((code) => meanings.get(code + (square ? '2' : '3')) ?? []);
}

/** `usgallons`, `gallonsus`, `imperialpint`: measures that differ between the countries, and only those. */
function ofCountry(word: string): readonly string[] | undefined {
  const before = /^(us|imperial|imp|uk)(\p{L}+)$/u.exec(word);
  const after = /^(\p{L}+?)(us|imperial|imp|uk)$/u.exec(word);
  const [country, measure] = before ? [before[1], before[2]] : [after?.[2], after?.[1]];
  const codes = meanings.get(measure ?? '');
  if (!codes?.every((code) => code.startsWith('us') || code.startsWith('imp'))) return undefined;
  return codes.filter((code) => code.startsWith('us') === (country === 'us'));
}

/** `1000sqft`, `24hours`. */
function manyOf(word: string): readonly string[] {
  const found = /^(1000|24)(\D.*)$/.exec(word);
  return found ? codesOf(found[2] ?? '').map((code) => `${String(found[1])}${code}`) : [];
}
