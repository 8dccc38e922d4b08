import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { appliedThickness } from '../../src/film/index.ts';
import { asApplied, materialForecast, notchGaugeReading, ratioDrift } from '../../src/inspect/index.ts';
import { checkRatio } from '../../src/mix/index.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

describe('a comb', () => {
  const gauge = { series: 'ASTM D4414', shortest: q(0.5, 'mil'), longest: q(100, 'mil') } as const;
  const read = (value: number) => notchGaugeReading({ gauge, lastWetted: q(value, 'mil'), unit: 'mil' });

  it('brackets every film between its tabs', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.51, max: 99, noNaN: true }), (film) => {
        const tabs = [
          ...Array.from({ length: 12 }, (_, i) => (i + 1) / 2),
          ...[7, 8, 9, 10],
          ...Array.from({ length: 10 }, (_, i) => 12 + 2 * i),
          ...Array.from({ length: 14 }, (_, i) => 35 + 5 * i),
        ];
        const last = tabs.filter((tab) => tab <= film).at(-1) ?? 0;
        const { wet } = read(last);
        expect(wet.low.value).toBeLessThanOrEqual(film + 1e-9);
        expect(wet.high?.value).toBeGreaterThan(film - 1e-9);
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  it('has no tab between its tabs', () => {
    const no = (more: object) =>
      refusal(notchGaugeReading, { gauge, lastWetted: q(8, 'mil'), unit: 'mil', ...more });
    expect(no({ lastWetted: q(11, 'mil') })).toBe('conflict lastWetted');
    expect(no({ gauge: [q(4, 'mil'), q(4, 'mil')] })).toBe('conflict gauge');
    expect(no({ gauge: [q(4, 'mil')] })).toBe('out-of-range gauge');
    expect(no({ gauge: { ...gauge, longest: q(0.5, 'mil') } })).toBe('conflict gauge.longest');
    expect(no({ gauge: { ...gauge, longest: q(11, 'mil') } })).toBe('conflict gauge.longest');
    expect(no({ gauge: { ...gauge, series: 'other' } })).toBe('out-of-range gauge.series');
    expect(no({ planned: {} })).toBe('missing planned.least');
    expect(no({ planned: { least: q(9, 'mil'), most: q(8, 'mil') } })).toBe('conflict planned.most');
  });

  it('decides against a plan only where all of the interval lies on one side', () => {
    const against = (planned: object) =>
      notchGaugeReading({ gauge, lastWetted: q(16, 'mil'), planned, unit: 'mil' }).verdict;
    expect(against({ least: q(16, 'mil') })).toBe('meets');
    expect(against({ least: q(18, 'mil') })).toBe('fails');
    expect(against({ least: q(17, 'mil') })).toBe('undecided');
    expect(against({ most: q(18, 'mil') })).toBe('meets');
    expect(against({ most: q(17, 'mil') })).toBe('undecided');
    expect(against({ most: q(16, 'mil') })).toBe('undecided');
    expect(against({ most: q(15, 'mil') })).toBe('fails');
  });
});

describe('as applied', () => {
  const units = { thickness: 'mil', spreadRate: 'ft2/usgal' } as const;
  const square = (name: string, used: number) => ({ name, area: q(225, 'ft2'), used: q(used, 'usgal') });
  const plan = { plannedThickness: q(18, 'mil'), tolerance: q(10, '%'), units };

  it('is the film of the film module, and its ends are those of the readings', () => {
    const readings = { residue: q(2, '%'), textureDepth: q(1, 'mil') };
    const { squares } = asApplied({
      ...plan,
      ...readings,
      squares: [square('1', 2.43)],
      readingError: q(0.05, 'usgal'),
    });
    const film = (used: number) =>
      appliedThickness({ ...readings, volume: q(used, 'usgal'), area: q(225, 'ft2'), unit: 'mil' }).value;
    expect(squares[0]?.measured.value).toBeCloseTo(film(2.43), 12);
    expect(squares[0]?.thickness.low.value).toBeCloseTo(film(2.38), 12);
    expect(squares[0]?.thickness.high.value).toBeCloseTo(film(2.48), 12);
  });

  it('a film that the texture drinks is 0 and fails, without a refusal', () => {
    const answer = asApplied({ ...plan, squares: [square('1', 0.1)], textureDepth: q(3, 'mil') });
    expect([answer.verdict, answer.squares[0]?.measured.value]).toEqual(['fails', 0]);
    expect(answer.cautions.map(({ code }) => code)).toEqual(['square-too-thin', 'texture-drinks-all']);
  });

  it('on each side of each end the right error counts', () => {
    // Texture from 0 to 2 mil with a likely 0.5: the film may be 1.5 mil thinner or 0.5 mil thicker.
    const verdict = (used: number) => {
      const texture = { low: q(0, 'mil'), likely: q(0.5, 'mil'), high: q(2, 'mil') };
      const { squares } = asApplied({ ...plan, squares: [square('1', used)], textureDepth: texture });
      const [first] = squares;
      return [first?.end, first?.verdict, first?.uncertainty?.value.toFixed(3)];
    };
    const usedFor = (film: number) => ((film + 0.5) * 225) / (231000 / 144);
    expect(verdict(usedFor(15.6))).toEqual(['least', 'fails', '0.500']);
    expect(verdict(usedFor(15.8))).toEqual(['least', 'undecided', '0.500']);
    expect(verdict(usedFor(17.6))).toEqual(['least', 'undecided', '1.500']);
    expect(verdict(usedFor(17.8))).toEqual(['least', 'meets', '1.500']);
    expect(verdict(usedFor(19.2))).toEqual(['most', 'meets', '0.500']);
    expect(verdict(usedFor(19.4))).toEqual(['most', 'undecided', '0.500']);
    expect(verdict(usedFor(21.2))).toEqual(['most', 'undecided', '1.500']);
    expect(verdict(usedFor(21.4))).toEqual(['most', 'fails', '1.500']);
  });

  it('a batch named twice for one square is one batch', () => {
    const { suspects } = asApplied({ ...plan, squares: [{ ...square('1', 1), batches: ['7', '7'] }] });
    expect(suspects).toEqual([{ batch: '7', squares: ['1'] }]);
  });

  it('by the scale is the same as by the pail', () => {
    const by = (used: object, more: object) =>
      asApplied({
        ...plan,
        squares: [{ name: '1', area: q(20, 'm2'), used: used as { value: number; unit: 'l' } }],
        ...more,
      }).mean.value;
    expect(by(q(12, 'kg'), { density: q(1.2, 'kg/l') })).toBeCloseTo(by(q(10, 'l'), {}), 12);
  });

  it.each([
    [{ squares: [square('1', 2), square('1', 2)] }, 'conflict squares.1.name'],
    [
      { squares: [square('1', 2), { name: '2', area: q(9, 'm2'), used: q(9, 'kg') }] },
      'wrong-unit squares.1.used',
    ],
    [{ squares: [square('1', 2)], density: q(1, 'kg/l') }, 'conflict density'],
    [{ squares: [{ name: '2', area: q(9, 'm2'), used: q(9, 'kg') }] }, 'missing density'],
    [{ squares: [square('1', 2)], readingError: q(9, 'g') }, 'wrong-unit readingError'],
    [{ squares: [{ ...square('1', 2), batches: [''] }] }, 'out-of-range squares.0.batches.0'],
    [{ squares: [square('1', 2)], units: undefined }, 'missing units'],
    [{ squares: [square('1', 0)] }, 'out-of-range squares.0.used'],
  ])('%j is refused', (more, issue) => {
    expect(refusal(asApplied, { ...plan, ...more })).toBe(issue);
  });

  it('the material that is left reaches as far as the floor has taken', () => {
    const forecast = (left: number) =>
      materialForecast({
        squares: [square('1', 2.5), square('2', 2.7)],
        areaLeft: q(450, 'ft2'),
        amountLeft: q(left, 'usgal'),
        units: { amount: 'usgal', area: 'ft2' },
      }).verdict;
    expect([5.4, 5.39, 5, 4.99, 0].map(forecast)).toEqual([
      'meets',
      'undecided',
      'undecided',
      'fails',
      'fails',
    ]);
  });
});

describe('a log of batches', () => {
  const parts = [
    { name: 'A', parts: 2 },
    { name: 'B', parts: 1 },
  ];
  const batch = (name: string, a: number, b: number, error = 0) => ({
    name,
    amounts: [
      { name: 'A', amount: q(a, 'l'), readingError: q(error, 'l') },
      { name: 'B', amount: q(b, 'l'), readingError: q(error, 'l') },
    ],
  });
  const log = { parts, ratioTolerance: q(3, '%'), unit: '%' } as const;

  it('judges each batch as checkRatio does', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.8, max: 1.2, noNaN: true }), (b) => {
        const answer = ratioDrift({ ...log, batches: [batch('1', 2, b, 0.02)] });
        const used = [
          { name: 'A', volume: q(2, 'l'), readingError: q(0.02, 'l') },
          { name: 'B', volume: q(b, 'l'), readingError: q(0.02, 'l') },
        ];
        const check = checkRatio({ used, parts, ratioTolerance: q(3, '%'), unit: '%' });
        expect(answer.verdict).toBe(check.verdict);
        expect(answer.batches[0]?.off).toEqual(check.measured);
        expect(answer.batches[0]?.uncertainty).toEqual(check.uncertainty);
      }),
      { numRuns: 50, seed: 5 },
    );
  });

  it('shows a drift while every batch is within its tolerance', () => {
    const answer = ratioDrift({
      ...log,
      batches: [1.02, 1.01, 1, 0.99, 0.98].map((b, i) => batch(String(i + 1), 2, b)),
    });
    expect(answer.verdict).toBe('meets');
    expect(answer.trends[0]).toMatchObject({ part: 'B', drifts: true });
    expect(answer.trends[0]?.perBatch.value).toBeCloseTo(-1, 9);
    expect(answer.cautions.map(({ code }) => code)).toEqual(['ratio-drifts']);
  });

  it('shows no drift where batches go up and down', () => {
    const answer = ratioDrift({
      ...log,
      batches: [1.02, 0.98, 0.98, 1.02].map((b, i) => batch(String(i + 1), 2, b)),
    });
    expect(answer.trends[0]?.drifts).toBe(false);
  });

  it('at a level of confidence a line must stand out of the scatter about it', () => {
    const drifts = (bs: number[]) =>
      ratioDrift({
        ...log,
        confidence: q(95, '%'),
        batches: bs.map((b, i) => batch(String(i + 1), 2, b)),
      }).trends[0]?.drifts;
    expect(drifts([1.01, 0.995, 1.005, 0.99, 1, 1.005])).toBe(false);
    expect(drifts([1.01, 1.008, 1.001, 0.998, 0.996, 0.99])).toBe(true);
    expect(drifts([1.01, 0.99])).toBe(true);
  });

  it.each([
    [{ batches: [batch('1', 2, 1), batch('1', 2, 1)] }, 'conflict batches.1.name'],
    [{ batches: [{ name: '1', amounts: [{ name: 'A', amount: q(2, 'l') }] }] }, 'missing batches.0.amounts'],
    [{ batches: [batch('1', 2, 1, 2)] }, 'conflict batches.0.amounts'],
    [
      { batches: [{ name: '1', amounts: [{ name: 'A', amount: q(2, 'kg') }] }] },
      'wrong-unit batches.0.amounts.0.amount',
    ],
    [{ parts: [{ name: 'A', parts: 2 }], batches: [batch('1', 2, 1)] }, 'out-of-range parts'],
  ])('%j is refused', (more, issue) => {
    expect(refusal(ratioDrift, { ...log, ...more })).toBe(issue);
  });
});
