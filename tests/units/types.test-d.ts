/** What the compiler refuses, and what it knows of an answer. */
import {
  across,
  attempt,
  between,
  monotone,
  quantity,
  type Area,
  type Length,
  type Quantity,
  type Range,
} from 'coating-math/core';
import * as film from 'coating-math/film';
import * as units from 'coating-math/units';
import { convertExact } from 'coating-math/exact';
import { expectTypeOf, test } from 'vitest';

const mil = quantity(16, 'mil');
const warm = quantity(20, 'degC');
const warmer = quantity(77, 'degF');
const step = quantity(5, 'deltaC');

test('a quantity knows its unit', () => {
  expectTypeOf(mil).toEqualTypeOf<Quantity<'mil'>>();
  expectTypeOf(mil).toExtend<Length>();
  // @ts-expect-error a length is no area
  expectTypeOf(mil).toExtend<Area>();
  // @ts-expect-error no such unit
  quantity(1, 'gal');
  // @ts-expect-error text for a number
  quantity('1', 'mil');
});

test('conversions stay within a kind', () => {
  expectTypeOf(units.convert({ quantity: mil, unit: 'um' })).toEqualTypeOf<Quantity<'um'>>();
  // @ts-expect-error a thickness is no volume
  units.convert({ quantity: mil, unit: 'usgal' });
  // @ts-expect-error a temperature is no difference
  units.convert({ quantity: warm, unit: 'deltaF' });
  // @ts-expect-error a difference is no temperature
  units.convert({ quantity: step, unit: 'degC' });
  // @ts-expect-error a misspelt field
  units.convert({ quantity: mil, units: 'um' });
  // @ts-expect-error a bare number
  units.convert({ quantity: 16, unit: 'um' });
  expectTypeOf(convertExact({ quantity: mil, unit: 'um', digits: 30 })).toEqualTypeOf<string>();
  // @ts-expect-error a thickness is no volume
  convertExact({ quantity: mil, unit: 'usgal', digits: 30 });
});

test('arithmetic stays within a kind', () => {
  expectTypeOf(units.add({ quantity: mil, to: quantity(1, 'mm'), unit: 'um' })).toEqualTypeOf<
    Quantity<'um'>
  >();
  expectTypeOf(units.sum({ quantities: [mil, quantity(1, 'mm')], unit: 'um' })).toEqualTypeOf<
    Quantity<'um'>
  >();
  // @ts-expect-error a length and a volume
  units.add({ quantity: mil, to: quantity(1, 'l'), unit: 'l' });
  // @ts-expect-error an area among lengths
  units.sum({ quantities: [mil, quantity(1, 'm2')], unit: 'um' });
  // @ts-expect-error a length against an area
  units.compare({ quantity: mil, to: quantity(1, 'm2') });
  // @ts-expect-error a misspelt field
  units.scale({ quantity: mil, times: 2, unit: 'um' });
});

test('a unit of several kinds is of none', () => {
  const either = quantity<'m' | 'm2'>(1, 'm');
  // @ts-expect-error a length or an area, who knows
  units.convert({ quantity: either, unit: 'm2' });
  // @ts-expect-error an area against what may be a length
  units.compare({ quantity: quantity(1, 'm2'), to: either });
  // @ts-expect-error what may be a length against an area
  units.compare({ quantity: either, to: quantity(1, 'm2') });
  // @ts-expect-error a length or an area in a sum
  units.sum({ quantities: [either], unit: 'm' });
  // @ts-expect-error added to what may be a length
  units.add({ quantity: quantity(1, 'm2'), to: either, unit: 'm2' });
  const length = quantity<'m' | 'ft'>(1, 'm');
  expectTypeOf(units.convert({ quantity: length, unit: 'in' })).toEqualTypeOf<Quantity<'in'>>();
  expectTypeOf(units.sum({ quantities: [length, length], unit: 'in' })).toEqualTypeOf<Quantity<'in'>>();
});

test('attempt keeps the unit asked for', () => {
  const result = attempt(units.convert, { quantity: mil, unit: 'um' });
  if (result.ok) expectTypeOf(result.value).toEqualTypeOf<Quantity<'um'>>();
  const wet = attempt(film.wetThickness, { spreadRate: { value: 100, unit: 'ft2/usgal' }, unit: 'mil' });
  if (wet.ok) expectTypeOf(wet.value).toEqualTypeOf<Quantity<'mil'>>();
  const typed: unknown = {};
  const unchecked = attempt(film.wetThickness, typed);
  if (unchecked.ok) expectTypeOf(unchecked.value).toEqualTypeOf<Length>();
});

test('temperatures are points', () => {
  expectTypeOf(units.subtract({ quantity: warm, from: warmer, unit: 'deltaC' })).toEqualTypeOf<
    Quantity<'deltaC'>
  >();
  expectTypeOf(units.subtract({ quantity: step, from: warmer, unit: 'degC' })).toEqualTypeOf<
    Quantity<'degC'>
  >();
  expectTypeOf(units.add({ quantity: step, to: warm, unit: 'degF' })).toEqualTypeOf<Quantity<'degF'>>();
  // @ts-expect-error a point to a point
  units.add({ quantity: warm, to: warmer, unit: 'degC' });
  // @ts-expect-error between points lies a difference
  units.subtract({ quantity: warm, from: warmer, unit: 'degC' });
  // @ts-expect-error a point less a difference is a point
  units.subtract({ quantity: step, from: warmer, unit: 'deltaC' });
  // @ts-expect-error a point cannot be taken from a difference
  units.subtract({ quantity: warm, from: step, unit: 'deltaC' });
  // @ts-expect-error twice a point
  units.scale({ quantity: warm, by: 2, unit: 'degC' });
  // @ts-expect-error a sum of points
  units.sum({ quantities: [warm, warmer], unit: 'degC' });
});

test('the guard of a unit picker narrows text', () => {
  const picked = 'usgal' as string;
  if (units.isUnitOf('volume', picked)) {
    expectTypeOf(units.convert({ quantity: { value: 1, unit: picked }, unit: 'l' })).toEqualTypeOf<
      Quantity<'l'>
    >();
  }
  expectTypeOf(units.unitsOf('temperature')).toEqualTypeOf<readonly ('degC' | 'degF' | 'K')[]>();
  // @ts-expect-error no such kind
  units.unitsOf('lengths');
});

test('what is read is of the kind that was due', () => {
  expectTypeOf(
    units.parseQuantity({ text: '1', locale: 'en-US', dimension: 'length' }),
  ).toEqualTypeOf<Length>();
  expectTypeOf(
    units.parseQuantity({ text: '1', locale: 'en-US', statedUnit: 'mil' }),
  ).toEqualTypeOf<Length>();
  // @ts-expect-error the unit beside the field is of another kind
  units.parseQuantity({ text: '1', locale: 'en-US', dimension: 'length', statedUnit: 'usgal' });
  // @ts-expect-error a misspelt field
  units.parseQuantity({ text: '1', local: 'en-US' });
  // @ts-expect-error no language
  units.parseQuantity({ text: '1' });
  // @ts-expect-error another kind
  units.formatQuantity({ quantity: mil, locale: 'en-US', unit: 'usgal' });
});

test('ranges', () => {
  const rate = between(600, 800, 'ft2/usgal');
  const wet = across(film.wetThickness, { spreadRate: rate, unit: 'mil' });
  expectTypeOf(wet).toExtend<Range<'mil'>>();
  expectTypeOf(across(units.convert, { quantity: between(1, 2, 'mil'), unit: 'um' })).toExtend<Range<'um'>>();
  const half = monotone({ area: '+' }, ({ area }: { area: Area }): Quantity<'m2'> => ({
    value: area.value,
    unit: 'm2',
  }));
  expectTypeOf(across(half, { area: between(1, 2, 'm2') })).toExtend<Range<'m2'>>();
  // @ts-expect-error a range of another kind
  across(film.wetThickness, { spreadRate: between(1, 2, 'mil'), unit: 'mil' });
  // @ts-expect-error an answer of another kind
  across(film.wetThickness, { spreadRate: rate, unit: 'usgal' });
  // @ts-expect-error a misspelt field
  across(film.wetThickness, { spreadrate: rate, unit: 'mil' });
  // @ts-expect-error a direction for a field that is not there
  monotone({ volume: '+' }, ({ area }: { area: Area }): Quantity<'m2'> => ({
    value: area.value,
    unit: 'm2',
  }));

  /** Whatever formula of one quantity, doubled: infers for formulas that are themselves generic. */
  const twice = <F extends (input: never) => Quantity>(formula: F, input: Parameters<F>[0]): number =>
    formula(input).value * 2;
  expectTypeOf(
    twice(film.wetThickness, { spreadRate: quantity(100, 'ft2/usgal'), unit: 'mil' }),
  ).toEqualTypeOf<number>();
  // @ts-expect-error an area where a spread rate is due
  twice(film.wetThickness, { spreadRate: quantity(100, 'ft2'), unit: 'mil' });
});
