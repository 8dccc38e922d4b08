import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { LENGTH } from '../../src/core/dimensions.ts';
import { ABSOLUTE, POSITIVE } from '../../src/core/limits.ts';
import type { Length, Temperature } from '../../src/core/quantity.ts';
import { fields, read, readOr, write } from '../../src/core/read.ts';
import { readTemperature, writeTemperature } from '../../src/core/temperature.ts';

const refused = (code: string, path: unknown[]) => ({ ok: false, issues: [{ code, path, function: 'f' }] });

describe('a quantity', () => {
  const film = (given: unknown) =>
    attempt(() => read('f', 'film', given as Length, LENGTH, POSITIVE, ['coats', 0]), 0);

  it('is read into base units and written back', () => {
    expect(film({ value: 2, unit: 'mm' })).toEqual({ ok: true, value: 0.002 });
    expect(write('f', 0.002, LENGTH, 'mm')).toEqual({ value: 2, unit: 'mm' });
    expect(readOr(7, 'f', 'film', undefined, LENGTH, POSITIVE)).toBe(7);
    expect(readOr(7, 'f', 'film', { value: 2, unit: 'm' }, LENGTH, POSITIVE)).toBe(2);
  });

  it.each([
    [undefined, 'missing'],
    [null, 'not-a-quantity'],
    [{ value: '2', unit: 'mm' }, 'not-a-quantity'],
    [{ value: 2, unit: 'l' }, 'wrong-unit'],
    [{ value: 2, unit: ['mm'] }, 'wrong-unit'],
    [{ value: 2, unit: Object.create(null) as object }, 'wrong-unit'],
    [{ value: 0, unit: 'mm' }, 'out-of-range'],
    [{ value: NaN, unit: 'mm' }, 'not-finite'],
    [{ value: Infinity, unit: 'mm' }, 'not-finite'],
  ])('%o is refused', (given, code) => {
    expect(film(given)).toMatchObject(refused(code, ['coats', 0, 'film']));
  });

  it('that refers to itself is refused like any other', () => {
    const round: Record<string, unknown> = { value: 1 };
    round.unit = round;
    expect(film(round)).toMatchObject(refused('wrong-unit', ['coats', 0, 'film']));
  });

  it('no double can hold is refused', () => {
    expect(attempt(() => write('f', 1e308, LENGTH, 'um'), 0)).toMatchObject(refused('too-large', []));
    expect(attempt(() => write('f', 1, LENGTH, 'l' as 'm'), 0)).toMatchObject(
      refused('wrong-unit', ['unit']),
    );
    expect(attempt(() => fields('f', null as unknown as object), 0)).toMatchObject(refused('missing', []));
  });
});

describe('a temperature', () => {
  const air = (given: unknown) =>
    attempt(() => readTemperature('f', 'air', given as Temperature, ABSOLUTE), 0);

  it('is read into °C and written on every scale', () => {
    expect(air({ value: 77, unit: 'degF' })).toEqual({ ok: true, value: 25 });
    expect(air({ value: 0, unit: 'K' })).toEqual({ ok: true, value: -273.15 });
    expect(writeTemperature('f', 25, 'degF')).toEqual({ value: 77, unit: 'degF' });
    expect(writeTemperature('f', 0, 'K')).toEqual({ value: 273.15, unit: 'K' });
  });

  it.each([
    [{ value: -1, unit: 'K' }, 'out-of-range'],
    [{ value: 5, unit: 'deltaC' }, 'wrong-unit'],
    [undefined, 'missing'],
  ])('%o is refused', (given, code) => {
    expect(air(given)).toMatchObject(refused(code, ['air']));
  });
});
