/** The worked examples of the GUM. Kinds of quantity that the library does not have stand under other names. */
import { describe, expect, it } from 'vitest';
import { across } from '../../src/core/across.ts';
import { between } from '../../src/core/between.ts';
import { expandedUncertainty } from '../../src/statistics/expandedUncertainty.ts';
import { propagate } from '../../src/statistics/propagate.ts';
import { typeAUncertainty } from '../../src/statistics/typeAUncertainty.ts';
import { typeBUncertainty } from '../../src/statistics/typeBUncertainty.ts';
import { rectangleArea } from '../../src/area/rectangleArea.ts';
import type { Quantity } from '../../src/core/quantity.ts';
import type { Uncertain } from '../../src/statistics/uncertain.ts';
import { q } from '../support/quantity.ts';

/** A number with its standard uncertainty, where the unit does not matter. */
function known<U extends 'mm' | 'fraction' | 'degC'>(
  value: number,
  unit: U,
  u: number,
  degreesOfFreedom?: number,
): Uncertain<U> {
  const step = unit === 'degC' ? 'deltaC' : unit;
  return { value, unit, standardUncertainty: q(u, step), degreesOfFreedom } as unknown as Uncertain<U>;
}

/** H.1: an end gauge compared with a standard; expansion coefficients per K stand as plain fractions. */
describe('H.1, calibration of an end gauge', () => {
  type Part = Quantity<'fraction'>;
  const gauge = (input: {
    standard: Quantity<'mm'>;
    difference: Quantity<'mm'>;
    random: Quantity<'mm'>;
    systematic: Quantity<'mm'>;
    expansion: Part;
    meanTemperature: Part;
    cycling: Part;
    expansionDifference: Part;
    temperatureDifference: Part;
  }): Quantity<'mm'> => {
    const { standard, difference, random, systematic } = input;
    const temperature = input.meanTemperature.value + input.cycling.value;
    const excess =
      input.expansionDifference.value * temperature +
      input.expansion.value * input.temperatureDifference.value;
    const length = standard.value * (1 - excess) + difference.value + random.value + systematic.value;
    return { value: length, unit: 'mm' };
  };
  const result = propagate(gauge, {
    inputs: {
      standard: known(50.000623, 'mm', 25e-6, 18),
      difference: known(215e-6, 'mm', 5.8e-6, 24),
      random: known(0, 'mm', 3.9e-6, 5),
      systematic: known(0, 'mm', 6.7e-6, 8),
      expansion: known(11.5e-6, 'fraction', 2e-6 / Math.sqrt(3)),
      meanTemperature: known(-0.1, 'fraction', 0.2),
      cycling: known(0, 'fraction', 0.5 / Math.SQRT2),
      expansionDifference: known(0, 'fraction', 1e-6 / Math.sqrt(3), 50),
      temperatureDifference: known(0, 'fraction', 0.05 / Math.sqrt(3), 2),
    },
    confidence: q(99, '%'),
  });
  it('has the combined uncertainty of 32 nm', () => {
    expect(result.value).toBeCloseTo(50.000838, 9);
    // 31.66 nm without the rounding of parts, as an open-source library has it.
    expect(result.standardUncertainty.value * 1e6).toBeCloseTo(31.66, 1);
  });
  it('has 16 degrees of freedom after truncation, and 93 nm at 99 %', () => {
    // Printed as 16.7, from rounded parts.
    expect(Math.abs((result.degreesOfFreedom ?? 0) - 16.7)).toBeLessThan(0.1);
    expect(result.tableDegreesOfFreedom).toBe(16);
    expect(result.coverageFactor).toBeCloseTo(2.92, 2);
    expect(Math.abs((result.expandedUncertainty?.value ?? 0) * 1e6 - 93)).toBeLessThan(0.6);
  });
  it('is known by its parts as printed: 25, 16.6, 6.7, 5.8, 3.9 and 2.9 nm, and nothing of the first order else', () => {
    const nm = Object.fromEntries(
      Object.entries(result.sensitivities).map(([of, { contribution }]) => [of, contribution.value * 1e6]),
    );
    const printed = {
      standard: 25,
      temperatureDifference: 16.599,
      systematic: 6.7,
      difference: 5.8,
      random: 3.9,
      expansionDifference: 2.88679,
      expansion: 0,
      meanTemperature: 0,
      cycling: 0,
    };
    for (const [of, value] of Object.entries(printed)) {
      expect(Math.abs((nm[of] ?? NaN) - value), of).toBeLessThan(0.0006);
    }
    // The comparator as a whole: 9.7 nm.
    expect(Math.hypot(nm.difference ?? 0, nm.random ?? 0, nm.systematic ?? 0)).toBeCloseTo(9.7, 1);
  });
  it('has 34 nm with the terms of second order, and says so', () => {
    expect(Math.abs((result.secondOrderUncertainty?.value ?? 0) * 1e6 - 34)).toBeLessThan(0.5);
    expect(result.cautions.map(({ code }) => code)).toEqual(['formula-bends']);
  });
});

/** H.2: resistance and reactance from voltage, current and phase, read five times together. */
describe('H.2, simultaneous resistance and reactance', () => {
  const readings = {
    voltage: [5.007, 4.994, 5.005, 4.99, 4.999],
    current: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    phase: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  };
  const mean = (values: number[]) =>
    typeAUncertainty({ readings: values.map((value) => q(value, 'fraction')), unit: 'fraction' });
  const inputs = {
    voltage: mean(readings.voltage),
    current: mean(readings.current),
    phase: typeAUncertainty({ readings: readings.phase.map((value) => q(value, 'rad')), unit: 'rad' }),
  };
  type Input = Record<'voltage' | 'current' | 'phase', Quantity>;
  const ratio =
    (part: (phase: number) => number) =>
    ({ voltage, current, phase }: Input): Quantity<'fraction'> => ({
      value: (voltage.value / current.value) * part(phase.value),
      unit: 'fraction',
    });
  const ohms = { R: ratio(Math.cos), X: ratio(Math.sin), Z: ratio(() => 1) };

  it('has the means and their uncertainties', () => {
    expect(inputs.voltage.value).toBeCloseTo(4.999, 10);
    expect(inputs.voltage.standardUncertainty.value).toBeCloseTo(0.0032, 4);
    expect(inputs.current.value * 1e3).toBeCloseTo(19.661, 10);
    expect(inputs.current.standardUncertainty.value * 1e3).toBeCloseTo(0.0095, 4);
    expect(inputs.phase.standardUncertainty.value).toBeCloseTo(0.00075, 5);
  });

  /** Correlations of the means, by their definition; the GUM prints −0.36, 0.86 and −0.65. */
  const r = (a: number[], b: number[]) => {
    const off = (list: number[]) => list.map((x) => x - list.reduce((s, y) => s + y) / list.length);
    const dot = (x: number[], y: number[]) => x.reduce((sum, one, i) => sum + one * (y[i] ?? 0), 0);
    return dot(off(a), off(b)) / Math.sqrt(dot(off(a), off(a)) * dot(off(b), off(b)));
  };
  const correlations = [
    { between: ['voltage', 'current'], coefficient: r(readings.voltage, readings.current) },
    { between: ['voltage', 'phase'], coefficient: r(readings.voltage, readings.phase) },
    { between: ['current', 'phase'], coefficient: r(readings.current, readings.phase) },
  ] as const;
  it('has the printed correlations', () => {
    expect(correlations.map(({ coefficient }) => coefficient.toFixed(2))).toEqual(['-0.36', '0.86', '-0.65']);
  });

  it.each([
    ['R', 127.732, 0.071],
    ['X', 219.847, 0.295],
    ['Z', 254.26, 0.236],
  ] as const)('%s is %s within %s', (name, value, uncertainty) => {
    const result = propagate(ohms[name], { inputs, correlations });
    expect(Math.abs(result.value - value)).toBeLessThan(0.001);
    expect(Math.abs(result.standardUncertainty.value - uncertainty)).toBeLessThan(0.0006);
    // All three were read in the same five rounds.
    expect(result.degreesOfFreedom).toBeCloseTo(4, 9);
    expect(result.secondOrderUncertainty).toBeUndefined();
  });

  it('has the printed relative uncertainties, and the correlations of its results', () => {
    const u = (formula: (input: Input) => Quantity<'fraction'>) =>
      propagate(formula, { inputs, correlations }).standardUncertainty.value;
    const relative = Object.values(ohms).map((of) => u(of) / propagate(of, { inputs, correlations }).value);
    expect(relative.map((share) => (share * 100).toFixed(2))).toEqual(['0.06', '0.13', '0.09']);
    /** By what the sum of two results varies beyond each of them. */
    const together = (one: keyof typeof ohms, other: keyof typeof ohms) => {
      const sum = (input: Input) => q(ohms[one](input).value + ohms[other](input).value, 'fraction');
      const [a, b] = [u(ohms[one]), u(ohms[other])];
      return (u(sum) ** 2 - a ** 2 - b ** 2) / (2 * a * b);
    };
    expect(together('R', 'X').toFixed(3)).toBe('-0.588');
    expect(together('R', 'Z').toFixed(3)).toBe('-0.485');
    expect(together('X', 'Z').toFixed(3)).toBe('0.993');
  });

  it('is far off where the correlations are forgotten', () => {
    const { standardUncertainty } = propagate(ohms.R, { inputs });
    expect(standardUncertainty.value).toBeCloseTo(0.195, 3);
  });
});

it('effective degrees of freedom of a course example', () => {
  const sum = ({ a, b }: { a: Quantity<'mm'>; b: Quantity<'mm'> }): Quantity<'mm'> =>
    q(a.value + b.value, 'mm');
  const result = propagate(sum, { inputs: { a: known(5, 'mm', 0.57, 9), b: known(7, 'mm', 0.25) } });
  expect(Math.abs((result.degreesOfFreedom ?? 0) - 12.8)).toBeLessThan(0.1);
  expect(result.tableDegreesOfFreedom).toBe(12);
});

it('the area of a taped room', () => {
  const taped = (value: number) =>
    typeBUncertainty({
      estimate: q(value, 'ft'),
      halfWidth: q(0.5, 'ft'),
      distribution: 'rectangular',
      unit: 'ft',
    });
  const result = propagate(rectangleArea, { inputs: { length: taped(40), width: taped(25), unit: 'ft2' } });
  expect(result.value).toBeCloseTo(1000, 9);
  expect(result.standardUncertainty.value).toBeCloseTo(13.616779, 5);
  // Two standard uncertainties hold 95.45 % of a normal distribution; the bounds of both tapes at once are another question.
  const twice = expandedUncertainty({ measured: result, confidence: q(95.4499736104, '%'), unit: 'ft2' });
  expect(Math.abs(twice.value / 27.233558 - 1)).toBeLessThanOrEqual(1e-6);
  const bounds = {
    length: between(39.5, 40.5, 'ft'),
    width: between(24.5, 25.5, 'ft'),
    unit: 'ft2',
  } as const;
  const { low, high } = across(rectangleArea, bounds);
  expect((high.value - low.value) / 2).toBeCloseTo(32.5, 9);
});
