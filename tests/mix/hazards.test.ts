/** What a mix raises where it may hurt somebody, and how grave it is. */
import { expect, it } from 'vitest';
import { surfaceProfile } from '../../src/film/index.ts';
import { checkRatio, isocyanateNeeded } from '../../src/mix/index.ts';
import { q } from '../support/quantity.ts';

const cautions = (answer: { readonly cautions: readonly { code: string; severity: string }[] }) =>
  answer.cautions.map(({ code, severity }) => `${severity}: ${code}`);

it('a mix surely off ratio is a danger, one that nobody can tell is a caution', () => {
  const check = (hardener: number, readingError: number) =>
    checkRatio({
      used: [
        { name: 'A', volume: q(20, 'l') },
        { name: 'B', volume: q(hardener, 'l'), readingError: q(readingError, 'l') },
      ],
      parts: [
        { name: 'A', parts: 2 },
        { name: 'B', parts: 1 },
      ],
      ratioTolerance: q(3, '%'),
      unit: '%',
    });
  expect(cautions(check(9, 0.1))).toContain('danger: mix-off-ratio');
  expect(cautions(check(9.7, 0.3))).toContain('caution: mix-ratio-undecided');
});

it('water in a mix with isocyanate foams, and no water does not', () => {
  const mix = (grams: number) =>
    cautions(
      isocyanateNeeded({
        components: [{ mass: q(10, 'kg'), equivalentWeight: q(500, 'g/eq') }],
        water: q(grams, 'g'),
        isocyanate: q(135, 'g/eq'),
        index: q(105, '%'),
        unit: 'kg',
      }),
    );
  expect(mix(20)).toContain('danger: water-foams-isocyanate');
  expect(mix(0)).not.toContain('danger: water-foams-isocyanate');
});

it('a floor to be prepared further raises dust, one that is rough enough does not', () => {
  const advice = (profileClass: number) =>
    cautions(surfaceProfile({ thickness: q(20, 'mil'), profileClass }));
  expect(advice(2)).toContain('danger: silica-dust');
  expect(advice(4)).not.toContain('danger: silica-dust');
});
