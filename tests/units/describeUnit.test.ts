import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { describeUnit } from '../../src/units/describeUnit.ts';
import { isUnitOf } from '../../src/units/isUnitOf.ts';
import { unitsOf } from '../../src/units/unitsOf.ts';
import { exactly, kinds } from '../support/definitions.ts';
import { decimal, minus, over } from '../support/rational.ts';
import { sources } from '../support/library.ts';

const units = kinds.flatMap((kind) => kind.units);
const described = units.map((unit) => describeUnit(unit as 'm'));

it('the published nomenclature says what the library says', async () => {
  await expect(`${JSON.stringify(described, null, 2)}\n`).toMatchFileSnapshot(
    '../../shared/nomenclature.json',
  );
});

it('the guide lists every unit', () => {
  const guide = readFileSync('docs/units.md', 'utf8');
  expect(units.filter((unit) => !guide.includes(`\`${unit}\``))).toEqual([]);
});

describe.each(described)('$unit', ({ name, symbol, source }) => {
  it('has a full name, a symbol of its own and a source in the register', () => {
    expect(name).not.toBe('');
    expect(described.filter((other) => other.symbol === symbol)).toHaveLength(1);
    expect(described.filter((other) => other.name === name)).toHaveLength(1);
    expect(sources).toHaveProperty([source]);
  });
});

/** The unit of a kind that is worth 1 of its base unit. */
const baseOf = (kind: string) =>
  described.find((one) => one.dimension === kind && one.definition.startsWith('1 '))?.unit;

const fractions = described.filter(
  ({ dimension, definition }) =>
    dimension !== 'temperature' && baseOf(dimension) !== undefined && /^[\d/]+ /.test(definition),
);
it.each(fractions)('$unit is defined by an exact fraction', ({ unit, dimension, definition }) => {
  const [top = '', bottom = '1'] = definition.split(' ')[0]?.split('/') ?? [];
  const [off] = minus(
    exactly([1n, 1n], unit, String(baseOf(dimension))),
    over(decimal(top), decimal(bottom)),
  );
  expect(off).toBe(0n);
});

it('defines scales of temperature by their zero', () => {
  expect(describeUnit('degF').definition).toBe('(x − 32) · 5/9 °C');
  expect(describeUnit('K').definition).toBe('(x − 5463/20) · 1 °C');
  expect(describeUnit('degC').definition).toBe('1 °C');
  expect(describeUnit('deg').definition).toBe('π/180 rad');
  expect(describeUnit('ft').definition).toBe('381/1250 m');
});

it.each(['gal', '', 'toString', undefined, null, 3, {}])('refuses to describe %s', (unit) => {
  expect(attempt(describeUnit, unit)).toMatchObject({
    ok: false,
    issues: [{ code: 'wrong-unit', path: ['unit'] }],
  });
});

it('lists the units of a kind and knows them again', () => {
  expect(unitsOf('temperature')).toEqual(['degC', 'degF', 'K']);
  for (const unit of unitsOf('volume')) expect(isUnitOf('volume', unit)).toBe(true);
  for (const other of ['gal', 'mil', '', 'toString', undefined, null, 7, {}]) {
    expect(isUnitOf('volume', other)).toBe(false);
  }
});

it.each(['lengths', '', 'toString', undefined, null, 3, {}, Object.create(null)])(
  'refuses the kind %o',
  (kind) => {
    const refused = { ok: false, issues: [{ code: 'out-of-range', path: ['dimension'] }] };
    expect(attempt(unitsOf, kind)).toMatchObject(refused);
    expect(attempt((name: 'length') => isUnitOf(name, 'm'), kind)).toMatchObject(refused);
  },
);
