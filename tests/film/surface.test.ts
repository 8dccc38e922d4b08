/** Thinner, solids, texture, squares and profiles: what two ways must agree on, and what is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { between } from '../../src/core/between.ts';
import * as film from '../../src/film/index.ts';

const pct = (value: number) => ({ value, unit: '%' as const });
const share = fc.double({ min: 0.01, max: 0.95, noNaN: true });
const issueOf = (run: (input: never) => unknown, input: object) => {
  const result = attempt(run, input);
  return result.ok ? undefined : [result.issues[0].code, result.issues[0].path.join('.')];
};

describe('two ways to one figure', () => {
  it('thinner on the paint and on the mix are one amount under t / (1 + t)', () => {
    fc.assert(
      fc.property(share, share, (solids, thinner) => {
        const solidsByVolume = { value: solids, unit: 'fraction' as const };
        const onPaint = film.thinnedSolids({
          solidsByVolume,
          thinnerOfPaint: { value: thinner, unit: 'fraction' },
          unit: 'fraction',
        });
        const onMix = film.thinnedSolids({
          solidsByVolume,
          thinnerOfMix: { value: thinner / (1 + thinner), unit: 'fraction' },
          unit: 'fraction',
        });
        expect(onPaint.value / onMix.value).toBeCloseTo(1, 12);
      }),
      { seed: 41 },
    );
  });

  it('thinner does not change what a gallon of the paint as supplied covers', () => {
    const solidsByVolume = pct(50);
    const dryThickness = { value: 4, unit: 'mil' as const };
    const thinned = film.thinnedSolids({ solidsByVolume, thinnerOfPaint: pct(25), unit: '%' });
    const mix = film.theoreticalSpreadRate({ dryThickness, solidsByVolume: thinned, unit: 'ft2/usgal' });
    const paint = film.theoreticalSpreadRate({ dryThickness, solidsByVolume, unit: 'ft2/usgal' });
    expect(mix.value * 1.25).toBeCloseTo(paint.value, 9);
  });

  it('solids by weight and by the solvent in a gallon', () => {
    const density = { value: 10, unit: 'lb/usgal' as const };
    const solventDensity = { value: 7.36, unit: 'lb/usgal' as const };
    const byWeight = film.solidsByVolumeFromWeight({
      solidsByWeight: pct(63),
      density,
      solventDensity,
      unit: '%',
    });
    const solventContent = { value: 3.7, unit: 'lb/usgal' as const };
    const bySolvent = film.solidsByVolumeFromSolvent({ solventContent, solventDensity, unit: '%' });
    expect(byWeight.value).toBeCloseTo(bySolvent.value, 10);
  });

  it('the rates, the films and the losses', () => {
    const dryThickness = { value: 10, unit: 'mil' as const };
    const solidsByVolume = pct(60);
    const spreadRate = film.theoreticalSpreadRate({ dryThickness, solidsByVolume, unit: 'ft2/usgal' });
    const wet = film.wetThicknessForDry({ dryThickness, solidsByVolume, unit: 'mil' });
    expect(film.wetThickness({ spreadRate, unit: 'mil' }).value).toBeCloseTo(wet.value, 10);
    const practical = film.practicalSpreadRate({ spreadRate, loss: pct(20), unit: 'ft2/usgal' });
    const area = film.areaCovered({
      volume: { value: 10, unit: 'usgal' },
      spreadRate: practical,
      unit: 'ft2',
    });
    const net = film.volumeNeeded({ area, wetThickness: wet, unit: 'usgal' });
    const gross = film.volumeWithLoss({ netVolume: net, loss: pct(20), unit: 'usgal' });
    expect(gross.value).toBeCloseTo(10, 10);
    // A mark-up of the same per cent falls short by its square.
    const marked = film.volumeWithSpare({ volume: net, spare: pct(20), unit: 'usgal' });
    expect(gross.value - marked.value).toBeCloseTo(0.4, 10);
  });

  it('a first coat on brick takes 1.78 times what a later one takes, by the middle of both published rates', () => {
    const gallons = (low: number, high: number) =>
      film.coatVolume({
        area: { value: 900, unit: 'ft2' },
        spreadRate: between(low, high, 'ft2/usgal', { likely: (low + high) / 2 }),
        unit: 'usgal',
        thicknessUnit: 'mil',
      }).volume.likely.value;
    // 150 to 300 and 350 to 450 ft² a gallon: army-tm-43-0139.
    expect(gallons(150, 300) / gallons(350, 450) - 1).toBeCloseTo(400 / 225 - 1, 12);
    expect(gallons(150, 300) / gallons(350, 450) - 1).toBeCloseTo(0.778, 3);
  });

  it('what was poured on a bay is what its film needed', () => {
    fc.assert(
      fc.property(share, share, share, share, (wet, texture, residue, tools) => {
        const given = {
          area: { value: 20, unit: 'm2' as const },
          textureDepth: { value: texture, unit: 'mm' as const },
          residue: { value: residue, unit: 'fraction' as const },
          toolLoad: { value: tools, unit: 'l' as const },
        };
        const volume = film.volumeNeeded({ ...given, wetThickness: { value: wet, unit: 'mm' }, unit: 'l' });
        const back = film.appliedThickness({ ...given, volume, unit: 'mm' });
        expect(back.value).toBeCloseTo(wet, 9);
      }),
      { seed: 42 },
    );
  });

  it('a test square gives the rate that its coat was laid at, drink included', () => {
    const area = { value: 10, unit: 'm2' as const };
    const wetThickness = { value: 300, unit: 'um' as const };
    const textureDepth = { value: 80, unit: 'um' as const };
    const mixed = film.volumeNeeded({ area, wetThickness, textureDepth, unit: 'l' });
    const { spreadRate } = film.testSquare({ area, mixed, unit: 'm2/l' });
    const whole = { value: 750, unit: 'm2' as const };
    const asked = { unit: 'l', thicknessUnit: 'um' } as const;
    const planned = film.coatVolume({ area: whole, spreadRate, ...asked });
    const reckoned = film.coatVolume({ area: whole, wetThickness, textureDepth, ...asked });
    expect(planned.volume.likely.value).toBeCloseTo(reckoned.volume.likely.value, 9);
  });
});

describe('what is refused', () => {
  const solidsByVolume = pct(50);
  const kgl = (value: number) => ({ value, unit: 'kg/l' as const });
  const mixed = { value: 1, unit: 'l' } as const;
  const square = { area: { value: 1, unit: 'm2' }, unit: 'm2/l' } as const;
  it.each([
    ['no thinner', film.thinnedSolids, { solidsByVolume, unit: '%' }, ['missing', 'thinnerOfPaint']],
    [
      'both thinners',
      film.thinnedSolids,
      { solidsByVolume, thinnerOfPaint: pct(5), thinnerOfMix: pct(5), unit: '%' },
      ['conflict', 'thinnerOfMix'],
    ],
    [
      'nothing but thinner',
      film.thinnedSolids,
      { solidsByVolume, thinnerOfMix: pct(100), unit: '%' },
      ['out-of-range', 'thinnerOfMix'],
    ],
    [
      'more solids than paint',
      film.thinnedSolids,
      { solidsByVolume: pct(101), thinnerOfMix: pct(5), unit: '%' },
      ['out-of-range', 'solidsByVolume'],
    ],
    [
      'a loss of everything',
      film.volumeWithLoss,
      { netVolume: { value: 1, unit: 'l' }, loss: pct(100), unit: 'l' },
      ['out-of-range', 'loss'],
    ],
    [
      'a solvent as light as air',
      film.solidsByVolumeFromWeight,
      { solidsByWeight: pct(50), density: kgl(1.2), solventDensity: kgl(0.5), unit: '%' },
      ['conflict', 'solventDensity'],
    ],
    [
      'more solvent than there is room',
      film.solidsByVolumeFromSolvent,
      { solventContent: kgl(0.9), solventDensity: kgl(0.88), unit: '%' },
      ['conflict', 'solventContent'],
    ],
    [
      'a bay on which nothing is left',
      film.appliedThickness,
      {
        volume: { value: 1, unit: 'l' },
        area: { value: 10, unit: 'm2' },
        textureDepth: { value: 100, unit: 'um' },
        unit: 'um',
      },
      ['conflict', 'volume'],
    ],
    [
      'a square measured twice',
      film.testSquare,
      { ...square, mixed, mixedMass: { value: 1, unit: 'kg' } },
      ['conflict', 'mixedMass'],
    ],
    [
      'a square with a density for nothing',
      film.testSquare,
      { ...square, mixed, density: kgl(1) },
      ['conflict', 'density'],
    ],
    ['a square of no material', film.testSquare, square, ['missing', 'mixed']],
    [
      'more left than mixed',
      film.testSquare,
      { ...square, mixed, leftOver: mixed },
      ['conflict', 'leftOver'],
    ],
  ])('%s', (_, run, input, issue) => {
    expect(issueOf(run as (input: never) => unknown, input)).toEqual(issue);
  });

  it.each([
    ['between two', 2.5, 'out-of-range'],
    ['beyond the last', 11, 'out-of-range'],
    ['in words', 'three', 'wrong-type'],
  ])('a class %s', (_, profileClass, code) => {
    const thickness = { value: 10, unit: 'mil' };
    expect(issueOf(film.surfaceProfile, { thickness, profileClass })).toEqual([code, 'profileClass']);
  });
});

describe('answers that are ranges', () => {
  it('keep no likely value that nobody gave', () => {
    const cup = { value: 500, unit: 'ml' as const };
    const { areaPerCup } = film.poreCoat({ cup, spreadRate: between(15, 20, 'm2/l'), unit: 'm2' });
    expect(areaPerCup).not.toHaveProperty('likely');
    const square = film.testSquare({
      area: between(9, 11, 'm2'),
      mixed: { value: 2, unit: 'l' },
      unit: 'm2/l',
    });
    expect(square.spreadRate).not.toHaveProperty('likely');
    expect(square.driver).toBe('area');
  });

  it('profiles: a floor too smooth, right, and too rough for its coat', () => {
    const fit = (profileClass: number) =>
      film.surfaceProfile({ thickness: { value: 500, unit: 'um' }, profileClass }).fit;
    expect([2, 3, 5, 6].map(fit)).toEqual(['smoother', 'within', 'within', 'rougher']);
    const thick = film.surfaceProfile({ thickness: { value: 1, unit: 'in' } });
    expect(thick).toMatchObject({ systems: ['concrete-overlay'], classes: { from: 5, to: 10 } });
    expect(thick.fit).toBeUndefined();
  });
});

describe('nothing left, in whatever unit', () => {
  it.each([7.3, 14.6, 29.2, 532.9])('%d ml poured and as much held back or left over is no film', (ml) => {
    const [volume, same] = [
      { value: ml / 1000, unit: 'l' },
      { value: ml, unit: 'ml' },
    ];
    const area = { value: 1, unit: 'm2' };
    for (const [one, other] of [
      [volume, same],
      [same, volume],
    ]) {
      const applied = { volume: one, area, toolLoad: other, unit: 'mm' };
      expect(issueOf(film.appliedThickness, applied)).toEqual(['conflict', 'volume']);
      const square = { area, mixed: one, leftOver: other, unit: 'm2/l' };
      expect(issueOf(film.testSquare, square)).toEqual(['conflict', 'leftOver']);
    }
  });
});

it('a caution holds a copy of the thickness and not the one that came in', () => {
  const thickness = { value: 45, unit: 'mil' as const };
  const [caution] = film.surfaceProfile({ thickness }).cautions;
  expect(caution?.params).toEqual({ thickness });
  expect(caution?.params.thickness).not.toBe(thickness);
});
