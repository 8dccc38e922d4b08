/**
 * A corridor in 2:1 epoxy by volume with 5 % of pigment, 2.5 gal in a tapered pail, then by scale. Expected figures
 * were worked with exact fractions.
 */
import { expect, it } from 'vitest';
import { wetThicknessForDry } from '../../src/film/index.ts';
import {
  batchWithAdditions,
  markHeight,
  pailMarks,
  pailVolume,
  readingRatioError,
  thinnedMix,
  weightRatio,
} from '../../src/mix/index.ts';
import { q } from '../support/quantity.ts';

const parts = [
  { name: 'A', parts: 2, density: q(9.45, 'lb/usgal') },
  { name: 'B', parts: 1, density: q(8.15, 'lb/usgal') },
];
const pail = { diameter: q(10.3, 'in'), topDiameter: q(11.3, 'in'), height: q(13.5, 'in') };
const batch = batchWithAdditions({
  total: q(2.5, 'usgal'),
  parts,
  additions: [{ name: 'pigment', density: q(12, 'lb/usgal'), byMass: q(5, '%') }],
  units: { volume: 'usgal', mass: 'lb' },
});
const [a, b] = batch.parts;
const [pigment] = batch.additions;
if (!a || !b || !pigment) throw new Error('three measures are due');

it('is 100 to 43.12 by weight', () => {
  expect(weightRatio({ parts }).parts[1]?.weightParts).toBeCloseTo(43.1216931, 7);
});

it('measures A, pigment and B to 2.5 gal', () => {
  expect(a.volume.value).toBeCloseTo(1.60631818, 8);
  expect(pigment.volume.value).toBeCloseTo(0.0905227227, 9);
  expect(b.volume.value).toBeCloseTo(0.803159092, 8);
  expect([a, b, pigment].map(({ mass }) => mass.value.toFixed(6))).toEqual([
    '15.179707',
    '6.545747',
    '1.086273',
  ]);
});

it('marks the pail, and finds that a sixteenth of an inch is more than the tolerance', () => {
  const { marks, cautions } = pailMarks({
    pours: [a, pigment, b],
    pail,
    graduation: q(1 / 16, 'in'),
    ratioTolerance: q(3, '%'),
    unit: 'in',
  });
  expect(marks.map(({ mark }) => mark.field.value)).toEqual([4.3125, 4.5625, 6.625]);
  expect(marks[0]?.mark.exact.value).toBeCloseTo(4.31780688, 7);
  const off = marks[2]?.off;
  expect(off?.atMarks.value).toBeCloseTo(0.359838659, 6);
  expect(off?.low.value).toBeCloseTo(-4.15581779, 6);
  expect(off?.high.value).toBeCloseTo(5.01380603, 6);
  expect(cautions.map(({ code, params }) => [code, params.name])).toEqual([
    ['marks-off-ratio', 'pigment'],
    ['reading-moves-ratio', 'B'],
  ]);
});

it('is ten times better on the scale', () => {
  const { off, cautions } = readingRatioError({
    amounts: [
      { name: 'A', amount: a.mass },
      { name: 'B', amount: b.mass },
    ],
    readingError: q(0.02, 'lb'),
    ratioTolerance: q(3, '%'),
    unit: '%',
  });
  expect(off[0]?.low.value).toBeCloseTo(-0.436721371, 7);
  expect(cautions).toEqual([]);
});

it('comes out 15 % short of A where the pail is taken for a straight one of its top diameter', () => {
  const { marks } = pailMarks({
    pours: [a],
    pail: { diameter: pail.topDiameter, height: pail.height },
    graduation: q(1 / 16, 'in'),
    unit: 'in',
  });
  const height = marks[0]?.mark.exact ?? q(0, 'in');
  const poured = pailVolume({ fillHeight: height, pail, unit: 'usgal' });
  expect((poured.value / a.volume.value - 1) * 100).toBeCloseTo(-14.6855907, 6);
});

it('takes 4.6 % too much B where a stick is cut in equal thirds', () => {
  const level = markHeight({ volume: q(a.volume.value + b.volume.value, 'usgal'), pail, unit: 'in' });
  expect(level.value).toBeCloseTo(6.38247, 5);
  const twoThirds = pailVolume({ fillHeight: q((level.value * 2) / 3, 'in'), pail, unit: 'usgal' });
  const third = a.volume.value + b.volume.value - twoThirds.value;
  expect((third / twoThirds.value / (1 / 2) - 1) * 100).toBeCloseTo(4.5659546, 6);
});

it('is laid 16.8 mil wet for 16 dry when 5 % of thinner goes in, with 41 g/l of solvent', () => {
  const thinned = thinnedMix({
    solidsByVolume: q(100, '%'),
    thinner: q(5, '%'),
    thinnerDensity: q(860, 'g/l'),
    units: { share: 'fraction', density: 'g/l' },
  });
  expect(thinned.vocAdded.value).toBeCloseTo(40.952381, 6);
  const wet = wetThicknessForDry({
    dryThickness: q(16, 'mil'),
    solidsByVolume: thinned.solidsByVolume,
    unit: 'mil',
  });
  expect(wet.value).toBeCloseTo(16.8, 9);
});
