/** Agreement with the Unified Code for Units of Measure, for every unit that it shares. */
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/convert.ts';
import { describeUnit } from '../../src/units/describeUnit.ts';
import { kinds, pairs } from '../support/definitions.ts';

interface Ucum {
  convertUnitTo(from: string, value: number, to: string): { status: string; toVal: number };
  validateUnitString(code: string): { status: string };
}
const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  UcumLhcUtils: { getInstance(): Ucum };
};
const ucum = UcumLhcUtils.getInstance();
const codeOf = (unit: string) => describeUnit(unit as 'm').ucum ?? '';

const units = kinds.flatMap((kind) => kind.units);
it.each(units.filter(codeOf))('%s has a code that UCUM knows', (unit) => {
  expect(ucum.validateUnitString(codeOf(unit)).status).toBe('valid');
});

it('has a code for all but what UCUM defines otherwise or not at all', () => {
  // Columns of mercury are 2.9 ppm lower there, the perm is built on one, and differences have no unit of their own.
  expect(units.filter((unit) => !codeOf(unit))).toEqual(['deltaF', 'inHg', 'mmHg', 'perm', 'mgKOH/g']);
});

const shared = pairs.filter(({ from, to }) => codeOf(from) && codeOf(to));
describe.each(shared)('$from to $to', ({ name, from, to }) => {
  it('agrees', () => {
    const value = name === 'temperature' ? 290 : 1;
    const ours = convert({ quantity: { value, unit: from as 'm' }, unit: to as 'm' }).value;
    const { status, toVal } = ucum.convertUnitTo(codeOf(from), value, codeOf(to));
    expect(status).toBe('succeeded');
    expect(Math.abs(ours - toVal)).toBeLessThanOrEqual(
      name === 'temperature' ? 2e-12 : 1e-14 * Math.abs(ours),
    );
  });
});
