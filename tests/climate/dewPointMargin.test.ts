import { describe, expect, it } from 'vitest';
import { ambientLimits, dewPointMargin } from '../../src/climate/index.ts';
import { q } from '../support/quantity.ts';

/** Air that is saturated has its dew point at its own temperature. */
const saturated = q(100, '%');
const verdictAt = (air: number, surface: number, unit: 'degC' | 'degF' | 'K', limit: 3 | 5) =>
  dewPointMargin({
    air: q(air, unit),
    relativeHumidity: saturated,
    surface: q(surface, unit),
    limit: limit === 3 ? q(3, 'deltaC') : q(5, 'deltaF'),
  }).verdict;

describe('a reading exactly on the margin meets it, a thousandth of a degree below fails', () => {
  it.each([
    ['degC', 3, 3],
    ['K', 3, 3],
    ['degF', 5.4, 3],
    ['degF', 5, 5],
    ['degC', 25 / 9, 5],
    ['K', 25 / 9, 5],
  ] as const)('read in %s: %d of it against a limit of %d', (unit, margin, limit) => {
    const [least, most] = { degC: [-20, 60], degF: [-4, 140], K: [253.15, 333.15] }[unit] as [number, number];
    for (let air = least; air <= most; air += 0.1) {
      expect(verdictAt(air, air + margin, unit, limit), `${air}`).toBe('meets');
      expect(verdictAt(air, air + margin - 0.001, unit, limit), `${air}`).toBe('fails');
    }
  });
});

it('2.9 °C meet the margin of US practice and fail that of ISO, each answered in its own unit', () => {
  const reading = { air: q(12, 'degC'), relativeHumidity: saturated, surface: q(14.9, 'degC') };
  const us = dewPointMargin({ ...reading, limit: q(5, 'deltaF') });
  const iso = dewPointMargin({ ...reading, limit: q(3, 'deltaC') });
  expect([us.verdict, iso.verdict]).toEqual(['meets', 'fails']);
  expect([us.limit, iso.limit]).toEqual([q(5, 'deltaF'), q(3, 'deltaC')]);
  expect(us.gap.value).toBeCloseTo(0.22, 12);
  expect(iso.gap.value).toBeCloseTo(-0.1, 12);
});

it.each([
  ['airError', { airError: q(1, 'deltaC') }],
  ['relativeHumidityError', { relativeHumidityError: q(5, '%') }],
  ['surfaceError', { surfaceError: q(1, 'deltaF') }],
] as const)('%s alone leaves a close margin undecided on both sides of the limit', (_, error) => {
  for (const surface of [12.9, 13.3]) {
    const reading = { air: q(12, 'degC'), relativeHumidity: q(88, '%'), surface: q(surface, 'degC') };
    const limit = q(3, 'deltaC');
    const close = dewPointMargin({ ...reading, limit, ...error });
    expect(dewPointMargin({ ...reading, limit }).verdict).toBe(surface < 13.08 ? 'fails' : 'meets');
    expect(close.verdict).toBe('undecided');
    expect(close.uncertainty?.value).toBeGreaterThan(0);
    expect(close.cautions[0]?.code).toBe('dew-margin-undecided');
  }
});

describe('bad input', () => {
  const reading = {
    air: q(20, 'degC'),
    relativeHumidity: q(60, '%'),
    surface: q(18, 'degC'),
    limit: q(3, 'deltaC'),
  };
  it.each([
    [{ relativeHumidity: q(101, '%') }, /relativeHumidity must be a share above 0 % and up to 100 %/],
    [{ relativeHumidity: q(60, 'fraction') }, /relativeHumidity/],
    [{ relativeHumidity: q(0, '%') }, /relativeHumidity/],
    [{ limit: q(3, 'degC') }, /limit must be a temperature difference/],
    [{ limit: q(-3, 'deltaC') }, /limit/],
    [{ surface: q(3, 'deltaC') }, /surface must be a temperature/],
    [{ surface: q(150, 'degC') }, /surface/],
    [{ relativeHumidityError: q(60, '%') }, /relativeHumidityError/],
    [{ surfaceError: q(30, 'deltaC') }, /surfaceError/],
  ] as const)('refuses %o by name', (change, message) => {
    expect(() => dewPointMargin({ ...reading, ...(change as object) })).toThrow(message);
  });
});

it('every limit of the product is undecided within the error of its instrument', () => {
  const answer = ambientLimits({
    readings: {
      air: q(50, 'degF'),
      relativeHumidity: q(84, '%'),
      surface: q(10.2, 'degC'),
      material: q(19.8, 'degC'),
    },
    limits: {
      air: { least: q(50, 'degF') },
      relativeHumidity: { most: q(85, '%') },
      surface: { least: q(50, 'degF') },
      material: { least: q(20, 'degC') },
    },
    airError: q(0.1, 'deltaF'),
    relativeHumidityError: q(2, '%'),
    surfaceError: q(0.5, 'deltaC'),
    materialError: q(0.5, 'deltaC'),
  });
  expect(answer.findings.map(({ of, verdict }) => [of, verdict])).toEqual([
    ['air', 'undecided'],
    ['relativeHumidity', 'undecided'],
    ['surface', 'undecided'],
    ['material', 'undecided'],
  ]);
  expect(answer.verdict).toBe('undecided');
});
