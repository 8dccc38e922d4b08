import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  activationEnergy,
  adiabaticRise,
  degreeOfCure,
  potLife,
  recoatWindow,
  recoatWindowFromTable,
  temperatureForTime,
  timeAt,
  timeToDegreeOfCure,
} from '../../src/cure/index.ts';
import type { Temperature } from '../../src/core/quantity.ts';
import { rows } from '../support/library.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

const given = (id: string) => rows.find((row) => row.id === id)?.given ?? {};
const point = (celsius: number, minutes: number) => ({
  temperature: q(celsius, 'degC'),
  time: q(minutes, 'min'),
});
const table = (...points: ReturnType<typeof point>[]) =>
  ({ rule: 'table', between: 'linear', points }) as const;
const halving = {
  rule: 'halving',
  ...point(20, 40),
  step: q(10, 'deltaC'),
  from: q(10, 'degC'),
  to: q(35, 'degC'),
} as const;
const row = (from: number, to: number, shortest: number, longest: number) => ({
  from: q(from, 'degC'),
  to: q(to, 'degC'),
  shortest: q(shortest, 'h'),
  longest: q(longest, 'h'),
});

describe('refusals', () => {
  const at = (celsius: number) => ({ at: q(celsius, 'degC'), unit: 'min' });
  const cases: [string, (input: never) => unknown, unknown, string][] = [
    [
      'below the table',
      timeAt,
      { rule: table(point(10, 60), point(20, 30)), ...at(9.99) },
      'out-of-range at',
    ],
    [
      'above the table',
      timeAt,
      { rule: table(point(10, 60), point(20, 30)), ...at(20.01) },
      'out-of-range at',
    ],
    ['below the rule', timeAt, { rule: halving, ...at(9.9) }, 'out-of-range at'],
    ['above the rule', timeAt, { rule: halving, ...at(35.1) }, 'out-of-range at'],
    ['a table of one point', timeAt, { rule: table(point(10, 60)), ...at(10) }, 'out-of-range rule.points'],
    [
      'a table out of order',
      timeAt,
      { rule: table(point(20, 30), point(10, 60)), ...at(15) },
      'conflict rule.points.1',
    ],
    [
      'two points of one temperature',
      timeAt,
      { rule: table(point(20, 30), point(20, 20)), ...at(20) },
      'conflict rule.points.1',
    ],
    [
      'a table that slows down with warmth',
      timeAt,
      { rule: table(point(10, 30), point(20, 31)), ...at(15) },
      'conflict rule.points.1',
    ],
    ['no rule', timeAt, at(15), 'missing rule'],
    ['a rule as text', timeAt, { rule: 'halving', ...at(15) }, 'wrong-type rule'],
    ['an unknown rule', timeAt, { rule: { ...halving, rule: 'guess' }, ...at(15) }, 'out-of-range rule.rule'],
    [
      'a table without its way between',
      timeAt,
      { rule: { rule: 'table', points: [] }, ...at(15) },
      'missing rule.between',
    ],
    [
      'a stated temperature below the ends',
      timeAt,
      { rule: { ...halving, from: q(21, 'degC') }, ...at(25) },
      'conflict rule.temperature',
    ],
    [
      'a stated temperature above the ends',
      timeAt,
      { rule: { ...halving, to: q(19, 'degC') }, ...at(15) },
      'conflict rule.temperature',
    ],
    [
      'a step as a point of temperature',
      timeAt,
      { rule: { ...halving, step: q(10, 'degC') }, ...at(15) },
      'wrong-unit rule.step',
    ],
    [
      'a larger batch',
      potLife,
      { ...given('potLife-barrier-70F'), batch: q(2.01, 'usgal') },
      'out-of-range batch',
    ],
    [
      'a batch of the other kind',
      potLife,
      { ...given('potLife-barrier-70F'), batch: q(2, 'kg') },
      'wrong-unit batch',
    ],
    [
      'an amount that is a time',
      potLife,
      { ...given('potLife-barrier-70F'), statedFor: q(2, 'h') },
      'wrong-unit statedFor',
    ],
    [
      'a warm point that is no warmer',
      activationEnergy,
      { ...given('energy-halving-20-30'), warm: point(20, 10) },
      'conflict warm.temperature',
    ],
    [
      'a warm point that takes longer',
      activationEnergy,
      { ...given('energy-halving-20-30'), warm: point(30, 41) },
      'conflict warm.time',
    ],
    [
      'filler without its specific heat',
      adiabaticRise,
      { ...given('rise-neat'), fillerShare: q(50, '%') },
      'missing fillerSpecificHeat',
    ],
    [
      'a warmest below the coldest',
      recoatWindow,
      { ...given('window-warm'), coldest: q(30, 'degC'), warmest: q(25, 'degC') },
      'conflict warmest',
    ],
    [
      'a coldest outside the rule',
      recoatWindow,
      { ...given('window-warm'), coldest: q(9, 'degC') },
      'out-of-range coldest',
    ],
    [
      'a surface below the rows',
      recoatWindowFromTable,
      { rows: [row(10, 20, 8, 24)], surface: q(9, 'degC'), unit: 'h' },
      'out-of-range surface',
    ],
    [
      'a surface above the rows',
      recoatWindowFromTable,
      { rows: [row(10, 20, 8, 24)], surface: q(21, 'degC'), unit: 'h' },
      'out-of-range surface',
    ],
    [
      'rows that overlap',
      recoatWindowFromTable,
      { rows: [row(10, 20, 8, 24), row(19, 30, 4, 12)], surface: q(15, 'degC'), unit: 'h' },
      'conflict rows.1.from',
    ],
    [
      'a row turned round',
      recoatWindowFromTable,
      { rows: [row(20, 10, 8, 24)], surface: q(15, 'degC'), unit: 'h' },
      'conflict rows.0.to',
    ],
    [
      'a window turned round',
      recoatWindowFromTable,
      { rows: [row(10, 20, 24, 8)], surface: q(15, 'degC'), unit: 'h' },
      'conflict rows.0.longest',
    ],
    [
      'a time the rule never gives',
      temperatureForTime,
      { rule: halving, time: q(81, 'min'), unit: 'degC' },
      'out-of-range time',
    ],
    ['an order below 0', degreeOfCure, { ...given('degree-order-1.0-10'), n: -1 }, 'out-of-range n'],
    [
      'an order of another type',
      degreeOfCure,
      { ...given('degree-autocatalytic-30'), m: '1' },
      'wrong-type m',
    ],
    ['an order beyond 20', degreeOfCure, { ...given('degree-order-1.0-10'), n: 20.5 }, 'out-of-range n'],
    [
      'complete cure',
      timeToDegreeOfCure,
      { ...given('time-to-0.3'), degreeOfCure: q(100, '%') },
      'out-of-range degreeOfCure',
    ],
    [
      'heating without start',
      degreeOfCure,
      { ...given('degree-order-1.0-10'), heating: {} },
      'missing heating.start',
    ],
    [
      'heating from absolute zero',
      degreeOfCure,
      {
        ...given('degree-adiabatic'),
        heating: { start: q(0, 'K'), rise: q(1, 'deltaC'), activationEnergy: q(50, 'kJ/mol') },
      },
      'too-large ',
    ],
  ];
  it.each(cases)('%s', (_, fn, input, expected) => {
    expect(refusal(fn, input)).toBe(expected);
  });

  it('names the ends of the rule, and the longest time that it gives', () => {
    expect(() => timeAt({ rule: halving, at: q(5, 'degC'), unit: 'min' })).toThrow('from 10 to 35 °C');
    expect(() => temperatureForTime({ rule: halving, time: q(2, 'h'), unit: 'degC' })).toThrow(
      'no longer than the 1.33333 h at the cold end',
    );
  });
});

describe('rules', () => {
  it('only the rule of halves is an assumption', () => {
    const energy = { ...halving, rule: 'arrhenius', activationEnergy: q(50, 'kJ/mol') } as const;
    const bases = [halving, table(point(10, 60), point(30, 30)), energy].map(
      (rule) => timeAt({ rule, at: q(20, 'degC'), unit: 'min' }).basis[0],
    );
    expect(bases.map((one) => [one?.source, one?.assumption !== undefined])).toEqual([
      ['ufgs-09971', true],
      ['definition', false],
      ['definition', false],
    ]);
    expect(new Set(bases.map((one) => one?.formula)).size).toBe(3);
  });

  it('both ends belong to them', () => {
    const time = (celsius: number) =>
      timeAt({ rule: halving, at: q(celsius, 'degC'), unit: 'min' }).time.value;
    expect(time(10)).toBeCloseTo(80, 10);
    expect(time(35)).toBeCloseTo(40 / 2 ** 1.5, 10);
  });

  it('a table passes through its points on either curve and stays between them', () => {
    const points = [point(10, 60), point(18, 33), point(25, 20), point(33, 20)];
    for (const between of ['linear', 'arrhenius'] as const) {
      const time = (celsius: number) =>
        timeAt({ rule: { rule: 'table', between, points }, at: q(celsius, 'degC'), unit: 'min' }).time.value;
      for (const { temperature, time: stated } of points)
        expect(time(temperature.value)).toBeCloseTo(stated.value, 10);
      expect(time(14)).toBeGreaterThan(33);
      expect(time(14)).toBeLessThan(60);
      expect(time(30)).toBeCloseTo(20, 10);
    }
    const [linear, curved] = (['linear', 'arrhenius'] as const).map(
      (between) =>
        timeAt({ rule: { rule: 'table', between, points }, at: q(14, 'degC'), unit: 'min' }).time.value,
    );
    expect(linear).toBeCloseTo(46.5, 10);
    expect(curved).toBeLessThan(46);
  });

  it('two points, their activation energy and the curve between them agree', () => {
    const [cold, warm] = [point(10, 60), point(30, 14)];
    const energy = activationEnergy({ cold, warm, unit: 'kJ/mol' });
    const rule = {
      rule: 'arrhenius',
      ...cold,
      activationEnergy: energy,
      from: cold.temperature,
      to: warm.temperature,
    } as const;
    const curve = { rule: 'table', between: 'arrhenius', points: [cold, warm] } as const;
    for (const celsius of [10, 13, 22, 30]) {
      const at = { at: q(celsius, 'degC'), unit: 'min' } as const;
      expect(timeAt({ rule, ...at }).time.value).toBeCloseTo(timeAt({ rule: curve, ...at }).time.value, 10);
    }
  });

  it('the temperature for a time gives that time back', () => {
    fc.assert(
      fc.property(fc.double({ min: 15, max: 80, noNaN: true }), (minutes) => {
        const { temperature } = temperatureForTime({ rule: halving, time: q(minutes, 'min'), unit: 'degC' });
        const back = timeAt({ rule: halving, at: temperature, unit: 'min' }).time.value;
        expect(back).toBeGreaterThanOrEqual(minutes * (1 - 1e-12));
        expect(back).toBeCloseTo(minutes, 9);
      }),
      { seed: 2 },
    );
  });

  it('on a flat stretch the warmest temperature is meant', () => {
    const rule = table(point(10, 60), point(20, 30), point(30, 30), point(40, 10));
    const answer = temperatureForTime({ rule, time: q(30, 'min'), unit: 'degC' });
    expect(answer.temperature.value).toBeCloseTo(30, 8);
  });

  it('a pot life keeps the amount it holds for and no caution of a table', () => {
    const answer = potLife({
      rule: table(point(10, 60), point(20, 30)),
      statedFor: q(1, 'kg'),
      batch: q(1, 'kg'),
      at: q(15, 'degC'),
      unit: 'min',
    });
    expect(answer).toMatchObject({ potLife: q(45, 'min'), statedFor: q(1, 'kg') });
    expect(answer.cautions.map(({ code }) => code)).toEqual(['heat-in-the-pail']);
  });
});

describe('recoat windows', () => {
  it('of rows that share an end take both rows there', () => {
    const rows2 = [row(10, 20, 8, 24), row(20, 30, 4, 12)];
    const at = (celsius: number) =>
      recoatWindowFromTable({ rows: rows2, surface: q(celsius, 'degC'), unit: 'h' });
    expect(at(20)).toMatchObject({ shortest: q(8, 'h'), longest: q(12, 'h'), cautions: [] });
    expect(at(30)).toMatchObject({ shortest: q(4, 'h'), longest: q(12, 'h') });
    expect(at(10)).toMatchObject({ shortest: q(8, 'h'), longest: q(24, 'h') });
  });

  it('between rows may leave no window at all, and say so', () => {
    const rows2 = [row(10, 20, 8, 24), row(22, 30, 2, 6)];
    const answer = recoatWindowFromTable({ rows: rows2, surface: q(21, 'degC'), unit: 'h' });
    expect(answer.cautions.map(({ code }) => code)).toEqual(['between-rows', 'no-recoat-window']);
  });

  it('exactly shut is not shut', () => {
    const answer = recoatWindow({
      shortest: { ...halving, time: q(6, 'h') },
      longest: { ...halving, time: q(6, 'h') },
      coldest: q(20, 'degC'),
      warmest: q(20, 'degC'),
      unit: 'h',
    });
    expect(answer.cautions.map(({ code }) => code)).toEqual(['rule-of-thumb', 'rule-of-thumb']);
  });

  it('an activation energy does not stretch the longest wait either', () => {
    const rule = {
      rule: 'arrhenius',
      ...point(20, 600),
      activationEnergy: q(50, 'kJ/mol'),
      from: q(5, 'degC'),
      to: q(40, 'degC'),
    } as const;
    const answer = recoatWindow({
      shortest: { ...rule, time: q(60, 'min') },
      longest: rule,
      coldest: q(5, 'degC'),
      warmest: q(10, 'degC'),
      unit: 'min',
    });
    expect(answer.longest).toEqual(q(600, 'min'));
    expect(answer.shortest.value).toBeGreaterThan(150);
    expect(answer.cautions).toEqual([]);
  });
});

describe('the integrator', () => {
  const constant = fc.double({ min: 1e-4, max: 1, noNaN: true });
  const minutes = fc.double({ min: 0.01, max: 5000, noNaN: true });

  it('follows the closed form of any order', () => {
    fc.assert(
      fc.property(constant, minutes, fc.constantFrom(0, 0.5, 1, 1.5, 2, 3), (k, t, n) => {
        const degree = degreeOfCure({ k1: q(k, '1/min'), n, time: q(t, 'min'), unit: 'fraction' }).value;
        const left = n === 1 ? Math.exp(-k * t) : Math.max(0, 1 + (n - 1) * k * t) ** (1 / (1 - n));
        expect(Math.abs(degree - (1 - left))).toBeLessThan(1e-9);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  it('follows the closed form of autocatalysis', () => {
    fc.assert(
      fc.property(constant, constant, minutes, (k1, k2, t) => {
        const degree = degreeOfCure({
          k1: q(k1, '1/min'),
          k2: q(k2, '1/min'),
          n: 1,
          time: q(t, 'min'),
          unit: 'fraction',
        });
        const e = Math.exp(-(k1 + k2) * t);
        expect(Math.abs(degree.value - (1 - e) / (1 + (k2 / k1) * e))).toBeLessThan(1e-9);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  it('times are the inverse of degrees, self-heating included', () => {
    fc.assert(
      fc.property(
        constant,
        constant,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.constantFrom(0, 80, 200),
        fc.constantFrom(0.5, 1, 1.3, 2),
        (k1, k2, degree, rise, m) => {
          const heating = {
            start: q(20, 'degC'),
            rise: q(rise, 'deltaC'),
            activationEnergy: q(55, 'kJ/mol'),
          };
          const mix = { k1: q(k1, '1/min'), k2: q(k2, '1/min'), m, n: 1.5, heating };
          const time = timeToDegreeOfCure({ ...mix, degreeOfCure: q(degree, 'fraction'), unit: 'min' });
          const back = degreeOfCure({ ...mix, time, unit: 'fraction' });
          expect(Math.abs(back.value - degree)).toBeLessThan(1e-8);
        },
      ),
      { seed: 6, numRuns: 300 },
    );
  });

  it('m is 1 where it is not given', () => {
    const mix = { k1: q(0.002, '1/min'), k2: q(0.03, '1/min'), n: 2, time: q(60, 'min'), unit: '%' } as const;
    expect(degreeOfCure(mix)).toEqual(degreeOfCure({ ...mix, m: 1 }));
  });

  it('comes to an end however long the time', () => {
    for (const n of [0, 0.5, 1, 2, 5, 20]) {
      const degree = degreeOfCure({ k1: q(1, '1/s'), n, time: q(1e12, 'd'), unit: 'fraction' }).value;
      expect(degree).toBeGreaterThan(0.88);
      expect(degree).toBeLessThanOrEqual(1);
    }
  });
});

describe('the cautions of a pot life', () => {
  const answer = (induction?: number) =>
    potLife({
      rule: table(point(10, 60), point(20, 30)),
      statedFor: q(1, 'l'),
      at: q(20, 'degC'),
      induction: induction === undefined ? undefined : q(induction, 'min'),
      unit: 'min',
    });

  it('name the amount that it holds for, also where no batch is planned', () => {
    expect(answer().cautions).toEqual([
      {
        code: 'heat-in-the-pail',
        severity: 'danger',
        params: { potLife: q(30, 'min'), statedFor: q(1, 'l') },
        source: 'ufc-3-190-06',
      },
    ]);
  });

  it.each([30, 30 - 1e-12, 45])(
    'name a stand time of %s min that outlasts it, and nothing is left',
    (induction) => {
      const { workingTime, cautions } = answer(induction);
      expect(workingTime).toEqual(q(0, 'min'));
      expect(cautions[0]).toMatchObject({
        code: 'stand-time-outlasts-pot-life',
        severity: 'caution',
        params: { potLife: q(30, 'min') },
      });
      expect(cautions[0]?.params.induction).toMatchObject({ value: expect.closeTo(induction, 9) as number });
    },
  );

  it('do not where a minute is left', () => {
    expect(answer(29)).toMatchObject({ workingTime: q(1, 'min'), cautions: [{ code: 'heat-in-the-pail' }] });
  });
});

describe('the two temperatures of a recoat window', () => {
  const window = (coldest: Temperature, warmest: Temperature) => ({
    shortest: halving,
    longest: { ...halving, from: q(15, 'degC'), to: q(38, 'degC') },
    coldest,
    warmest,
    unit: 'h' as const,
  });

  it('lie between the ends of both rules', () => {
    const [shortest, longest] = ['out-of-range coldest', 'out-of-range warmest'];
    expect(refusal(recoatWindow, window(q(12, 'degC'), q(30, 'degC')))).toBe(shortest);
    expect(refusal(recoatWindow, window(q(20, 'degC'), q(37, 'degC')))).toBe(longest);
    expect(refusal(recoatWindow, window(q(15, 'degC'), q(35, 'degC')))).toBe('');
  });

  it('may be one, on two scales', () => {
    expect(refusal(recoatWindow, window(q(22, 'degC'), q(71.6, 'degF')))).toBe('');
  });
});

it('the heat of a filler without its share is refused and not left out of the sum', () => {
  const input = {
    heat: q(400, 'J/g'),
    specificHeat: q(2, 'J/g/K'),
    fillerSpecificHeat: q(0.8, 'J/g/K'),
    unit: 'deltaC',
  };
  expect(refusal(adiabaticRise, input)).toBe('missing fillerShare');
});
