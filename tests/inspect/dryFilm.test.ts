import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../src/core/index.ts';
import {
  dryFilmCheck,
  filmRuleLimits,
  filmSamplingPlan,
  roughnessCorrection,
  type FilmRule,
} from '../../src/inspect/index.ts';
import { cautionText } from '../../src/messages/index.ts';
import { convert } from '../../src/units/index.ts';
import { refusal } from '../support/issues.ts';
import { rows } from '../support/library.ts';
import { q } from '../support/quantity.ts';

const UNITS: readonly LengthUnit[] = ['um', 'mm', 'cm', 'm', 'mil', 'in', 'ft', 'yd'];
const PA9: FilmRule = { rule: 'SSPC-PA 9:2015', level: 3, areasIn: 'ft2' };
const PA2: FilmRule = { rule: 'SSPC-PA 2:2015', level: 3, areasIn: 'ft2' };
const ISO: FilmRule = { rule: 'ISO 19840:2012' };
const IMO: FilmRule = { rule: 'IMO MSC.215(82)' };
const mils = (...values: number[]) => values.map((value) => q(value, 'mil'));
const floor = {
  rule: PA9,
  substrate: 'concrete',
  specified: { least: q(16, 'mil'), most: q(24, 'mil') },
  coatedArea: q(100, 'ft2'),
  unit: 'mil',
} as const;
const ofSpots = (...spots: number[][]) => [{ name: 'hall', spots: spots.map((spot) => mils(...spot)) }];
const good = [20, 20, 20];

describe('a rule and what it is for', () => {
  it.each([
    [PA2, 'concrete', 'SSPC-PA 9:2015'],
    [ISO, 'concrete', 'SSPC-PA 9:2015'],
    [IMO, 'other metal', 'SSPC-PA 2:2015'],
    [PA9, 'steel', 'SSPC-PA 2:2015, ISO 19840:2012, IMO MSC.215(82)'],
  ] as const)('%j is refused on %s, and the rule that fits is named', (rule, substrate, fitting) => {
    const ask = () => filmSamplingPlan({ rule, substrate, coatedArea: q(100, 'm2') });
    expect(ask).toThrow(`one for ${substrate}: ${fitting}`);
    expect(refusal(dryFilmCheck, { ...floor, rule, substrate, areas: ofSpots(good) })).toBe(
      'conflict rule.rule',
    );
  });

  it('metal and concrete have tables of their own', () => {
    const limits = (rule: FilmRule, substrate: 'steel' | 'concrete') =>
      filmRuleLimits({ rule, substrate, specified: floor.specified, unit: 'mil' });
    expect(limits(PA2, 'steel').spotLeast?.value).toBeCloseTo(12.8, 12);
    expect(limits(PA9, 'concrete').spotLeast?.value).toBeCloseTo(12, 12);
  });

  it('a row that is not known here is asked for, and told to be unknown', () => {
    const ask = () => filmSamplingPlan({ ...floor, rule: { ...PA9, level: 2 }, coatedArea: q(9, 'm2') });
    expect(ask).toThrow('the row of level 2 is not known here');
  });

  it.each([
    [{ ...PA2, level: 5 }, 'steel', ['spotMost', 'meanMost']],
    [{ ...PA9, level: 4 }, 'concrete', ['spotMost']],
  ] as const)('%j has no upper limit to answer', (rule, substrate, none) => {
    const limits = filmRuleLimits({ rule, substrate, specified: floor.specified, unit: 'mil' });
    for (const end of none) expect(limits).not.toHaveProperty(end);
    expect(limits).toHaveProperty('spotLeast');
  });

  it.each([
    [{ ...PA9, level: 2 }, 'missing rule.terms'],
    [{ ...PA9, terms: { spotLeast: q(90, '%') } }, 'conflict rule.terms'],
    [{ ...PA9, level: 5 }, 'out-of-range rule.level'],
    [{ ...PA9, level: '3' }, 'out-of-range rule.level'],
    [{ rule: 'SSPC-PA 9:2015', areasIn: 'ft2' }, 'missing rule.level'],
    [{ ...PA9, areasIn: 'yd2' }, 'out-of-range rule.areasIn'],
    [{ rule: 'SSPC-PA 9' }, 'out-of-range rule.rule'],
    [
      { rule: 'own', name: 'x', areas: 1, spotsPerArea: 1, readingsPerSpot: 1, terms: {} },
      'missing rule.terms',
    ],
    [{ rule: 'own', name: 'x', areas: 0, spotsPerArea: 1, readingsPerSpot: 1 }, 'out-of-range rule.areas'],
    [{ ...PA9, level: 2, terms: { lowShare: q(120, '%') } }, 'out-of-range rule.terms.lowShare'],
  ])('%j is refused', (rule, issue) => {
    expect(refusal(dryFilmCheck, { ...floor, rule, areas: ofSpots(good) })).toBe(issue);
  });

  it('films below the scope of ISO 19840 are refused, and a most below the least', () => {
    const iso = { ...floor, rule: ISO, substrate: 'steel', areas: ofSpots(good) };
    expect(refusal(dryFilmCheck, { ...iso, specified: { least: q(39, 'um') } })).toBe(
      'out-of-range specified.least',
    );
    const turned = { least: q(200, 'um'), most: q(5, 'mil') };
    expect(refusal(dryFilmCheck, { ...iso, specified: turned })).toBe('conflict specified.most');
  });
});

describe('readings', () => {
  it('of two units of length are judged together, of another kind refused', () => {
    const mixed = { name: 'hall', spots: [[q(20, 'mil'), q(508, 'um'), q(0.508, 'mm')]] };
    const answer = dryFilmCheck({ ...floor, areas: [mixed] });
    expect(answer.areas[0]?.spots[0]?.value).toBeCloseTo(20, 12);
    const kinds = { name: 'hall', spots: [[q(20, 'mil'), q(20, 'm2')]] };
    expect(refusal(dryFilmCheck, { ...floor, areas: [kinds] })).toBe('wrong-unit areas.0.spots.0.1');
  });

  it('that are too few leave the film undecided and say how many are missing', () => {
    const answer = dryFilmCheck({
      ...floor,
      coatedArea: q(2000, 'ft2'),
      areas: ofSpots(good, good, [20, 20]),
    });
    expect(answer.verdict).toBe('undecided');
    expect(answer.missing).toEqual({ areas: 3, spots: 17, readings: 52 });
    expect(answer.findings.every((finding) => finding.verdict === 'meets')).toBe(true);
    expect(answer.cautions.map(cautionText)[0]).toContain('3 areas, 17 spots and 52 readings are missing');
  });

  it('that are too few never hide a spot that fails by all its readings', () => {
    const answer = dryFilmCheck({ ...floor, areas: ofSpots([9, 9, 9], good) });
    expect([answer.verdict, answer.criterion, answer.missing.spots]).toEqual(['fails', 'spot-least', 3]);
  });

  it('of an area that lacks some leave its mean undecided', () => {
    const answer = dryFilmCheck({ ...floor, areas: ofSpots([15, 15, 15], [15, 15, 15]) });
    expect(answer.findings.map(({ criterion, verdict }) => [criterion, verdict])).toEqual([
      ['spot-least', 'meets'],
      ['spot-most', 'meets'],
      ['mean-least', 'undecided'],
      ['mean-most', 'meets'],
    ]);
  });

  it('of 0 count as a bare place and are named', () => {
    const answer = dryFilmCheck({ ...floor, areas: ofSpots(good, good, [0, 20, 20], good, good) });
    const bare = answer.cautions.find(({ code }) => code === 'bare-spot');
    expect(bare && cautionText(bare)).toContain('hall, spot 3 has a reading of 0');
    expect(answer.areas[0]?.spots[2]?.value).toBeCloseTo(40 / 3, 12);
  });

  it('without a most are not judged upwards; a rule of upper limits alone needs one', () => {
    const thick = ofSpots(...Array.from({ length: 5 }, () => [90, 90, 90]));
    expect(dryFilmCheck({ ...floor, specified: { least: q(16, 'mil') }, areas: thick }).verdict).toBe(
      'meets',
    );
    const upper = {
      rule: 'own',
      name: 'upper',
      areas: 1,
      spotsPerArea: 1,
      readingsPerSpot: 1,
      terms: { spotMost: q(100, '%') },
    };
    const open = { ...floor, rule: upper, specified: { least: q(16, 'mil') }, areas: thick };
    expect(refusal(dryFilmCheck, open)).toBe('missing specified.most');
  });

  it('are corrected for roughness on metal, never on concrete', () => {
    expect(refusal(dryFilmCheck, { ...floor, areas: ofSpots(good), correction: q(1, 'mil') })).toBe(
      'conflict correction',
    );
    const steel = dryFilmCheck({
      ...floor,
      rule: PA2,
      substrate: 'steel',
      areas: ofSpots([0.5, 0.5, 0.5]),
      correction: q(1, 'mil'),
    });
    expect(steel.measured.value).toBe(0);
  });
});

describe('limits', () => {
  const exact: readonly (readonly [FilmRule, 'concrete' | 'steel', number])[] = [
    [PA9, 'concrete', 12],
    [PA2, 'steel', 12.8],
    [ISO, 'steel', 12.8],
    [IMO, 'steel', 14.4],
  ];
  it.each(exact)('%j: a reading exactly on the limit meets it in every unit', (rule, substrate, onLimit) => {
    for (const unit of UNITS) {
      const spots = [onLimit, ...Array.from({ length: 11 }, () => 20)].map((value) =>
        [value, value, value].map((one) => convert({ quantity: q(one, 'mil'), unit })),
      );
      const judged = dryFilmCheck({ ...floor, rule, substrate, unit, areas: [{ name: 'x', spots }] });
      expect(judged.findings.map(({ verdict }) => verdict)).not.toContain('fails');
      const [least] = judged.findings;
      expect([least?.criterion, least?.verdict]).toEqual(['spot-least', 'meets']);
      const below = spots.map((spot, i) =>
        i > 0 ? spot : spot.map((one) => ({ ...one, value: one.value * (1 - 1e-9) })),
      );
      const failed = dryFilmCheck({ ...floor, rule, substrate, unit, areas: [{ name: 'x', spots: below }] });
      expect(failed.findings[0]?.verdict).toBe('fails');
    }
  });

  it.each([
    [0.8, 3, 2.4, 2.4000000000000004],
    [1.2, 3, 3.6, 3.5999999999999996],
    [0.8, 6, 4.8, 4.800000000000001],
    [1.2, 12, 14.4, 14.399999999999999],
    [0.9, 6.5, 5.85, 5.8500000000000005],
    [1.2, 1.5, 1.8, 1.7999999999999998],
    [0.8, 1.5, 1.2, 1.2000000000000002],
  ])('a spot at %s of %s mil, which doubles miss, meets it', (factor, specified, onLimit, product) => {
    expect(factor * specified).toBe(product);
    const end = factor < 1 ? 'spotLeast' : 'spotMost';
    const terms = { [end]: q(factor, 'fraction') };
    const at = (reading: number) =>
      dryFilmCheck({
        ...floor,
        rule: { rule: 'own', name: 'factor', areas: 1, spotsPerArea: 1, readingsPerSpot: 1, terms },
        specified: { least: q(specified, 'mil'), most: q(specified, 'mil') },
        areas: [{ name: 'hall', spots: mils(reading) }],
      }).verdict;
    expect(at(onLimit)).toBe('meets');
    expect(at(onLimit * (factor < 1 ? 1 - 1e-9 : 1 + 1e-9))).toBe('fails');
  });

  it('the verdict does not depend on the units of the readings', () => {
    const tenths = fc.integer({ min: 100, max: 300 }).map((tenth) => tenth / 10);
    const rules = fc.constantFrom(PA9, { ...PA9, level: 1 } as FilmRule, { ...PA9, level: 4 } as FilmRule);
    fc.assert(
      fc.property(
        fc.array(fc.array(tenths, { minLength: 3, maxLength: 3 }), { minLength: 5, maxLength: 7 }),
        fc.array(fc.constantFrom(...UNITS), { minLength: 21, maxLength: 21 }),
        rules,
        fc.constantFrom(undefined, q(0.5, 'mil'), q(3, '%')),
        (spots, units, rule, gaugeError) => {
          const judged = (unitOf: (at: number) => LengthUnit) => {
            const converted = spots.map((spot, s) =>
              spot.map((value, r) => convert({ quantity: q(value, 'mil'), unit: unitOf(s * 3 + r) })),
            );
            const answer = dryFilmCheck({
              ...floor,
              rule,
              gaugeError,
              areas: [{ name: 'x', spots: converted }],
            });
            return answer.findings.map(({ criterion, verdict }) => [criterion, verdict]);
          };
          expect(judged((at) => units[at] ?? 'um')).toEqual(judged(() => 'mil'));
        },
      ),
      { numRuns: 200, seed: 8 },
    );
  });

  it('a hundred thousand equal readings on the limit meet it', () => {
    const spots = Array.from({ length: 100_000 }, () => q(14.4, 'mil'));
    const answer = dryFilmCheck({
      ...floor,
      rule: {
        rule: 'own',
        name: 'mean',
        areas: 1,
        spotsPerArea: 1,
        readingsPerSpot: 1,
        terms: { meanLeast: q(90, '%'), meanMost: q(60, '%') },
      },
      areas: [{ name: 'x', spots }],
    });
    expect(answer.verdict).toBe('meets');
  });

  it('inside the error of the gauge is undecided on both sides, beyond it is not', () => {
    const at = (value: number) =>
      dryFilmCheck({
        ...floor,
        gaugeError: q(0.5, 'mil'),
        areas: ofSpots([value, value, value], good, good, good, good),
      }).findings[0]?.verdict;
    expect([11.4, 11.6, 12, 12.4, 12.5].map(at)).toEqual([
      'fails',
      'undecided',
      'undecided',
      'undecided',
      'meets',
    ]);
  });

  it('a share of low readings is undecided where the gauge could change it', () => {
    const low = (values: number[], gaugeError?: { value: number; unit: 'um' }) =>
      dryFilmCheck({
        rule: IMO,
        substrate: 'steel',
        specified: { least: q(320, 'um') },
        coatedArea: q(50, 'm2'),
        areas: [{ name: 'tank', spots: values.map((value) => q(value, 'um')) }],
        gaugeError,
        unit: 'um',
      }).findings.find(({ criterion }) => criterion === 'low-share');
    const nine = Array.from({ length: 9 }, () => 350);
    expect(low([...nine, 300])).toMatchObject({ verdict: 'meets', measured: { value: 10 } });
    expect(low([...nine.slice(1), 300, 318])?.verdict).toBe('fails');
    expect(low([...nine.slice(1), 300, 318], q(5, 'um'))?.verdict).toBe('undecided');
    expect(low([...nine.slice(1), 300, 322], q(5, 'um'))?.verdict).toBe('undecided');
    // Two of eight are a quarter; two of the ten that were asked for would still be a fifth.
    expect(low([...nine.slice(3), 300, 300])?.verdict).toBe('fails');
    // One of five is a fifth; one of ten would meet.
    expect(low([...nine.slice(5), 300])?.verdict).toBe('undecided');
  });
});

/** Published readings, with what each spot and the area come to: the spots that fail, and whether the area passes. */
describe.each([
  ['inspect-pa2-holds', [], true],
  ['inspect-pa2-one-low-reading', [], true],
  ['inspect-pa2-spot-low', [0], true],
  ['inspect-pa2-area-low', [], false],
  ['inspect-pa2-spot-high', [0], true],
  ['inspect-pa2-area-high', [], false],
  ['inspect-pa2-exactly-80', [], true],
  ['inspect-pa2-level-1', [0, 1], true],
] as const)('%s', (id, failing, areaPasses) => {
  const row = rows.find((one) => one.id === id);
  const { findings } = dryFilmCheck(row?.given as unknown as Parameters<typeof dryFilmCheck>[0]);
  const failed = findings.filter(({ verdict }) => verdict !== 'meets');
  it('fails the spots that fail, and no other', () => {
    const spots = failed.flatMap(({ spot }) => (spot === undefined ? [] : [spot]));
    expect(spots).toEqual(failing);
  });
  it('fails the area where its mean fails', () => {
    expect(failed.some(({ criterion }) => criterion.startsWith('mean'))).toBe(!areaPasses);
  });
});

describe('what of a rule is quoted from memory', () => {
  const marked = (rule: FilmRule, substrate: 'steel' | 'concrete') => {
    const film = { rule, substrate, specified: { least: q(100, 'um'), most: q(500, 'um') } };
    const coatedArea = q(9, 'm2');
    const [limits] = filmRuleLimits({ ...film, unit: 'um' }).basis;
    const [plan] = filmSamplingPlan({ rule, substrate, coatedArea }).basis;
    const areas = [{ name: 'bay', spots: [[q(200, 'um')]] }];
    const [verdict] = dryFilmCheck({ ...film, coatedArea, areas, unit: 'um' }).basis;
    return [limits, plan, verdict].map((entry) => entry?.status);
  };

  it.each([
    [
      'a row of limits',
      { rule: 'SSPC-PA 2:2015', level: 1, areasIn: 'ft2' },
      'steel',
      ['memory', undefined, 'memory'],
    ],
    ['a row out of a restatement', PA9, 'concrete', [undefined, undefined, undefined]],
    ['the counting', ISO, 'steel', [undefined, 'memory', 'memory']],
    ['the criteria', IMO, 'steel', ['memory', undefined, 'memory']],
  ] as const)(
    '%s is marked in the basis of limits, of plan and of verdict',
    (_, rule, substrate, expected) => {
      expect(marked(rule, substrate)).toEqual(expected);
    },
  );

  it('and so are the corrections for roughness', () => {
    const given = { reading: q(185, 'um'), substrate: 'steel', roughness: 'fine', unit: 'um' } as const;
    expect(roughnessCorrection(given).basis[0]?.status).toBe('memory');
  });
});

it('a reading that the correction for roughness takes away is told of like one of 0', () => {
  const steel = {
    ...floor,
    rule: ISO,
    substrate: 'steel',
    areas: [{ name: 'beam', spots: mils(20, 0.5, 20, 20, 20) }],
    correction: q(25, 'um'),
    coatedArea: q(1, 'm2'),
  } as const;
  const text = dryFilmCheck(steel).cautions.map(cautionText);
  expect(text).toContainEqual(expect.stringMatching(/^beam, spot 2 has a reading of 0, or one below/));
});
