import { describe, expect, it } from 'vitest';
import {
  aggregateExposure,
  appearanceCheck,
  polishLevel,
  pullOffCheck,
  pullOffForce,
  pullOffStress,
  roughnessCorrection,
  slipCheck,
  type FailureShares,
} from '../../src/inspect/index.ts';
import { cautionText } from '../../src/messages/index.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

describe('pull-off', () => {
  const dolly = (psi: number, failure: FailureShares) => ({
    name: 'bay',
    load: q(psi, 'psi'),
    scaleDiameter: q(50, 'mm'),
    dollyDiameter: q(50, 'mm'),
    failure,
  });
  const substrate = (percent: number) => ({
    substrate: q(percent, '%'),
    adhesive: q(100 - percent, '%'),
  });
  const set = {
    method: 'ASTM D7234',
    substrate: 'concrete',
    limit: q(200, 'psi'),
    acceptance: 'strength',
    tests: [dolly(210, substrate(100))],
  } as const;

  it('a force comes back from its stress', () => {
    const dollyDiameter = q(20, 'mm');
    const stress = pullOffStress({ force: q(800, 'N'), dollyDiameter, unit: 'psi' });
    expect(pullOffForce({ stress, dollyDiameter, unit: 'N' }).value).toBeCloseTo(800, 9);
  });

  it.each([
    [210, 100, 'meets', 'meets', 'meets'],
    [210, 70, 'meets', 'fails', 'meets'],
    [190, 100, 'fails', 'fails', 'meets'],
    [190, 70, 'fails', 'fails', 'fails'],
  ] as const)('%d psi with %d %% in the concrete', (psi, percent, alone, and, or) => {
    const tests = [dolly(psi, substrate(percent))];
    const leastSubstrateShare = q(80, '%');
    expect(pullOffCheck({ ...set, tests }).verdict).toBe(alone);
    const both = 'strength and substrate failure';
    expect(pullOffCheck({ ...set, tests, leastSubstrateShare, acceptance: both }).verdict).toBe(and);
    const either = 'strength or substrate failure';
    expect(pullOffCheck({ ...set, tests, leastSubstrateShare, acceptance: either }).verdict).toBe(or);
  });

  it('a standard uncertainty of the load counts with its confidence, and needs one', () => {
    // 1.96 times 2 % of 210 psi are 8.2 psi, 2.58 times are 10.8 psi; the room is 10 psi.
    const loadError = { standardUncertainty: q(2, '%') };
    const at = (percent: number) => pullOffCheck({ ...set, loadError, confidence: q(percent, '%') }).verdict;
    expect([at(95), at(99)]).toEqual(['meets', 'undecided']);
    expect(refusal(pullOffCheck, { ...set, loadError })).toBe('missing confidence');
  });

  it('glue that gives way never fails a bond, and leaves open where the rest would have broken', () => {
    const glued = { substrate: q(60, '%'), glue: q(40, '%') };
    const answer = pullOffCheck({ ...set, tests: [dolly(150, glued)] });
    expect([answer.verdict, answer.findings[0]?.lowerBound]).toEqual(['undecided', true]);
    expect(answer.cautions.map(cautionText)[1]).toContain('The glue gave way on: bay.');
    const and = {
      ...set,
      acceptance: 'strength and substrate failure' as const,
      tests: [dolly(250, glued)],
    };
    expect(pullOffCheck({ ...and, leastSubstrateShare: q(80, '%') }).verdict).toBe('undecided');
    const mostly = [dolly(250, { adhesive: q(60, '%'), glue: q(40, '%') })];
    expect(pullOffCheck({ ...and, tests: mostly, leastSubstrateShare: q(80, '%') }).verdict).toBe('fails');
  });

  it('the error of the load leaves a reading near the limit undecided, and too few tests all of them', () => {
    expect(pullOffCheck({ ...set, loadError: q(5, '%') }).verdict).toBe('undecided');
    const few = pullOffCheck({ ...set, testsNeeded: 3 });
    expect([few.verdict, few.findings[0]?.verdict]).toEqual(['undecided', 'meets']);
    expect(few.cautions).toContainEqual(
      expect.objectContaining({ code: 'too-few-pull-offs', params: { missing: 2, testsNeeded: 3 } }),
    );
  });

  it.each([
    [{ method: 'ASTM D4541' }, 'conflict method'],
    [
      { tests: [dolly(200, substrate(90)), { ...dolly(200, { glue: q(80, '%') }), name: 'b' }] },
      'conflict tests.1.failure',
    ],
    [{ acceptance: 'strength and substrate failure' }, 'missing leastSubstrateShare'],
    [{ leastSubstrateShare: q(80, '%') }, 'conflict leastSubstrateShare'],
    [{ tests: [{ ...dolly(9, substrate(100)), dollyDiameter: undefined }] }, 'missing tests.0.dollyDiameter'],
    [{ tests: [{ ...dolly(9, substrate(100)), scaleDiameter: undefined }] }, 'missing tests.0.scaleDiameter'],
    [{ tests: [{ ...dolly(9, substrate(100)), load: q(2000, 'N') }] }, 'conflict tests.0.scaleDiameter'],
    [{ testsNeeded: 2.5 }, 'wrong-type testsNeeded'],
  ])('%j is refused', (more, issue) => {
    expect(refusal(pullOffCheck, { ...set, ...more })).toBe(issue);
  });

  it('a method that does not fit names the ones that do', () => {
    const steel = { ...set, substrate: 'steel' } as const;
    expect(() => pullOffCheck(steel)).toThrow('one for steel: ASTM D4541, ISO 4624');
  });
});

describe('grip', () => {
  const method = 'ANSI A326.3 wet' as const;
  const place = (name: string, ...readings: number[]) => ({ name, method, readings });

  it('a place by another method is refused, and so is a figure off the scale', () => {
    const mixed = [place('a', 0.5), { ...place('b', 40), method: 'pendulum wet' }];
    expect(refusal(slipCheck, { method, places: mixed, limit: 0.42 })).toBe('conflict places.1.method');
    expect(refusal(slipCheck, { method, places: [place('a', 42)], limit: 0.42 })).toBe(
      'out-of-range places.0.readings.0',
    );
    const nameless = [{ name: 'a', readings: [0.5] }];
    expect(refusal(slipCheck, { method, places: nameless, limit: 0.42 })).toBe('missing places.0.method');
  });

  it('one place fails a floor whose mean would meet', () => {
    const floor = slipCheck({ method, places: [place('a', 0.7), place('b', 0.41)], limit: 0.42 });
    expect([floor.verdict, floor.place]).toEqual(['fails', 'b']);
    expect(floor.cautions[0]?.severity).toBe('danger');
  });

  it('a standard uncertainty counts with its confidence', () => {
    const floor = { method, places: [place('a', 0.45)], limit: 0.42, confidence: q(95, '%') } as const;
    const verdict = (uncertainty: number) =>
      slipCheck({ ...floor, readingError: { standardUncertainty: uncertainty } }).verdict;
    expect([verdict(0.015), verdict(0.016)]).toEqual(['meets', 'undecided']);
  });

  it('a mean of decimals exactly on the limit meets it', () => {
    const floor = slipCheck({ method, places: [place('a', 0.41, 0.42, 0.43)], limit: 0.42 });
    expect(floor.verdict).toBe('meets');
  });
});

describe('look', () => {
  const gloss = {
    scale: 'gloss 60°',
    places: [
      { name: 'door', readings: [52] },
      { name: 'till', readings: [42] },
    ],
  } as const;

  it('limits of each place and of the mean are judged apart', () => {
    const judged = appearanceCheck({ ...gloss, limits: { meanLeast: 47, eachLeast: 40, eachMost: 50 } });
    expect(judged.findings.map(({ criterion, verdict }) => [criterion, verdict])).toEqual([
      ['each-least', 'meets'],
      ['each-most', 'fails'],
      ['mean-least', 'meets'],
    ]);
    expect([judged.criterion, judged.place]).toEqual(['each-most', 'door']);
  });

  it.each([
    [{ limits: {} }, 'missing limits'],
    [{ limits: { eachLeast: 50, eachMost: 40 } }, 'conflict limits.eachLeast'],
    [{ limits: { meanLeast: -1 } }, 'out-of-range limits.meanLeast'],
    [{ scale: 'gloss', limits: { meanLeast: 1 } }, 'out-of-range scale'],
    [{ places: [], limits: { meanLeast: 1 } }, 'out-of-range places'],
  ])('%j is refused', (more, issue) => {
    expect(refusal(appearanceCheck, { ...gloss, ...more })).toBe(issue);
  });

  it('an error of a haze that was not measured is refused', () => {
    expect(refusal(polishLevel, { imageClarity: 72, hazeError: 1 })).toBe('conflict hazeError');
  });

  it.each([
    [84.99, 10.01, 5, undefined],
    [95.01, 4.99, 0, undefined],
    [5, 95, 0, 'B'],
    [4.99, 95.01, 0, undefined],
    [10.01, 10, 79.99, undefined],
    [5, 5, 90, 'C'],
    [4.99, 5, 90.01, undefined],
  ] as const)('%d, %d and %d %% of fines, sand and stones are class %s', (fines, sand, stones, name) => {
    const surface = aggregateExposure({
      cementFines: q(fines, '%'),
      fineAggregate: q(sand, '%'),
      coarseAggregate: q(stones, '%'),
    });
    expect(surface.exposureClass).toBe(name);
  });

  it('shares of a surface add up', () => {
    const percent = (value: number) => q(value, '%');
    const surface = {
      cementFines: percent(90),
      fineAggregate: percent(5),
      coarseAggregate: percent(4),
    };
    expect(refusal(aggregateExposure, surface)).toBe('conflict cementFines');
  });
});

it('a correction for roughness is for steel, and for readings above it', () => {
  const reading = { reading: q(30, 'um'), substrate: 'steel', roughness: 'coarse', unit: 'um' };
  expect(refusal(roughnessCorrection, reading)).toBe('conflict reading');
  expect(refusal(roughnessCorrection, { ...reading, substrate: 'concrete' })).toBe('conflict substrate');
});
