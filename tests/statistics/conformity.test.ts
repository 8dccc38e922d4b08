/** Guard bands: what is accepted, rejected and left open, in every unit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../src/statistics/conformanceProbability.ts';
import { guardedConformity } from '../../src/statistics/guardedConformity.ts';
import { convert } from '../../src/units/convert.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const measured = (value: number, u: number) => ({ ...q(value, 'mil'), standardUncertainty: q(u, 'mil') });
const tenth = fc.integer({ min: 1, max: 400 }).map((n) => n / 10);

it('a value on the edge of the guard band is accepted in every unit', () => {
  fc.assert(
    fc.property(tenth, tenth, fc.constantFrom('um', 'mm', 'in', 'mil', 'm'), (least, band, unit) => {
      const value = convert({ quantity: q(least + band, 'mil'), unit });
      const reading = { ...value, standardUncertainty: q(1, 'um') };
      const { verdict, gap } = guardedConformity({
        measured: reading,
        least: q(least, 'mil'),
        guardBand: q(band, 'mil'),
      });
      expect(verdict).toBe('meets');
      expect(gap.value).toBeCloseTo(band, 9);
    }),
  );
});

it('an exact value on its limit conforms for certain in every unit', () => {
  fc.assert(
    fc.property(tenth, fc.constantFrom('um', 'mm', 'cm', 'in', 'mil', 'ft', 'm'), (limit, unit) => {
      const value = convert({ quantity: q(limit, 'mil'), unit });
      const reading = { ...value, standardUncertainty: q(0, 'um') };
      for (const end of ['least', 'most'] as const) {
        const chance = conformanceProbability({ measured: reading, [end]: q(limit, 'mil'), unit: '%' });
        expect(chance.value).toBe(100);
      }
    }),
  );
});

it('a verdict is right at least as often as it says', () => {
  fc.assert(
    fc.property(tenth, tenth, tenth, (value, least, u) => {
      const answer = guardedConformity({
        measured: measured(value, u),
        least: q(least, 'mil'),
        confidence: q(95, '%'),
      });
      const { value: percent } = answer.conformanceProbability;
      if (answer.verdict === 'meets') expect(percent).toBeGreaterThan(95 - 1e-6);
      else if (answer.verdict === 'fails') expect(percent).toBeLessThan(5 + 1e-6);
      else expect(percent > 5 - 1e-6 && percent < 95 + 1e-6).toBe(true);
    }),
  );
});

describe('a value between two limits', () => {
  it('is judged at the nearer one', () => {
    const answer = guardedConformity({
      measured: measured(11.5, 0.1),
      least: q(8, 'mil'),
      most: q(12, 'mil'),
      confidence: q(99, '%'),
    });
    expect([answer.verdict, answer.end, answer.limit]).toEqual(['meets', 'most', q(12, 'mil')]);
    expect(answer.acceptance.least?.value).toBeCloseTo(8.2326, 4);
    expect(answer.acceptance.most?.value).toBeCloseTo(11.7674, 4);
  });
  it('may be two names of one limit, in different units', () => {
    // (33.8 − 32) · 5/9 is a hair less than 1.
    const warm = { least: q(1, 'degC'), most: q(33.8, 'degF'), guardBand: q(0, 'deltaC') };
    const at = { ...q(1, 'degC'), standardUncertainty: q(0.1, 'deltaC') };
    expect(refusal(guardedConformity, { measured: at, ...warm })).toBe('');
    const thin = { least: q(1, 'mil'), most: q(25.4, 'um'), guardBand: q(0, 'mil') };
    expect(refusal(guardedConformity, { measured: measured(1, 0.1), ...thin })).toBe('');
    expect(refusal(guardedConformity, { measured: at, ...warm, least: q(1.001, 'degC') })).toBe(
      'conflict least',
    );
  });
  it('is less likely within than by one of them', () => {
    const both = conformanceProbability({
      measured: measured(10, 1),
      least: q(9, 'mil'),
      most: q(11, 'mil'),
      unit: '%',
    });
    expect(both.value).toBeCloseTo(68.268949, 5);
    const exact = { measured: measured(10, 0), least: q(10, 'mil'), unit: '%' } as const;
    expect(conformanceProbability(exact).value).toBe(100);
    expect(conformanceProbability({ ...exact, measured: measured(9.99, 0) }).value).toBe(0);
    const far = {
      measured: measured(0, 1),
      least: q(30, 'mil'),
      most: q(31, 'mil'),
      unit: 'fraction',
    } as const;
    expect(conformanceProbability(far).value).toBeCloseTo(4.9e-198, 198);
  });
});

it('temperatures have gaps and guard bands of differences', () => {
  const answer = guardedConformity({
    measured: { ...q(10, 'degC'), standardUncertainty: q(0.5, 'deltaC') },
    least: q(50, 'degF'),
    guardBand: q(0, 'deltaC'),
  });
  expect([answer.verdict, answer.measured.unit, answer.gap.unit]).toEqual(['meets', 'degF', 'deltaF']);
  expect(answer.gap.value).toBeCloseTo(0, 10);
});

it('refused is what cannot be judged', () => {
  const given = { measured: measured(10, 1), least: q(9, 'mil'), confidence: q(95, '%') };
  const off = (more: object) => refusal(guardedConformity, { ...given, ...more });
  expect(off({ least: undefined })).toBe('missing least');
  expect(off({ most: q(8, 'mil') })).toBe('conflict least');
  expect(off({ most: q(8, 'mm2') })).toBe('wrong-unit most');
  expect(off({ confidence: q(50, '%') })).toBe('out-of-range confidence');
  expect(off({ confidence: undefined })).toBe('missing confidence');
  expect(off({ guardBand: q(1, 'mil') })).toBe('conflict guardBand');
  expect(off({ measured: q(10, 'mil') })).toBe('missing measured.standardUncertainty');
});
