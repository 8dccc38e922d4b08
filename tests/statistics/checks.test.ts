/** What checks make of the errors of their readings: bounds, or standard uncertainties with a level of confidence. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ambientLimits } from '../../src/climate/ambientLimits.ts';
import { dewPoint } from '../../src/climate/dewPoint.ts';
import { dewPointMargin } from '../../src/climate/dewPointMargin.ts';
import { layingWindows } from '../../src/climate/layingWindows.ts';
import { appliedThickness } from '../../src/film/appliedThickness.ts';
import { asApplied } from '../../src/inspect/asApplied.ts';
import { calciumChlorideTest } from '../../src/moisture/calciumChlorideTest.ts';
import { emissionRate } from '../../src/moisture/emissionRate.ts';
import { inSlabHumidityTest } from '../../src/moisture/inSlabHumidityTest.ts';
import { membranePermeance } from '../../src/moisture/membranePermeance.ts';
import { coverageFactor } from '../../src/statistics/coverageFactor.ts';
import { propagate } from '../../src/statistics/propagate.ts';
import { functions, rows } from '../support/library.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const confidence = q(95, '%');
const byTheGum = rows.filter((row) => 'confidence' in row.given && !row.function.startsWith('statistics.'));

describe.each(byTheGum)('$id', (row) => {
  const run = functions.get(row.function) as (input: unknown) => unknown;
  it('asks for the level of confidence beside a standard uncertainty', () => {
    const without = Object.fromEntries(Object.entries(row.given).filter(([key]) => key !== 'confidence'));
    if (!JSON.stringify(without).includes('standardUncertainty')) return;
    expect(refusal(run, without)).toBe('missing confidence');
  });
  it('says in its basis how its uncertainty came about', () => {
    const { basis } = run(row.given) as { basis: { id: string; source: string; inputs: object }[] };
    expect(basis.at(-1)).toMatchObject({
      id: 'uncertainty',
      source: 'jcgm-100-2008',
      inputs: { confidence: row.given.confidence },
    });
  });
});

it('errors without a level of confidence are bounds, and the basis says so', () => {
  const margin = dewPointMargin({
    air: q(20, 'degC'),
    relativeHumidity: q(70, '%'),
    surface: q(18, 'degC'),
    limit: q(3, 'deltaC'),
    surfaceError: q(0.5, 'deltaC'),
  });
  expect(margin.uncertainty).toEqual(q(0.5, 'deltaC'));
  expect(margin.basis.at(-1)).toMatchObject({ id: 'uncertainty', source: 'common-practice' });
});

it('the uncertainty of a margin is that of the formula behind it', () => {
  const part = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(part, part, part, fc.integer({ min: 2, max: 40 }), (a, h, s, freedom) => {
      const inputs = {
        air: {
          ...q(5 + 30 * a, 'degC'),
          standardUncertainty: q(0.1 + h, 'deltaC'),
          degreesOfFreedom: freedom,
        },
        relativeHumidity: { ...q(20 + 75 * h, '%'), standardUncertainty: q(0.5 + 2 * s, '%') },
        unit: 'degC',
      } as const;
      const dew = propagate(dewPoint, { inputs, confidence });
      const margin = dewPointMargin({
        air: q(inputs.air.value, 'degC'),
        relativeHumidity: q(inputs.relativeHumidity.value, '%'),
        surface: q(18, 'degC'),
        limit: q(3, 'deltaC'),
        airError: { standardUncertainty: inputs.air.standardUncertainty, degreesOfFreedom: freedom },
        relativeHumidityError: inputs.relativeHumidity,
        confidence,
      });
      expect((margin.uncertainty?.value ?? 0) / (dew.expandedUncertainty?.value ?? 1)).toBeCloseTo(1, 5);
    }),
  );
});

it('the uncertainty of a dish is that of the formula behind it', () => {
  const gain = { ...q(1.8, 'g'), standardUncertainty: q(0.05, 'g'), degreesOfFreedom: 3 };
  const exposedArea = { ...q(64.06, 'in2'), standardUncertainty: q(0.4, 'in2') };
  const exposure = { ...q(66, 'h'), standardUncertainty: q(10, 'min') };
  const rate = propagate(emissionRate, {
    inputs: { gain, exposedArea, exposure, unit: 'g/m2/24h' },
    confidence,
  });
  const test = calciumChlorideTest({
    floorArea: q(90, 'm2'),
    tests: [{ gain: q(1.8, 'g'), exposedArea: q(64.06, 'in2'), exposure: q(66, 'h') }],
    limit: q(15, 'g/m2/24h'),
    gainError: gain,
    exposedAreaError: exposedArea,
    exposureError: exposure,
    confidence,
  });
  expect((test.uncertainty?.value ?? 0) / (rate.expandedUncertainty?.value ?? 1)).toBeCloseTo(1, 9);
});

it('the uncertainty of a square is that of the film behind it', () => {
  const used = { ...q(2.43, 'usgal'), standardUncertainty: q(0.03, 'usgal'), degreesOfFreedom: 6 };
  const area = { ...q(225, 'ft2'), standardUncertainty: q(2.25, 'ft2') };
  const film = propagate(appliedThickness, {
    inputs: {
      volume: used,
      area,
      residue: q(2, '%'),
      textureDepth: q(1, 'mil'),
      unit: 'mil',
    },
    confidence,
  });
  const { squares } = asApplied({
    squares: [{ name: 'bay', area: q(225, 'ft2'), used: q(2.43, 'usgal') }],
    plannedThickness: q(18, 'mil'),
    tolerance: q(10, '%'),
    residue: q(2, '%'),
    textureDepth: q(1, 'mil'),
    readingError: used,
    areaError: { standardUncertainty: q(1, '%') },
    confidence,
    units: { thickness: 'mil', spreadRate: 'ft2/usgal' },
  });
  expect((squares[0]?.uncertainty?.value ?? 0) / (film.expandedUncertainty?.value ?? 1)).toBeCloseTo(1, 6);
});

it('a reading that far inside its limit meets it, and one a hair nearer does not', () => {
  const factor = coverageFactor({ confidence, degreesOfFreedom: 7 });
  const at = (percent: number) =>
    ambientLimits({
      readings: { relativeHumidity: q(percent, '%') },
      limits: { relativeHumidity: { most: q(85, '%') } },
      relativeHumidityError: { standardUncertainty: q(1, '%'), degreesOfFreedom: 7 },
      confidence,
    }).verdict;
  expect(at(85 - factor)).toBe('meets');
  expect(at(85 - factor + 1e-9)).toBe('undecided');
  expect(at(85 + factor)).toBe('fails');
});

it('laying windows by a standard uncertainty are those by its expanded bound', () => {
  const surface = [12, 15, 19, 17, 13];
  const day = (errors: object) =>
    layingWindows({
      readings: surface.map((value, i) => ({
        at: `2025-06-0${i + 1}T12:00:00Z`,
        air: q(20, 'degC'),
        relativeHumidity: q(55, '%'),
        surface: q(value, 'degC'),
      })),
      longestGap: q(30, 'h'),
      marginToLay: q(3, 'deltaC'),
      marginWhileSensitive: q(3, 'deltaC'),
      sensitiveFor: q(6, 'h'),
      limits: { surface: { least: q(10, 'degC') } },
      ...errors,
    });
  const factor = coverageFactor({ confidence, degreesOfFreedom: 9 });
  const u = { standardUncertainty: q(0.4, 'deltaC'), degreesOfFreedom: 9 };
  const bound = q(0.4 * factor, 'deltaC');
  const gum = day({ surfaceError: u, changeError: u, confidence });
  const bounds = day({ surfaceError: bound, changeError: bound });
  const hours = ({ windows }: typeof gum) => windows.map(({ length }) => length.value.toFixed(6));
  expect(hours(gum)).toEqual(hours(bounds));
  expect(hours(gum).length).toBeGreaterThan(0);
  expect(hours(day({})).join()).not.toBe(hours(gum).join());
});

it('an uncertain quantity may be handed over as the error of its reading', () => {
  const reading = { ...q(78, '%'), standardUncertainty: q(1, '%'), degreesOfFreedom: 5 };
  const hole = { relativeHumidity: reading, depth: q(2.5, 'in'), closedFor: q(26, 'h') };
  const slab = inSlabHumidityTest({
    floorArea: q(100, 'ft2'),
    slabThickness: q(6, 'in'),
    drying: 'one side',
    equilibration: q(24, 'h'),
    tests: [hole, hole, hole],
    limit: q(80, '%'),
    relativeHumidityError: reading,
    confidence,
  });
  expect(slab.verdict).toBe('undecided');
  expect(slab.uncertainty?.value).toBeCloseTo(2.5706, 4);
});

it('refused is an uncertainty that is none, by its path', () => {
  const given = { permeance: q(0.07, 'perm'), limit: q(0.1, 'perm'), confidence };
  const off = (permeanceError: unknown) => refusal(membranePermeance, { ...given, permeanceError });
  expect(off({ standardUncertainty: q(-1, 'perm') })).toBe('out-of-range permeanceError.standardUncertainty');
  expect(off({ standardUncertainty: q(1, '%') })).toBe('wrong-unit permeanceError.standardUncertainty');
  expect(off({ standardUncertainty: q(0.01, 'perm'), degreesOfFreedom: '4' })).toBe(
    'wrong-type permeanceError.degreesOfFreedom',
  );
  expect(off({ standardUncertainty: q(1e308, 'perm') })).toMatch(/too-large/);
  expect(off(q(1, '%'))).toBe('wrong-unit permeanceError');
  expect(off(null)).toBe('not-a-quantity permeanceError');
});
