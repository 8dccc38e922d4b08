import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  batchWithAdditions,
  blendEquivalentWeight,
  checkRatio,
  gelPoint,
  graduatedBatch,
  isocyanateContent,
  isocyanateEquivalentWeight,
  leastMeasurableBatch,
  markHeight,
  pailMarks,
  pailVolume,
  prepolymerContent,
  readingRatioError,
  reconcile,
  splitByVolume,
  splitByWeight,
  stoichiometricIndex,
  thinnedMix,
  usablePartKit,
  volumeRatio,
  weightRatio,
} from '../../src/mix/index.ts';
import { rows } from '../support/library.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const given = (id: string) => rows.find((row) => row.id === id)?.given ?? {};
const density = q(1, 'kg/l');

describe('refusals', () => {
  it.each([
    [
      'a ratio by weight where one by volume is due',
      splitByVolume,
      { total: q(1, 'l'), parts: [{ name: 'A', weightParts: 1 }], unit: 'l' },
      'missing parts.0.parts',
    ],
    [
      'a ratio by volume on the scale',
      splitByWeight,
      { total: q(1, 'kg'), parts: [{ name: 'A', parts: 1 }], unit: 'kg' },
      'missing parts.0.weightParts',
    ],
    [
      'a weight ratio without density',
      weightRatio,
      { parts: [{ name: 'A', parts: 1 }] },
      'missing parts.0.density',
    ],
    [
      'a volume ratio without density',
      volumeRatio,
      { parts: [{ name: 'A', weightParts: 1 }] },
      'missing parts.0.density',
    ],
    [
      'a ratio beyond numbers',
      weightRatio,
      {
        parts: [
          { name: 'A', parts: 1e-300, density: q(1e-10, 'kg/l') },
          { name: 'B', parts: 1e300, density },
        ],
      },
      'too-large parts',
    ],
    [
      'a part that is next to nothing, by volume',
      splitByVolume,
      {
        total: q(3, 'l'),
        unit: 'l',
        parts: [
          { name: 'A', parts: 1e300 },
          { name: 'B', parts: 1e-300 },
        ],
      },
      'too-large parts',
    ],
    [
      'a part that is next to nothing, by weight',
      splitByWeight,
      {
        ...given('split-overlay-by-weight'),
        parts: [
          { name: 'A', weightParts: 1, density },
          { name: 'B', weightParts: 1_000_001, density },
        ],
      },
      'too-large parts',
    ],
    [
      'a part that is not on hand',
      usablePartKit,
      { ...given('part-kit-1.4-and-0.9'), onHand: [{ name: 'A', volume: q(1, 'l') }] },
      'missing onHand',
    ],
    [
      'one part only, for a least batch',
      leastMeasurableBatch,
      { ...given('least-measurable-1-to-1'), parts: [{ name: 'A', parts: 1 }] },
      'out-of-range parts',
    ],
    [
      'one part only, for a check',
      checkRatio,
      { ...given('check-lean-in-B'), parts: [{ name: 'A', parts: 1 }] },
      'out-of-range parts',
    ],
    [
      'a part that was not used',
      checkRatio,
      { ...given('check-lean-in-B'), used: [{ name: 'A', volume: q(1, 'l') }] },
      'missing used',
    ],
    [
      'a reading that is all error',
      checkRatio,
      {
        ...given('check-undecided'),
        used: [
          { name: 'A', volume: q(1, 'l'), readingError: q(1, 'l') },
          { name: 'B', volume: q(1, 'l') },
        ],
      },
      'conflict used',
    ],
    [
      'a reading error as large as the amount',
      readingRatioError,
      { ...given('reading-of-a-small-cup'), readingError: q(2, 'usfloz') },
      'conflict readingError',
    ],
    [
      'amounts of two kinds',
      readingRatioError,
      { ...given('reading-of-a-small-cup'), readingError: q(2, 'g') },
      'wrong-unit readingError',
    ],
    [
      'one amount only',
      readingRatioError,
      { ...given('reading-of-a-small-cup'), amounts: [{ name: 'A', amount: q(2, 'g') }] },
      'out-of-range amounts',
    ],
    [
      'a cup without a line for each part',
      graduatedBatch,
      { ...given('graduated-2-to-1'), largest: q(3, 'usfloz') },
      'conflict largest',
    ],
    [
      'a cup of too many lines',
      graduatedBatch,
      { ...given('graduated-2-to-1'), graduation: q(1e-4, 'usfloz') },
      'too-large graduation',
    ],
    [
      'an addition given twice',
      batchWithAdditions,
      {
        ...given('batch-with-pigment'),
        additions: [{ name: 'p', density, byMass: q(1, '%'), byVolume: q(1, '%') }],
      },
      'conflict additions.0',
    ],
    [
      'an addition not given',
      batchWithAdditions,
      { ...given('batch-with-pigment'), additions: [{ name: 'p', density }] },
      'conflict additions.0',
    ],
    [
      'units of the additions',
      batchWithAdditions,
      { ...given('batch-with-pigment'), units: { volume: 'l', mass: 'l' } },
      'wrong-unit units.mass',
    ],
    [
      'more sand than numbers hold',
      batchWithAdditions,
      {
        ...given('batch-with-pigment'),
        additions: [{ name: 'p', density: q(1e-300, 'kg/l'), byMass: q(1e308, 'fraction') }],
      },
      'too-large additions',
    ],
    [
      'a blend without groups',
      blendEquivalentWeight,
      { components: [{ mass: q(1, 'kg') }], unit: 'g/eq' },
      'conflict components',
    ],
    [
      'an isocyanate lighter than its group',
      isocyanateContent,
      { equivalentWeight: q(42, 'g/eq'), unit: '%' },
      'out-of-range equivalentWeight',
    ],
    [
      'a prepolymer without isocyanate left',
      prepolymerContent,
      { ...given('prepolymer'), polyols: [{ mass: q(400, 'g'), equivalentWeight: q(1000, 'g/eq') }] },
      'conflict polyols',
    ],
    [
      'a volume without density',
      stoichiometricIndex,
      { ...given('index-in-ratio'), hardener: { amount: q(1, 'l'), equivalentWeight: q(95, 'g/eq') } },
      'missing hardener.density',
    ],
    [
      'a pail that runs over',
      markHeight,
      { ...given('height-tapered'), volume: q(6, 'usgal') },
      'conflict pail',
    ],
    [
      'a mark above the rim',
      pailVolume,
      { ...given('volume-tapered-full'), fillHeight: q(13.6, 'in') },
      'conflict fillHeight',
    ],
    [
      'pours that run over',
      pailMarks,
      { ...given('marks-straight'), pours: [{ name: 'A', volume: q(8, 'l') }] },
      'conflict pail',
    ],
    [
      'pours without names',
      pailMarks,
      { ...given('marks-straight'), pours: [{ volume: q(1, 'l') }] },
      'missing pours.0.name',
    ],
    [
      'stock without names',
      usablePartKit,
      { ...given('part-kit-empty-can'), onHand: [{ volume: q(1, 'l') }] },
      'missing onHand.0.name',
    ],
    [
      'amounts of one name',
      readingRatioError,
      {
        ...given('reading-of-a-small-cup'),
        amounts: [
          { name: 'A', amount: q(2, 'l') },
          { name: 'A', amount: q(2, 'l') },
        ],
      },
      'conflict amounts.1.name',
    ],
    [
      'batches without names',
      reconcile,
      { ...given('reconcile-twice'), batches: [{ volume: q(1, 'l') }] },
      'missing batches.0.name',
    ],
    [
      'what was used without names',
      reconcile,
      { ...given('reconcile-twice'), used: [{ volume: q(1, 'l') }] },
      'missing used.0.name',
    ],
    [
      'weight parts without names',
      splitByWeight,
      { ...given('split-ufgs-mortar'), parts: [{ weightParts: 1 }] },
      'missing parts.0.name',
    ],
    [
      'additions without names',
      batchWithAdditions,
      { ...given('batch-with-pigment'), additions: [{ density, byMass: q(1, '%') }] },
      'missing additions.0.name',
    ],
    [
      'unit of volume of the additions',
      batchWithAdditions,
      { ...given('batch-with-pigment'), units: { volume: 'kg', mass: 'kg' } },
      'wrong-unit units.volume',
    ],
    [
      'unit of share of the thinned mix',
      thinnedMix,
      { ...given('thinned-with-voc'), units: { share: 'l', density: 'g/l' } },
      'wrong-unit units.share',
    ],
    [
      'unit of density of the thinned mix',
      thinnedMix,
      { ...given('thinned-with-voc'), units: { share: '%', density: '%' } },
      'wrong-unit units.density',
    ],
    [
      'a ratio below numbers',
      weightRatio,
      {
        parts: [
          { name: 'A', parts: 1e300, density },
          { name: 'B', parts: 1e-300, density },
        ],
      },
      'too-large parts',
    ],
    [
      'a density that is none beside a mass',
      stoichiometricIndex,
      {
        ...given('index-in-ratio'),
        resin: { amount: q(1, 'kg'), density: q(-1, 'kg/l'), equivalentWeight: q(95, 'g/eq') },
      },
      'out-of-range resin.density',
    ],
    [
      'a prepolymer with exactly no isocyanate left',
      prepolymerContent,
      {
        isocyanates: [{ mass: q(1, 'kg'), equivalentWeight: q(125, 'g/eq') }],
        polyols: [{ mass: q(8, 'kg'), equivalentWeight: q(1000, 'g/eq') }],
        unit: '%',
      },
      'conflict polyols',
    ],
    [
      'an error larger than the least amount only',
      readingRatioError,
      { ...given('reading-of-the-scale'), readingError: q(7, 'lb') },
      'conflict readingError',
    ],
    ['no pail', pailMarks, { ...given('marks-straight'), pail: undefined }, 'missing pail'],
  ])('%s', (_, fn, input, expected) => {
    expect(refusal(fn as never, input)).toBe(expected);
  });
});

describe('pails', () => {
  const pail = fc.record({
    bottom: fc.double({ min: 0.05, max: 1, noNaN: true }),
    top: fc.double({ min: 0.05, max: 1, noNaN: true }),
    height: fc.double({ min: 0.05, max: 1, noNaN: true }),
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  it('height and volume are inverse, for every taper', () => {
    fc.assert(
      fc.property(pail, share, ({ bottom, top, height }, part) => {
        const measures = { diameter: q(bottom, 'm'), topDiameter: q(top, 'm'), height: q(height, 'm') };
        const fillHeight = q(height * part, 'm');
        const volume = pailVolume({ fillHeight, pail: measures, unit: 'l' });
        const back = markHeight({ volume, pail: measures, unit: 'm' });
        expect(Math.abs(back.value - fillHeight.value)).toBeLessThanOrEqual(1e-12 * height);
      }),
      { seed: 3, numRuns: 2000 },
    );
  });

  it('a full pail is full', () => {
    const measures = { diameter: q(10, 'in'), topDiameter: q(11, 'in'), height: q(14, 'in') };
    const volume = pailVolume({ fillHeight: measures.height, pail: measures, unit: 'usgal' });
    expect(markHeight({ volume, pail: measures, unit: 'in' }).value).toBeCloseTo(14, 11);
    const pours = [{ name: 'A', volume }];
    expect(
      pailMarks({ pours, pail: measures, graduation: q(1, 'in'), unit: 'in' }).marks[0]?.mark.field.value,
    ).toBe(14);
  });

  it('the slightest taper changes nothing: no formula of its own for a straight pail', () => {
    const at = (top: number) =>
      markHeight({
        volume: q(3, 'l'),
        pail: { diameter: q(20, 'cm'), topDiameter: q(top, 'cm'), height: q(30, 'cm') },
        unit: 'cm',
      }).value;
    expect(at(20.000000001)).toBeCloseTo(at(20), 8);
    expect(at(20)).toBeCloseTo(3000 / (Math.PI * 100), 12);
  });

  it('of the first part nothing is off, and of a part on no step of its own much', () => {
    const marks = pailMarks({
      pours: [
        { name: 'A', volume: q(2, 'l') },
        { name: 'B', volume: q(10, 'ml') },
      ],
      pail: { diameter: q(20, 'cm'), height: q(30, 'cm') },
      graduation: q(1, 'mm'),
      unit: 'mm',
    });
    expect(marks.marks[0]).not.toHaveProperty('off');
    expect(marks.marks[1]?.off?.low).toEqual(q(-100, '%'));
    expect(marks.cautions).toMatchObject([{ code: 'too-small-to-measure', params: { name: 'B' } }]);
    expect(marks.marks.map(({ tooCoarse }) => tooCoarse)).toEqual([undefined, true]);
  });

  it('no mark is one where even the first part is below a step', () => {
    const { marks, cautions } = pailMarks({
      ...(given('marks-straight') as object),
      graduation: q(10, 'in'),
    } as never);
    expect(marks.map(({ tooCoarse }) => tooCoarse)).toEqual(marks.map(() => true));
    expect(cautions.map(({ code }) => code)).toEqual(marks.map(() => 'too-small-to-measure'));
  });

  it('a tolerance that is just met raises no caution', () => {
    const { marks } = pailMarks(given('marks-straight') as never);
    const high = marks[1]?.off?.high.value ?? 0;
    const low = -(marks[1]?.off?.low.value ?? 0);
    const cautionsAt = (percent: number) =>
      pailMarks({ ...given('marks-straight'), ratioTolerance: q(percent, '%') } as never).cautions.length;
    expect([cautionsAt(Math.max(high, low)), cautionsAt(Math.max(high, low) * 0.999)]).toEqual([0, 1]);
  });
});

it('weight and volume ratio are inverse', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: 0.8, max: 3, noNaN: true })),
        {
          minLength: 2,
          maxLength: 4,
        },
      ),
      (list) => {
        const parts = list.map(([weight, rho], i) => ({
          name: String(i),
          parts: weight,
          density: q(rho, 'kg/l'),
        }));
        const byWeight = weightRatio({ parts }).parts.map((part, i) => ({
          ...part,
          density: parts[i]?.density ?? q(1, 'kg/l'),
        }));
        const back = volumeRatio({ parts: byWeight }).parts.map((part) => part.parts);
        const least = Math.min(...parts.map((part) => part.parts));
        back.forEach((one, i) => {
          expect(one / ((parts[i]?.parts ?? 0) / least)).toBeCloseTo(1, 10);
        });
      },
    ),
    { seed: 5 },
  );
});

it('the least measurable batch has just the tolerance as its reading error', () => {
  const parts = [
    { name: 'A', parts: 4 },
    { name: 'B', parts: 1 },
    { name: 'C', parts: 2 },
  ];
  const least = leastMeasurableBatch({
    parts,
    readingError: q(5, 'ml'),
    ratioTolerance: q(4, '%'),
    unit: 'ml',
  });
  const amounts = splitByVolume({ total: least, parts, unit: 'ml' }).parts.map(({ name, volume }) => ({
    name,
    amount: volume,
  }));
  const { off } = readingRatioError({ amounts, readingError: q(5, 'ml'), unit: '%' });
  expect(Math.max(...off.map(({ high }) => high.value))).toBeCloseTo(4, 9);
});

it('an isocyanate content and its equivalent weight are inverse', () => {
  for (const content of [5, 15.5, 31, 99]) {
    const weight = isocyanateEquivalentWeight({ isocyanateContent: q(content, '%'), unit: 'g/eq' });
    expect(isocyanateContent({ equivalentWeight: weight, unit: '%' }).value).toBeCloseTo(content, 11);
  }
});

it('a reading is judged by the worse of both sides, and just met is met', () => {
  const amounts = [
    { name: 'A', amount: q(1000, 'g') },
    { name: 'B', amount: q(500, 'g') },
  ];
  const judged = (percent: number) =>
    readingRatioError({ amounts, readingError: q(10, 'g'), ratioTolerance: q(percent, '%'), unit: '%' });
  const high = judged(1).off[0]?.high.value ?? 0;
  expect(high).toBeCloseTo((1.02 / 0.99 - 1) * 100, 10);
  expect([judged(high).cautions.length, judged(high - 1e-6).cautions.length]).toEqual([0, 1]);
  expect(judged(1).cautions[0]?.params).toMatchObject({ name: 'B', graduation: q(10, 'g') });
});

it('a refused pail says how much it would have to hold', () => {
  expect(() => markHeight({ ...given('height-tapered'), volume: q(25, 'l') } as never)).toThrow('holds 25 l');
});

describe('reconcile', () => {
  const three = {
    parts: [
      { name: 'A', parts: 3 },
      { name: 'B', parts: 2 },
      { name: 'C', parts: 1 },
    ],
    batches: [
      { name: 'north', volume: q(6, 'l') },
      { name: 'south', volume: q(6, 'l') },
    ],
    unit: 'l',
  } as const;
  const used = (a: number, b: number, c: number) =>
    [a, b, c].map((litres, i) => ({ name: 'ABC'.charAt(i), volume: q(litres, 'l') }));

  it('suspects every batch that could have lost a part', () => {
    const answer = reconcile({ ...three, used: used(6, 4, 1) });
    expect(answer.suspicions).toEqual([
      { batch: 'north', mistake: 'left out', part: 'C' },
      { batch: 'south', mistake: 'left out', part: 'C' },
    ]);
    expect(answer.parts[2]).toEqual({
      name: 'C',
      expected: q(2, 'l'),
      difference: q(-1, 'l'),
      beyondReading: true,
    });
    expect(answer.cautions).toMatchObject([{ code: 'parts-used-off-ratio', params: { name: 'C' } }]);
  });

  it('without a reading error a few hundredths of a millilitre count', () => {
    const answer = reconcile({ ...three, used: used(6, 4, 2.00005) });
    expect(answer.parts.map(({ beyondReading }) => beyondReading)).toEqual([false, false, true]);
    expect(answer.agrees).toBe(false);
  });

  it('a part that was not used at all is a reading like any other', () => {
    const answer = reconcile({ ...three, batches: [three.batches[0]], used: used(3, 2, 0) });
    expect(answer.suspicions).toEqual([{ batch: 'north', mistake: 'left out', part: 'C' }]);
  });

  it('does not suspect a ratio of three parts to have been turned round', () => {
    const answer = reconcile({ ...three, batches: [three.batches[0]], used: used(2, 3, 1) });
    expect([answer.agrees, answer.suspicions]).toEqual([false, []]);
  });

  it('names no part where the ratio was turned round', () => {
    const { suspicions } = reconcile(given('reconcile-turned-round') as never);
    expect(suspicions).toHaveLength(1);
    expect(suspicions[0]).not.toHaveProperty('part');
  });

  it('cannot turn round a ratio of equal parts', () => {
    const answer = reconcile({
      parts: [
        { name: 'A', parts: 1 },
        { name: 'B', parts: 1 },
      ],
      batches: [three.batches[0]],
      used: used(4, 4, 0).slice(0, 2),
      unit: 'l',
    });
    expect([answer.agrees, answer.suspicions]).toEqual([false, []]);
  });
});

it('a graduated batch counts the lines of the cup in any unit', () => {
  // 25 lines of 0.3 l are 7.5 l, whatever a litre is in gallons.
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 2, max: 90 }), (tenths, lines) => {
      const answer = graduatedBatch({
        parts: [
          { name: 'A', parts: lines - 1 },
          { name: 'B', parts: 1 },
        ],
        graduation: q(tenths / 10, 'l'),
        largest: q((tenths * lines) / 10, 'l'),
        unit: 'usgal',
      });
      expect(answer.batch.value).toBeCloseTo(answer.smallest.value, 9);
      expect(answer.cautions).toEqual([]);
    }),
    { seed: 10 },
  );
});

describe('a graduated batch that is off either way by the same', () => {
  const poured = (weights: readonly number[], lines: number) => {
    const parts = weights.map((weight, i) => ({ name: String(i), parts: weight }));
    return graduatedBatch({ parts, graduation: q(1, 'ml'), largest: q(lines, 'ml'), unit: 'ml' });
  };

  it('names the first of two parts, round-off or not', () => {
    // One line of each: 99/90 = 1.1 and 99/110 = 0.9.
    expect(poured([99, 90, 110], 5).off.value).toBeCloseTo(10, 12);
    expect(poured([99, 110, 90], 5).off.value).toBeCloseTo(-10, 12);
  });

  it('is the larger of two batches, round-off or not', () => {
    // 1 + 1 lines of 2 : 3 lack a third of B, 1 + 2 have a third too much; 2 + 4 and 3 + 6 are one ratio.
    const lines = (weights: readonly number[], most: number) =>
      poured(weights, most).parts.map(({ volume }) => volume.value);
    expect(lines([0.02, 0.03], 3)).toEqual([1, 2]);
    expect(lines([0.07, 0.13], 9)).toEqual([3, 6]);
  });
});

it('a graduated batch pours whole lines and no more than the largest', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(1, 2, 3, 1.77, 2.5, 0.4), { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 3, max: 60 }),
      (weights, lines) => {
        const parts = weights.map((weight, i) => ({ name: String(i), parts: weight }));
        const answer = graduatedBatch({
          parts,
          graduation: q(5, 'ml'),
          largest: q(5 * lines, 'ml'),
          unit: 'ml',
        });
        expect(answer.batch.value).toBeLessThanOrEqual(5 * lines);
        expect(answer.parts.reduce((sum, { volume }) => sum + volume.value, 0)).toBe(answer.batch.value);
        for (const { volume } of answer.parts)
          expect([volume.value % 5, volume.value > 0]).toEqual([0, true]);
        expect(answer.smallest.value <= 5 * lines).toBe(answer.cautions.length === 0);
        const [first = 1, ...sets] = answer.parts.map(({ volume }, i) => volume.value / (weights[i] ?? 1));
        const worst = Math.max(0, ...sets.map((set) => Math.abs(set / first - 1)));
        expect(Math.abs(answer.off.value)).toBeCloseTo(100 * worst, 9);
        if (answer.cautions.length === 0) expect(answer.batch.value % answer.smallest.value).toBe(0);
      },
    ),
    { seed: 9 },
  );
});

describe('a ratio of three parts', () => {
  const used = (name: string, volume: number, readingError: number) => ({
    name,
    volume: q(volume, 'l'),
    readingError: q(readingError, 'ml'),
  });
  const judged = (...others: ReturnType<typeof used>[]) =>
    checkRatio({
      used: [used('A', 1, 0), ...others],
      parts: ['A', 'B', 'C'].map((name) => ({ name, parts: 1 })),
      ratioTolerance: q(3, '%'),
      unit: '%',
    });

  it('is undecided where one part is, though another is further off and meets', () => {
    const check = judged(used('B', 1.025, 1), used('C', 1.024, 50));
    expect([check.verdict, check.part]).toEqual(['undecided', 'C']);
    expect(check.cautions).toMatchObject([{ code: 'mix-ratio-undecided', params: { part: 'C' } }]);
  });

  it('fails where one part does, though another is further off and nobody can tell', () => {
    const check = judged(used('B', 1.032, 50), used('C', 0.969, 0));
    expect([check.verdict, check.part]).toEqual(['fails', 'C']);
  });
});

it.each([7.3, 14.6, 29.2, 532.9])(
  'an error as large as a reading of %d ml is refused in whatever unit',
  (ml) => {
    const [volume, error] = [q(ml / 1000, 'l'), q(ml, 'ml')];
    const amounts = [
      { name: 'A', amount: volume },
      { name: 'B', amount: volume },
    ];
    const reading = { amounts, readingError: error, unit: '%' };
    expect(refusal(readingRatioError, reading)).toBe('conflict readingError');
    const check = {
      used: [
        { name: 'A', volume, readingError: error },
        { name: 'B', volume },
      ],
      parts: ['A', 'B'].map((name) => ({ name, parts: 1 })),
      ratioTolerance: q(1, '%'),
      unit: '%',
    };
    expect(refusal(checkRatio, check)).toBe('conflict used');
  },
);

it('an addition of 0 is 0, whatever rounding leaves of the parts', () => {
  const answer = batchWithAdditions({
    total: q(1, 'l'),
    parts: ['A', 'B', 'C', 'D', 'E', 'F'].map((name) => ({ name, parts: 1, density })),
    additions: [{ name: 'pigment', density, byMass: q(0, '%') }],
    units: { volume: 'l', mass: 'kg' },
  });
  expect(answer.additions).toMatchObject([{ volume: { value: 0 }, mass: { value: 0 } }]);
});

it('cans in ratio leave nothing over in another unit either', () => {
  const kit = usablePartKit({
    onHand: [
      { name: 'A', volume: q(3, 'impgal') },
      { name: 'B', volume: q(1, 'impgal') },
    ],
    parts: [
      { name: 'A', parts: 3 },
      { name: 'B', parts: 1 },
    ],
    unit: 'usgal',
  });
  expect(kit.left.map(({ volume }) => volume.value)).toEqual([0, 0]);
  expect(kit.cautions).toEqual([]);
});

it('an isocyanate lighter than its group is refused: its prepolymer would be more than all NCO', () => {
  const of = (equivalentWeight: number) => ({
    mass: q(1, 'kg'),
    equivalentWeight: q(equivalentWeight, 'g/eq'),
  });
  const input = { isocyanates: [of(125), of(10)], polyols: [of(1000)], unit: '%' };
  expect(refusal(prepolymerContent, input)).toBe('out-of-range isocyanates.1.equivalentWeight');
});

it('molecules with too few groups gel at no ratio, and no ends of one are named', () => {
  const input = { resinFunctionality: 1.9, hardenerFunctionality: 2, index: q(100, '%'), unit: '%' as const };
  const answer = gelPoint(input);
  expect(answer).not.toHaveProperty('leastIndex');
  expect(answer).not.toHaveProperty('mostIndex');
  expect(answer.cautions).toMatchObject([
    { code: 'gels-at-no-ratio', params: { resinFunctionality: 1.9, hardenerFunctionality: 2 } },
  ]);
  expect(gelPoint({ ...input, resinFunctionality: 2 })).toMatchObject({
    gels: true,
    leastIndex: q(100, '%'),
  });
});
