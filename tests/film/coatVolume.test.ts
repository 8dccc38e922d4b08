/** The volume of a coat: what goes where adds up, no draw lies outside, and nothing is counted twice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { between } from '../../src/core/between.ts';
import * as film from '../../src/film/index.ts';

const RANGES = {
  area: between(90, 110, 'm2', { likely: 100 }),
  wetThickness: between(250, 400, 'um', { likely: 300 }),
  textureDepth: between(20, 80, 'um', { likely: 40 }),
  porosity: between(0, 60, 'um', { likely: 20 }),
  fills: between(0, 3, 'l', { likely: 1 }),
  transferLoss: between(1, 6, '%', { likely: 2 }),
  residue: between(1, 4, '%', { likely: 2 }),
  toolLoad: between(0.5, 2, 'l', { likely: 1 }),
  lostBatch: between(0, 4, 'l', { likely: 0 }),
};
const asked = { unit: 'l', thicknessUnit: 'um' } as const;

describe('a coat with every loss as a range', () => {
  const coat = film.coatVolume({ ...RANGES, ...asked });

  it('adds up at each end', () => {
    for (const end of ['low', 'likely', 'high'] as const) {
      const parts = [coat.film, ...coat.losses.map(({ volume }) => volume)].map((part) => part[end].value);
      // What keyways take leaves the floor's share of the losses too.
      const fills = RANGES.fills[end]?.value ?? NaN;
      expect(parts.reduce((a, b) => a + b) + fills).toBeCloseTo(coat.volume[end].value, 10);
    }
  });

  it('names each loss with its kind', () => {
    expect(coat.losses.map(({ cause, kind }) => `${cause}: ${kind}`)).toEqual([
      'texture: per-area',
      'porosity: per-area',
      'transfer: share',
      'residue: share',
      'tools: fixed',
      'lost-batch: fixed',
    ]);
    expect(coat.enclosure).toBe('proven');
    expect(coat.driver).toBe('wetThickness');
    expect(coat.basis[0]?.assumption).toBeUndefined();
  });

  it('holds every draw', () => {
    const draw = fc.record(
      Object.fromEntries(
        Object.entries(RANGES).map(([key, { low, high }]) => [
          key,
          fc
            .double({ min: low.value, max: high.value, noNaN: true })
            .map((value) => ({ value, unit: low.unit })),
        ]),
      ),
    );
    fc.assert(
      fc.property(draw, (values) => {
        const one = film.coatVolume({ ...(values as unknown as typeof RANGES), ...asked });
        const { value } = one.volume.likely;
        expect(value).toBeGreaterThanOrEqual(coat.volume.low.value * (1 - 1e-12));
        expect(value).toBeLessThanOrEqual(coat.volume.high.value * (1 + 1e-12));
        one.losses.forEach(({ volume }, i) => {
          expect(volume.likely.value).toBeGreaterThanOrEqual((coat.losses[i]?.volume.low.value ?? 0) - 1e-12);
          expect(volume.likely.value).toBeLessThanOrEqual((coat.losses[i]?.volume.high.value ?? 0) + 1e-12);
        });
      }),
      { seed: 31, numRuns: 300 },
    );
  });
});

describe('the same coat in other words', () => {
  const area = { value: 100, unit: 'm2' } as const;
  const wetThickness = { value: 200, unit: 'um' } as const;

  it('by dry film and solids, by rate, and by its own formula', () => {
    const losses = {
      residue: { value: 3, unit: '%' },
      toolLoad: { value: 1, unit: 'l' },
    } as const;
    const wanted = film.volumeNeeded({ area, wetThickness, ...losses, unit: 'l' }).value;
    const same = [
      film.coatVolume({ area, wetThickness, ...losses, ...asked }),
      film.coatVolume({
        area,
        dryThickness: { value: 100, unit: 'um' },
        solidsByVolume: { value: 50, unit: '%' },
        ...losses,
        ...asked,
      }),
      film.coatVolume({ area, spreadRate: { value: 5, unit: 'm2/l' }, ...losses, ...asked }),
    ];
    for (const { volume, wetThickness: laid } of same) {
      expect(volume.likely.value).toBeCloseTo(wanted, 10);
      expect(laid.likely.value).toBeCloseTo(200, 10);
    }
  });

  it('takes the middle of a range that has no likely value, and says so', () => {
    const coat = film.coatVolume({ area, wetThickness: between(100, 300, 'um'), ...asked });
    expect(coat.volume.likely.value).toBeCloseTo(20, 10);
    expect(coat.basis[0]?.assumption).toContain('middle');
  });

  it('warns of a floor that was taken to drink nothing', () => {
    const codes = (more: object) =>
      film.coatVolume({ area, wetThickness, ...more, ...asked }).cautions.map(({ code }) => code);
    expect(codes({})).toEqual(['nothing-for-texture']);
    expect(codes({ textureDepth: { value: 10, unit: 'um' } })).toEqual([]);
    expect(codes({ porosity: { value: 10, unit: 'um' } })).toEqual([]);
  });
});

describe('what does not go together', () => {
  const area = { value: 100, unit: 'm2' };
  const wetThickness = { value: 200, unit: 'um' };
  const spreadRate = { value: 5, unit: 'm2/l' };
  const depth = { value: 10, unit: 'um' };
  const half = { value: 50, unit: '%' };
  it.each([
    ['no film', {}, 'missing', 'wetThickness'],
    ['two films', { wetThickness, spreadRate }, 'conflict', 'spreadRate'],
    ['dry film without solids', { dryThickness: depth }, 'missing', 'solidsByVolume'],
    ['solids without dry film', { wetThickness, solidsByVolume: half }, 'conflict', 'solidsByVolume'],
    ['a rate and a texture', { spreadRate, textureDepth: depth }, 'conflict', 'textureDepth'],
    ['a rate and a porosity', { spreadRate, porosity: depth }, 'conflict', 'porosity'],
    ['a film pulled tight', { wetThickness, pulledTight: true }, 'conflict', 'pulledTight'],
    ['pulled how?', { spreadRate, pulledTight: 'yes' }, 'wrong-type', 'pulledTight'],
    ['everything lost', { wetThickness, residue: { value: 100, unit: '%' } }, 'out-of-range', 'residue'],
    [
      'more than everything missed',
      { wetThickness, transferLoss: { value: 120, unit: '%' } },
      'out-of-range',
      'transferLoss',
    ],
    [
      'more solids than paint',
      { dryThickness: depth, solidsByVolume: { value: 101, unit: '%' } },
      'out-of-range',
      'solidsByVolume',
    ],
    [
      'a range upside down',
      { wetThickness: { low: depth, high: { value: 9, unit: 'um' } } },
      'conflict',
      'wetThickness',
    ],
    ['a range without an end', { wetThickness: { low: depth } }, 'missing', 'wetThickness.high'],
    ['no thickness unit', { wetThickness, thicknessUnit: undefined }, 'wrong-unit', 'thicknessUnit'],
  ])('%s', (_, more, code, path) => {
    const result = attempt(film.coatVolume, { area, ...asked, ...more });
    expect(result.ok ? undefined : [result.issues[0].code, result.issues[0].path.join('.')]).toEqual([
      code,
      path,
    ]);
    expect(result.ok ? undefined : result.issues[0].function).toBe('coatVolume');
  });
});

it('says what is due in words that make a sentence with the name of the field', () => {
  const mil = { value: 16, unit: 'mil' } as const;
  const rate = { value: 100, unit: 'ft2/usgal' } as const;
  const message = (amount: object) => {
    const result = attempt(film.coatVolume, { area: { value: 9, unit: 'm2' }, ...asked, ...amount });
    return result.ok
      ? ''
      : result.issues.map(({ path, expected }) => `${path.join('.')} must be ${expected}`);
  };
  expect(message({})).toEqual(['wetThickness must be a length, or dryThickness or spreadRate in its place']);
  expect(message({ wetThickness: mil, spreadRate: rate, pulledTight: true, textureDepth: mil })).toEqual([
    'spreadRate must be nothing beside wetThickness',
    'textureDepth must be nothing beside spreadRate, which holds it',
  ]);
  expect(message({ dryThickness: mil })).toEqual(['solidsByVolume must be a share beside dryThickness']);
});
