import { describe, expect, it } from 'vitest';
import { aggregateExposure, glossLevel, pendulumClass, polishLevel } from '../../src/inspect/index.ts';
import { cautionText } from '../../src/messages/index.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const steps = (most: number) => Array.from({ length: most * 2 + 1 }, (_, i) => i / 2);

describe('a class with what its reading may be off by', () => {
  it('is sure only where both ends of the reading belong to it', () => {
    for (const value of steps(100)) {
      for (const off of [0, 0.5, 2, 9]) {
        const grip = pendulumClass({ pendulumValue: value, readingError: off });
        // An error that ends exactly on a boundary does not reach over it.
        const ends = [Math.max(0, value - off), value + Math.max(0, off - 0.25)].map(
          (end) => pendulumClass({ pendulumValue: end }).slipPotential,
        );
        expect([value, off, grip.slipPotential === 'undecided']).toEqual([value, off, ends[0] !== ends[1]]);
        expect(grip.possible).toEqual(expect.arrayContaining([...new Set(ends)]));
        if (grip.slipPotential !== 'undecided') expect(grip.possible).toEqual([grip.slipPotential]);
      }
    }
  });

  it('without an error is what it was: one level and nothing undecided', () => {
    for (const value of steps(100)) {
      const { level, possible } = polishLevel({ imageClarity: value });
      expect(possible).toEqual([level]);
      expect(glossLevel({ gloss60: value }).undecided).toBe(false);
    }
  });

  it('names every class in its caution, and on a slippery floor what to do', () => {
    const [grip] = pendulumClass({ pendulumValue: 36, readingError: 2 }).cautions.map(cautionText);
    expect(grip).toMatch(/36 may be off by 2.*moderate, low.*keep people off/);
    const [cut] = aggregateExposure({
      cementFines: q(94, '%'),
      fineAggregate: q(4, '%'),
      coarseAggregate: q(2, '%'),
      shareError: q(3, '%'),
    }).cautions.map(cautionText);
    expect(cut).toMatch(/94 % and may be off by 3 %, which leaves open A, none/);
  });

  it.each([
    [pendulumClass, { pendulumValue: 30, readingError: -1 }, 'out-of-range readingError'],
    [pendulumClass, { pendulumValue: 30, readingError: { standardUncertainty: 1 } }, 'missing confidence'],
    [polishLevel, { imageClarity: 30, hazeError: 1 }, 'conflict hazeError'],
    [glossLevel, { gloss60: 30, sheen85Error: 1 }, 'conflict sheen85Error'],
    [glossLevel, { gloss60: 30, gloss60Error: q(1, '%') }, 'wrong-type gloss60Error'],
  ])('%o with %j is refused', (classify, given, issue) => {
    expect(refusal(classify as (input: never) => unknown, given)).toBe(issue);
  });
});
