import { describe, expect, it } from 'vitest';
import * as inspect from '../../src/inspect/index.ts';
import { cautionText } from '../../src/messages/index.ts';
import * as moisture from '../../src/moisture/index.ts';
import { q } from '../support/quantity.ts';

interface Answer {
  readonly cautions: readonly Parameters<typeof cautionText>[0][];
}
const words = ({ cautions }: Answer) => cautions.map(cautionText).join('\n');

const hole = (percent: number, depth = 2.4) => ({
  relativeHumidity: q(percent, '%'),
  depth: q(depth, 'in'),
  closedFor: q(24, 'h'),
});
const slab = {
  floorArea: q(1000, 'ft2'),
  slabThickness: q(6, 'in'),
  drying: 'one side',
  equilibration: q(24, 'h'),
  limit: q(85, '%'),
} as const;

describe('a count', () => {
  it('of one is singular, of more plural', () => {
    const one = words(moisture.inSlabHumidityTest({ ...slab, tests: [hole(70), hole(60, 1)] }));
    expect(one).toContain('1 test counts and 3 are asked for');
    expect(one).toContain('1 hole is not deep enough');
    const more = words(moisture.inSlabHumidityTest({ ...slab, tests: [hole(70), hole(71)] }));
    expect(more).toContain('2 tests count and 3 are asked for');
  });

  it('of a scale without unit is not written to its last bit', () => {
    const { cautions } = inspect.pendulumClass({
      pendulumValue: 36,
      readingError: { standardUncertainty: 1 },
      confidence: q(95, '%'),
    });
    expect(words({ cautions })).toContain('may be off by 1.96,');
  });
});

describe('a moisture verdict that is undecided names what leaves it open and nothing else', () => {
  it.each([
    [[hole(70), hole(71), hole(84)], 'a reading too close to the limit.'],
    [[hole(70), hole(71)], 'too few tests.'],
    [[hole(84), hole(71)], 'a reading too close to the limit and too few tests.'],
  ])('%j', (tests, reason) => {
    const answer = moisture.inSlabHumidityTest({ ...slab, tests, relativeHumidityError: q(2, '%') });
    expect(answer.verdict).toBe('undecided');
    expect(words(answer)).toContain(`what leaves it open is ${reason}`);
  });

  it('such as a dish that was not out for its time', () => {
    const dish = (gain: number, hours: number) => ({
      gain: q(gain, 'g'),
      exposedArea: q(64.06, 'in2'),
      exposure: q(hours, 'h'),
    });
    const answer = moisture.calciumChlorideTest({
      floorArea: q(900, 'ft2'),
      tests: [dish(1, 66), dish(1, 66), dish(1, 66), dish(3, 80)],
      limit: q(3, 'lb/1000ft2/24h'),
    });
    expect(words(answer)).toContain('what leaves it open is a test not done by the book.');
  });
});

describe('a film that is undecided names its own reason', () => {
  const film = {
    rule: { rule: 'SSPC-PA 9:2015', level: 3, areasIn: 'ft2' },
    substrate: 'concrete',
    specified: { least: q(16, 'mil'), most: q(24, 'mil') },
    coatedArea: q(100, 'ft2'),
    unit: 'mil',
  } as const;
  const area = (...mils: number[]) => ({
    name: 'bay',
    spots: mils.map((mil) => [q(mil, 'mil'), q(mil, 'mil'), q(mil, 'mil')]),
  });
  const undecided = (answer: Answer) =>
    answer.cautions.filter(({ code }) => code === 'film-undecided').map(cautionText);

  it('the gauge', () => {
    const near = inspect.dryFilmCheck({
      ...film,
      areas: [area(12.1, 20, 20, 20, 20)],
      gaugeError: q(0.5, 'mil'),
    });
    expect(undecided(near)).toEqual([expect.stringContaining('): the gauge cannot tell. That is no pass.')]);
  });

  it('missing readings', () => {
    const short = inspect.dryFilmCheck({ ...film, areas: [area(15, 15)] });
    expect(undecided(short)).toEqual([expect.stringContaining('): readings are missing. That is no pass.')]);
  });
});

describe('a bond that is undecided names its own reason', () => {
  const bond = (psi: number, failure: inspect.FailureShares) => ({
    method: 'ASTM D7234' as const,
    substrate: 'concrete' as const,
    tests: [
      { name: 'bay', load: q(psi, 'psi'), scaleDiameter: q(50, 'mm'), dollyDiameter: q(50, 'mm'), failure },
    ],
    limit: q(200, 'psi'),
    acceptance: 'strength' as const,
    loadError: q(5, '%'),
  });

  it.each([
    [195, { substrate: q(100, '%') }, 'is not decided: the gauge cannot tell.'],
    [100, { glue: q(100, '%') }, 'is not decided: the glue gave way first.'],
  ])('%d psi and %j', (psi, failure, reason) => {
    expect(words(inspect.pullOffCheck(bond(psi, failure)))).toContain(reason);
  });
});

it('words with a comma of their own stand in quotes where there is a choice of them', () => {
  const use = 'kitchen' as inspect.SlipUse;
  expect(() => inspect.slipLimit({ use })).toThrow(
    "one of 'interior, kept dry', 'interior, walked on wet', 'interior, walked on very wet'",
  );
  const scale = 'shine' as inspect.AppearanceScale;
  expect(() => inspect.appearanceCheck({ scale, places: [], limits: {} })).toThrow(
    'one of gloss 20°, gloss 60°',
  );
});
