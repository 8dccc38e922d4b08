/** Sensitivities against analytic ones, what correlations do, and what is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dewPoint } from '../../src/climate/dewPoint.ts';
import type { Quantity } from '../../src/core/quantity.ts';
import { dryThickness } from '../../src/film/dryThickness.ts';
import { wetThickness } from '../../src/film/wetThickness.ts';
import { emissionRate } from '../../src/moisture/emissionRate.ts';
import { propagate } from '../../src/statistics/propagate.ts';
import { convert } from '../../src/units/convert.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
const part = fc.double({ min: 1e-6, max: 0.3, noNaN: true });

describe('sensitivities', () => {
  it('of a film are those of its formula', () => {
    fc.assert(
      fc.property(positive, part, (rate, relative) => {
        const spreadRate = { ...q(rate, 'm2/l'), standardUncertainty: q(rate * relative, 'm2/l') };
        const film = propagate(wetThickness, { inputs: { spreadRate, unit: 'mm' } });
        expect(film.value).toBeCloseTo(1 / rate, 10);
        const sensitivity = film.sensitivities.spreadRate?.sensitivity ?? 0;
        expect(Math.abs(sensitivity * rate * rate + 1)).toBeLessThan(1e-8);
        expect(Math.abs(film.standardUncertainty.value / (relative / rate) - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  it('of a product add in squares', () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 1, max: 99, noNaN: true }), part, part, (wet, solids, a, b) => {
        const inputs = {
          wetThickness: { ...q(wet, 'mil'), standardUncertainty: q(wet * a, 'mil') },
          solidsByVolume: { ...q(solids, '%'), standardUncertainty: q(solids * b, '%') },
          unit: 'mil',
        } as const;
        const film = propagate(dryThickness, { inputs });
        const relative = film.standardUncertainty.value / film.value;
        expect(Math.abs(relative / Math.hypot(a, b) - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  it('at the end of a valid range are taken from the inside', () => {
    const inputs = {
      wetThickness: q(10, 'mil'),
      solidsByVolume: { ...q(100, '%'), standardUncertainty: q(0.5, '%') },
      unit: 'mil',
    } as const;
    const film = propagate(dryThickness, { inputs });
    expect(film.sensitivities.solidsByVolume?.sensitivity).toBeCloseTo(0.1, 10);
    expect(film.standardUncertainty.value).toBeCloseTo(0.05, 10);
    expect(film.cautions.map(({ code }) => code)).toEqual(['uncertainty-leaves-range']);
    expect(film.secondOrderUncertainty).toBeUndefined();
  });

  it('of a temperature are by its steps, whatever the scale', () => {
    const air = (unit: 'degC' | 'degF' | 'K', step: 'deltaC' | 'deltaF') => ({
      ...convert({ quantity: q(20, 'degC'), unit }),
      standardUncertainty: convert({ quantity: q(0.4, 'deltaC'), unit: step }),
    });
    const at = (reading: ReturnType<typeof air>) =>
      propagate(dewPoint, {
        inputs: {
          air: reading,
          relativeHumidity: { ...q(60, '%'), standardUncertainty: q(1.5, '%') },
          unit: 'degF',
        },
      }).standardUncertainty;
    const expected = at(air('degC', 'deltaC'));
    expect(expected.unit).toBe('deltaF');
    for (const other of [air('degF', 'deltaF'), air('K', 'deltaC'), air('degF', 'deltaC')]) {
      expect(at(other).value / expected.value).toBeCloseTo(1, 8);
    }
  });

  it('are known by the place of their input', () => {
    const sum = ({ parts }: { parts: readonly { mass: Quantity<'kg'> }[] }): Quantity<'kg'> =>
      q(
        parts.reduce((all, { mass }) => all + mass.value, 0),
        'kg',
      );
    const parts = [
      { mass: { ...q(3, 'kg'), standardUncertainty: q(3, 'g') } },
      { mass: q(1, 'kg') },
      { mass: { ...q(2, 'kg'), standardUncertainty: q(4, 'g') } },
    ] as const;
    const total = propagate(sum, { inputs: { parts } });
    expect(Object.keys(total.sensitivities)).toEqual(['parts.0.mass', 'parts.2.mass']);
    expect(total.standardUncertainty.value).toBeCloseTo(0.005, 12);
    const together = propagate(sum, {
      inputs: { parts },
      correlations: [{ between: ['parts.0.mass', 'parts.2.mass'], coefficient: 1 }],
    });
    expect(together.standardUncertainty.value).toBeCloseTo(0.007, 12);
  });

  it('without any uncertainty there is none', () => {
    const film = propagate(wetThickness, {
      inputs: { spreadRate: q(8, 'm2/l'), unit: 'mm' },
      confidence: q(95, '%'),
    });
    expect(film.expandedUncertainty).toEqual(q(0, 'mm'));
    expect(film.sensitivities).toEqual({});
  });

  it('of nothing but an uncertainty of 0 is told all the same', () => {
    const spreadRate = { ...q(8, 'm2/l'), standardUncertainty: q(0, 'm2/l'), degreesOfFreedom: 3 };
    const film = propagate(wetThickness, { inputs: { spreadRate, unit: 'mm' } });
    expect(film.sensitivities.spreadRate?.sensitivity).toBeCloseTo(-1 / 64, 10);
    expect(film.degreesOfFreedom).toBeUndefined();
  });

  it('of a difference that cancels leave nothing', () => {
    const difference = ({ a, b }: { a: Quantity<'mm'>; b: Quantity<'mm'> }): Quantity<'mm'> =>
      q(a.value - b.value, 'mm');
    const reading = { ...q(3, 'mm'), standardUncertainty: q(0.1, 'mm') };
    const answer = propagate(difference, {
      inputs: { a: reading, b: reading },
      correlations: [{ between: ['a', 'b'], coefficient: 1 }],
    });
    expect(answer.standardUncertainty.value).toBeLessThan(1e-8);
  });
});

it('the answer is a quantity that can be propagated on', () => {
  const gain = { ...q(1.8, 'g'), standardUncertainty: q(0.05, 'g'), degreesOfFreedom: 6 };
  const emission = propagate(emissionRate, {
    inputs: { gain, exposedArea: q(64.06, 'in2'), exposure: q(66, 'h'), unit: 'lb/1000ft2/24h' },
  });
  const again = propagate(convert<'lb/1000ft2/24h', 'g/m2/24h'>, {
    inputs: { quantity: emission, unit: 'g/m2/24h' },
  });
  expect(again.standardUncertainty.value / again.value).toBeCloseTo(0.05 / 1.8, 8);
  expect(again.degreesOfFreedom).toBeCloseTo(6, 9);
});

describe('refused is', () => {
  const spreadRate = { ...q(8, 'm2/l'), standardUncertainty: q(0.1, 'm2/l') };
  const inputs = { spreadRate, unit: 'mm' };
  const why = (input: unknown, formula: unknown = wetThickness) =>
    refusal((given: never) => propagate(formula as typeof wetThickness, given), input);
  it('no input, no formula, and a formula that answers no quantity', () => {
    expect(why(undefined)).toBe('missing ');
    expect(why({})).toBe('missing inputs');
    expect(why({ inputs }, 'wetThickness')).toBe('wrong-type formula');
    expect(why({ inputs }, () => 12)).toBe('wrong-type formula');
  });
  it('what the formula refuses, by its path', () => {
    expect(why({ inputs: { ...inputs, unit: 'mile' } })).toBe('wrong-unit inputs.unit');
    expect(why({ inputs: { ...inputs, spreadRate: { ...spreadRate, value: -8 } } })).toBe(
      'out-of-range inputs.spreadRate',
    );
  });
  it('an uncertainty that is none', () => {
    const off = (more: object) => why({ inputs: { ...inputs, spreadRate: { ...spreadRate, ...more } } });
    const at = 'inputs.spreadRate';
    expect(off({ standardUncertainty: 0.1 })).toBe(`not-a-quantity ${at}.standardUncertainty`);
    expect(off({ standardUncertainty: undefined })).toBe(`missing ${at}.standardUncertainty`);
    expect(off({ standardUncertainty: q(-1, 'm2/l') })).toBe(`out-of-range ${at}.standardUncertainty`);
    expect(off({ standardUncertainty: q(1, 'mm') })).toBe(`wrong-unit ${at}.standardUncertainty`);
    expect(off({ degreesOfFreedom: 0.5 })).toBe(`out-of-range ${at}.degreesOfFreedom`);
    expect(off({ degreesOfFreedom: Infinity })).toBe(`not-finite ${at}.degreesOfFreedom`);
    expect(off({ value: NaN })).toBe(`not-finite ${at}`);
  });
  it('a value with no room about it', () => {
    const pinned = ({ a }: { a: Quantity<'mm'> }) =>
      a.value === 1 ? q(1, 'mm') : wetThickness({ spreadRate: q(-1, 'm2/l'), unit: 'mm' });
    expect(why({ inputs: { a: { ...q(1, 'mm'), standardUncertainty: q(0.1, 'mm') } } }, pinned)).toBe(
      'out-of-range inputs.a',
    );
  });
  it('a correlation of nothing, of one with itself, and one that cannot be', () => {
    const three = { ...q(1, 'mm'), standardUncertainty: q(0.1, 'mm') };
    const sum = ({ a, b, c }: Record<'a' | 'b' | 'c', Quantity<'mm'>>) =>
      q(a.value + b.value + c.value, 'mm');
    const off = (...correlations: [string, string, number][]) =>
      why(
        {
          inputs: { a: three, b: three, c: three },
          correlations: correlations.map(([x, y, coefficient]) => ({ between: [x, y], coefficient })),
        },
        sum,
      );
    expect(off(['a', 'd', 0.5])).toBe('out-of-range correlations.0.between.1');
    expect(off(['a', 'a', 0.5])).toBe('conflict correlations.0.between');
    expect(off(['a', 'b', 1.5])).toBe('out-of-range correlations.0.coefficient');
    expect(off(['a', 'b', 0.9], ['b', 'c', 0.9], ['a', 'c', -0.9])).toBe('conflict correlations');
    expect(off(['a', 'b', 1], ['b', 'c', 1], ['a', 'c', 0.5])).toBe('conflict correlations');
    expect(off(['a', 'b', 1], ['b', 'c', 1], ['a', 'c', 1])).toBe('');
    expect(off(['a', 'b', 0.5], ['b', 'a', -0.5])).toBe('conflict correlations.1.between');
    expect(why({ inputs, correlations: [{ between: ['spreadRate'], coefficient: 1 }] })).toBe(
      'out-of-range correlations.0.between',
    );
    expect(why({ inputs, correlations: {} })).toBe('wrong-type correlations');
  });
});

it('a formula that bends is named', () => {
  const square = ({ side }: { side: Quantity<'m'> }): Quantity<'m2'> => q(side.value ** 2, 'm2');
  const at = (value: number) =>
    propagate(square, { inputs: { side: { ...q(value, 'm'), standardUncertainty: q(1, 'm') } } });
  expect(at(100).cautions).toEqual([]);
  // By first order nothing at all; in truth the square of a normal deviation has one of √2.
  expect(at(0).standardUncertainty.value).toBeCloseTo(0, 10);
  expect(at(0).secondOrderUncertainty?.value).toBeCloseTo(Math.SQRT2, 10);
  expect(at(0).cautions.map(({ code }) => code)).toEqual(['formula-bends']);
});
