import { factorOf, type Dimension } from '../core/dimension.ts';
import {
  dimensionOf,
  scaleOf,
  type DimensionName,
  type SameKind,
  type Unit,
  type UnitScale,
  type UnitsByDimension,
} from '../core/dimensionOf.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import type { InputErrorCode } from '../core/InputError.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, refuse, unitsOf } from '../core/read.ts';
import { dimensionNamed, dimensionOfUnit, nameOf } from './dimensionNamed.ts';
import { numberAt, plainDigits } from './numberAt.ts';
import { numberStyle, type NumberStyle } from './numberStyle.ts';
import { plainText } from './plainText.ts';
import { unitsMeant, wordOf } from './unitWords.ts';
import { answer } from './valueIn.ts';

/** Input of {@link parseQuantity}. */
export interface ParseQuantityInput<
  D extends DimensionName = DimensionName,
  U extends UnitsByDimension[D] = UnitsByDimension[D],
> {
  /** What was typed or said. */
  readonly text: string;
  /** Language tag that says how numbers are written, such as `'en-US'`; never taken from the machine. */
  readonly locale: string;
  /** Kind of quantity that is due; any kind where left out. */
  readonly dimension?: D | undefined;
  /** What a number without unit, or with a unit of several meanings, is in: the unit beside the field. */
  readonly statedUnit?: U | undefined;
}

/** The units of the kind of each unit. */
type EachKind<U extends Unit> = U extends Unit ? SameKind<U> : never;

const fn = 'parseQuantity';
/** Nobody types more for one quantity; the smallest and the largest double are written with fewer. */
const MOST_SIGNS = 600;

/** What the caller says of the quantity before it is read. */
interface Due {
  readonly text: string;
  readonly kind: Dimension<string> | undefined;
  readonly stated: Unit | undefined;
}

/** A number and the unit it was written with. */
interface Term {
  readonly value: number;
  readonly unit: Unit;
}

/** The unit of a number that follows a larger unit without one of its own. */
const NEXT_SMALLER: Partial<Readonly<Record<Unit, Unit>>> = { ft: 'in', h: 'min' };

/**
 * Reads a quantity as people type and say it: decimals and fractions, feet and inches, units by code, symbol or word.
 *
 * What may mean two things is refused as `ambiguous`, with the unit codes to choose from in `expected`: `16 oz`,
 * `2 gal`, `5°` and a bare number, unless `dimension` or `statedUnit` decides. A larger and a smaller unit together,
 * as in feet and inches, are answered in the smaller one.
 *
 * @param input - The text, the language of its numbers, and what is known of the quantity.
 * @returns The quantity in the unit in which it was written.
 * @throws An `InputError` whose path is `text` or the field that was wrong.
 * @example
 * ```ts
 * import * as units from 'coating-math/units';
 *
 * units.parseQuantity({ text: `12' 6 1/2"`, locale: 'en-US' }); // => { value: 150.5, unit: 'in' }
 * units.parseQuantity({ text: '3,785 l', locale: 'de-DE' }); // => { value: 3.785, unit: 'l' }
 * units.parseQuantity({ text: '16 oz', locale: 'en-US', statedUnit: 'usfloz' }); // => { value: 16, unit: 'usfloz' }
 * units.parseQuantity({ text: '16 oz', locale: 'en-US' }); // throws InputError
 * ```
 */
export function parseQuantity<
  D extends DimensionName = DimensionName,
  U extends UnitsByDimension[D] = UnitsByDimension[D],
>(input: ParseQuantityInput<D, U>): Quantity<EachKind<U>> {
  const { text, locale, dimension, statedUnit } = fields(fn, input);
  const style = numberStyle(fn, locale);
  const due = { text: checkText(text), kind: kindDue(dimension, statedUnit), stated: statedUnit };

  const plain = plainDigits(plainText(text), style);
  const [sign = '', below0] = /^(?:(-|minus |menos )|\+)? ?/i.exec(plain) ?? [];
  const { value, unit } = inSmallest(termsOf(plain.slice(sign.length), style, due), due);
  const quantity = answer(fn, below0 === undefined ? value : -value, unit, ['text']);
  return quantity as Quantity<EachKind<U>>;
}

function checkText(text: unknown): string {
  const no = (code: InputErrorCode) =>
    refuse(fn, code, ['text'], `a text of at most ${MOST_SIGNS} signs`, text);
  if (typeof text !== 'string') return no(text === undefined ? 'missing' : 'wrong-type');
  return text.length > MOST_SIGNS ? no('out-of-range') : text;
}

/** The kind of quantity due, if the caller says one. */
function kindDue(name: DimensionName | undefined, stated: Unit | undefined): Dimension<string> | undefined {
  const kind = name === undefined ? undefined : dimensionNamed(fn, name);
  if (stated === undefined) return kind;
  const statedKind = dimensionOfUnit(fn, stated, 'statedUnit');
  if (kind !== undefined && kind !== statedKind) {
    refuse(fn, 'conflict', ['statedUnit'], `a unit of ${nameOf(kind)}`, stated);
  }
  return statedKind;
}

/** Every number of the text with its unit. */
function termsOf(text: string, style: NumberStyle, due: Due): Term[] {
  const terms: Term[] = [];
  let at = 0;
  do {
    const number = numberAt(text, at, style);
    if (!number) {
      const sample = style.grouped(1234n) + style.decimal + '5';
      return no(due, 'not-a-quantity', `a number as in ${style.locale}, such as ${sample}, with its unit`);
    }
    const rest = text.slice(number.end);
    // A unit may have digits in it, so it is first tried whole.
    const last = unitsMeant(wordOf(rest)).sure.length > 0;
    const written = last ? rest : (/^\D*/.exec(rest)?.[0] ?? '');
    at = number.end + written.length;
    // With a space beside it, it may as well be a minus or mean "up to".
    if (at < text.length && / -|- /.test(written)) {
      return no(due, 'ambiguous', 'one quantity, a hyphen in it without spaces');
    }
    const word = at < text.length ? written.replace(/(?:-|,| and| y) ?$/, '') : written;
    // Thousands of another language, "up to", feet and inches: two bare numbers say nothing of it.
    if (at < text.length && wordOf(word) === '') {
      return no(due, 'ambiguous', 'one number, or each with its unit');
    }
    terms.push({ value: number.value, unit: unitOf(wordOf(word), terms.at(-1), due) });
  } while (at < text.length);
  return terms;
}

/** The one unit that a word means, or a refusal with the units to choose from. */
function unitOf(word: string, previous: Term | undefined, due: Due): Unit {
  const kind = due.kind ?? (previous && dimensionOf(previous.unit));
  const stated = previous?.unit ?? due.stated;
  if (word === '') {
    const unit = previous ? NEXT_SMALLER[previous.unit] : stated;
    return unit ?? no(due, 'ambiguous', kind === undefined ? 'a number with its unit' : unitsFor(kind));
  }
  const { sure, otherwise } = unitsMeant(word);
  const ofKind = (units: readonly Unit[]) =>
    kind === undefined ? units : units.filter((unit) => dimensionOf(unit) === kind);
  const meant = ofKind(sure).length > 0 || kind === undefined ? ofKind(sure) : ofKind(otherwise);
  const [only, second] = meant;
  if (!only)
    return no(
      due,
      'wrong-unit',
      kind === undefined ? 'a number with a unit of this library' : unitsFor(kind),
    );
  if (!second) return only;
  const [chosen, rival] = meant.filter((unit) => unit === stated || sameCountry(unit, stated));
  return chosen && !rival ? chosen : no(due, 'ambiguous', `one of ${meant.join(', ')}`);
}

/** Whether two units are both US or both imperial measures. */
function sameCountry(unit: Unit, stated: Unit | undefined): boolean {
  const country = /\b(?:us|imp)/.exec(unit)?.[0];
  return country !== undefined && country === /\b(?:us|imp)/.exec(stated ?? '')?.[0];
}

function unitsFor(dimension: Dimension<string>): string {
  return `${dimension.kind} in one of ${unitsOf(dimension)}`;
}

/** All terms together in the unit of the last, as 12 ft 6 in are 150 in. */
function inSmallest(terms: readonly Term[], due: Due): Term {
  return terms.reduce((larger, smaller) => {
    const { dimension, factor } = scaleOf(smaller.unit) as UnitScale;
    const ratio = (factorOf(dimension, larger.unit) ?? NaN) / factor;
    const times = Math.round(ratio);
    const fits =
      dimension.kind !== TEMPERATURE.kind &&
      Math.abs(ratio - times) < 1e-9 * times &&
      times > 1 &&
      Number.isInteger(larger.value) &&
      smaller.value < times;
    if (!fits) no(due, 'conflict', 'whole larger units followed by fewer smaller ones than make up one');
    return { value: larger.value * times + smaller.value, unit: smaller.unit };
  });
}

function no(due: Due, code: InputErrorCode, expected: string): never {
  return refuse(fn, code, ['text'], expected, due.text);
}
