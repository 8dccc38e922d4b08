import { describe, expect, it } from 'vitest';
import {
  batchClock,
  batchSteps,
  handsNeeded,
  largestBatch,
  latestStart,
  type BatchClockInput,
} from '../../src/batch/index.ts';
import type { Caution } from '../../src/core/caution.ts';
import { batchStepText } from '../../src/messages/batchStepText.ts';
import { cautionText } from '../../src/messages/cautionText.ts';
import { q } from '../support/quantity.ts';

const input = {
  area: q(60, 'm2'),
  volume: q(10, 'l'),
  batchVolume: q(3, 'l'),
  division: 'full and rest',
  parts: [
    { name: 'A', parts: 4 },
    { name: 'B', parts: 1 },
  ],
  potLife: q(20, 'min'),
  statedFor: q(3, 'l'),
  usableShare: q(75, '%'),
  mixTime: q(3, 'min'),
  carryTime: q(1, 'min'),
  placingRate: q(2, 'm2/min'),
  mixers: 1,
  crews: 1,
  units: { volume: 'l', area: 'm2', time: 'min' },
} as const satisfies BatchClockInput;

describe('a clock of full batches and a rest', () => {
  const clockOf = () =>
    batchClock({
      ...input,
      start: '2025-06-03T23:50:00Z',
      marks: {
        pail: { diameter: q(20, 'cm'), height: q(30, 'cm') },
        graduation: q(1, 'mm'),
        ratioTolerance: q(3, '%'),
        unit: 'mm',
      },
    });
  it('gives the rest a smaller area, a later limit to pour and marks of its own', () => {
    const clock = clockOf();
    const [first, , , last] = clock.batches;
    expect(clock.batches.map(({ area }) => area.value)).toEqual([18, 18, 18, 6]);
    expect(first?.pourBy.after).toEqual(q(6, 'min'));
    expect(last?.pourBy.after).toEqual(q(39, 'min'));
    expect(last?.marks?.[1]?.mark.field).toEqual(q(32, 'mm'));
    expect(first?.marks?.[1]?.mark.field).toEqual(q(95, 'mm'));
  });

  it('runs over midnight with the offset it was given', () => {
    const clock = clockOf();
    expect(clock.batches[1]?.start.at).toBe('2025-06-03T23:59:00Z');
    expect(clock.batches[2]?.start.at).toBe('2025-06-04T00:08:00Z');
  });

  it('ends when the rest is down', () => {
    expect(clockOf().duration).toEqual(q(3 * 9 + 4 + 3, 'min'));
  });

  it('ends when the last full batch is down, where that takes longer than the rest', () => {
    // The third batch begins after 6 min, is ready 4 min and down 9 min later; the rest is down after 9 + 4 + 3.
    expect(batchClock({ ...input, mixers: 3, crews: 3 }).duration).toEqual(q(19, 'min'));
  });

  it('names the marks of both sizes', () => {
    const named = clockOf().cautions.slice(3);
    expect(named.map(({ code, params }) => [code, params.ofBatch])).toEqual([
      ['reading-moves-ratio', q(3, 'l')],
      ['marks-off-ratio', q(1, 'l')],
    ]);
    expect(named.map(cautionText).map((words) => words.split('. ').at(-1))).toEqual([
      'This is about the batch of 3 L.',
      'This is about the batch of 1 L.',
    ]);
  });
});

it('full batches without a rest are of one size, whose marks are named once', () => {
  const clock = batchClock({
    ...input,
    volume: q(9, 'l'),
    marks: {
      pail: { diameter: q(20, 'cm'), height: q(30, 'cm') },
      graduation: q(1, 'mm'),
      ratioTolerance: q(3, '%'),
      unit: 'mm',
    },
  });
  expect(clock.batches.length).toBe(3);
  expect(clock.cautions.slice(3).map(({ code, params }) => [code, params.ofBatch])).toEqual([
    ['reading-moves-ratio', undefined],
  ]);
});

it('counts the times of a clock without start only', () => {
  expect(batchClock(input).batches[0]?.start).toEqual({ after: q(0, 'min') });
});

it('says what helps where a batch outlasts the pot life, and still answers', () => {
  const clock = batchClock({ ...input, potLife: q(16, 'min') });
  expect(clock.remedies).toEqual([
    'smaller batch',
    'more hands',
    'cooler material',
    'faster mixing',
    'slower hardener by the instructions',
  ]);
  expect(clock.cautions[0]).toMatchObject({
    code: 'pot-life-too-short',
    severity: 'caution',
    params: { needed: q(13, 'min'), usable: q(12, 'min') },
  });
});

it('names neither hands nor smaller batches where mixing alone outlasts the pot life', () => {
  const clock = batchClock({ ...input, potLife: q(3, 'min') });
  expect(clock.remedies).toEqual(['cooler material', 'faster mixing', 'slower hardener by the instructions']);
  // Out of the pail before the usable time ends, though nothing of it is ready by then.
  expect(clock.batches[0]?.pourBy.after).toEqual(q(2.25, 'min'));
  expect(clock.cautions[0]).toMatchObject({
    code: 'no-time-to-place',
    severity: 'caution',
    params: { needed: q(4, 'min'), usable: q(2.25, 'min') },
  });
  expect(cautionText(clock.cautions[0] as Caution)).toContain('take 4 min, and 2.25 min can be used');
});

it('a batch that does not fit is poured as soon as it is ready, not while it is mixed', () => {
  // 3 min of mixing, 1 min of carrying and 9 min of placing in 6 min.
  const [line] = batchClock({ ...input, potLife: q(8, 'min') }).batches;
  expect(line?.pourBy.after).toEqual(q(4, 'min'));
  expect(line?.downBy.after).toEqual(q(6, 'min'));
});

it('mixing that takes the usable time but for round-off leaves none, and no number of hands', () => {
  const answer = handsNeeded({
    ...input,
    potLife: q(20, 'min'),
    usableShare: q(70, '%'),
    mixTime: q(13, 'min'),
    batchArea: q(45, 'm2'),
    unit: 'min',
  });
  expect(answer).not.toHaveProperty('hands');
  expect(answer).toMatchObject({
    placingTime: q(0, 'min'),
    cautions: [{ code: 'no-time-to-place' }, {}, {}],
  });
});

it('a measuring step larger than the largest batch is named', () => {
  const largest = (step: number) =>
    largestBatch({ ...input, spreadRate: q(6, 'm2/l'), measuringStep: q(step, 'l') });
  expect(largest(5)).toMatchObject({ volume: { exact: q(3, 'l'), field: q(0, 'l') }, remedies: [] });
  expect(largest(5).cautions[2]).toMatchObject({
    code: 'batch-below-measuring-step',
    params: { largest: q(3, 'l'), step: q(5, 'l') },
  });
  expect(largest(3).cautions.length).toBe(2);
});

it('a batch that takes all of the usable time fits', () => {
  const clock = batchClock({ ...input, usableShare: q(65, '%') });
  expect(clock.cycle.value).toBeCloseTo(13, 12);
  expect(clock.usable.value).toBeCloseTo(13, 12);
  expect(clock.remedies).toEqual([]);
});

it('stands the mix before placing where the instructions ask for it, without holding up the mixer', () => {
  const clock = batchClock({ ...input, induction: q(2, 'min') });
  expect(clock.cycle).toEqual(q(15, 'min'));
  expect(clock.stagger).toEqual(q(9, 'min'));
});

it('shares the mixing among mixers and the placing among crews', () => {
  const clock = batchClock({ ...input, mixTime: q(11, 'min'), potLife: q(60, 'min'), mixers: 2, crews: 3 });
  expect([clock.stagger.value, clock.pacedBy]).toEqual([6, 'mixers']);
  const slower = batchClock({ ...input, mixers: 2, crews: 2 });
  expect([slower.stagger.value, slower.pacedBy]).toEqual([4.5, 'crews']);
});

it('every clock warns of heat and of skin and eyes', () => {
  expect(batchClock(input).cautions.map(({ code, severity }) => [code, severity])).toEqual([
    ['heat-in-the-pail', 'danger'],
    ['skin-and-eyes', 'danger'],
    ['ratio-by-volume', 'caution'],
  ]);
});

it('names what went in without what was not given', () => {
  expect(batchClock(input).basis[0]?.inputs).toEqual({
    area: input.area,
    volume: input.volume,
    batchVolume: input.batchVolume,
    division: 'full and rest',
    parts: input.parts,
    potLife: input.potLife,
    statedFor: input.statedFor,
    usableShare: input.usableShare,
    mixTime: input.mixTime,
    carryTime: input.carryTime,
    placingRate: input.placingRate,
    mixers: 1,
    crews: 1,
  });
});

it('a batch of no time at all is 0 and comes with what helps', () => {
  const answer = largestBatch({
    ...input,
    potLife: q(16 / 3, 'min'),
    spreadRate: q(6, 'm2/l'),
    measuringStep: q(0.1, 'l'),
  });
  expect(answer.volume.exact.value).toBeLessThan(1e-12);
  expect(
    largestBatch({ ...input, potLife: q(5, 'min'), spreadRate: q(6, 'm2/l'), measuringStep: q(0.1, 'l') }),
  ).toMatchObject({
    volume: { exact: q(0, 'l'), field: q(0, 'l') },
    limitedBy: 'pot life',
    cycle: q(4, 'min'),
    remedies: batchClock({ ...input, potLife: q(3, 'min') }).remedies,
  });
});

it('instants of other forms are read, and written to the second before', () => {
  const before = (end: string, seconds: number) => latestStart({ end, duration: q(seconds, 's') }).start;
  expect(before('2024-02-29T12:00Z', 60)).toBe('2024-02-29T11:59:00Z');
  expect(before('2024-02-29T12:00:00.250+05:45', 1)).toBe('2024-02-29T11:59:59+05:45');
  expect(before('2024-03-01T00:00:00-03:30', 0.5)).toBe('2024-02-29T23:59:59-03:30');
});

it('one batch alone is measured in a pail that holds it, whatever the largest batch', () => {
  const pail = { diameter: q(10, 'cm'), height: q(15, 'cm') };
  const clock = batchClock({
    ...input,
    volume: q(1, 'l'),
    area: q(6, 'm2'),
    marks: { pail, graduation: q(1, 'mm'), unit: 'mm' },
  });
  expect(clock.cautions.slice(3).map(({ code }) => code)).toEqual(['reading-not-judged']);
  expect(clock.batches.map(({ volume, area }) => [volume.value, area.value])).toEqual([[1, 6]]);
  expect([clock.stagger, clock.cycle]).toEqual([q(4, 'min'), q(7, 'min')]);
});

it('equal batches name the marks of one of them', () => {
  const clock = batchClock({
    ...input,
    division: 'equal',
    marks: {
      pail: { diameter: q(20, 'cm'), height: q(30, 'cm') },
      graduation: q(1, 'mm'),
      ratioTolerance: q(3, '%'),
      unit: 'mm',
    },
  });
  expect(clock.cautions.filter(({ code }) => code === 'reading-moves-ratio').length).toBe(1);
});

it('a mark that is off ratio says so, as data and in words', () => {
  const marks = {
    pail: { diameter: q(20, 'cm'), height: q(25, 'cm') },
    graduation: q(1, 'mm'),
    unit: 'mm',
  } as const;
  const clock = batchClock({
    ...input,
    division: 'equal',
    volume: q(9, 'l'),
    parts: [
      { name: 'A', parts: 2 },
      { name: 'B', parts: 1 },
    ],
    marks,
  });
  expect(clock.cautions.slice(3)).toMatchObject([
    { code: 'reading-not-judged', severity: 'caution', params: { name: 'B', graduation: q(1, 'mm') } },
  ]);
  const [line] = clock.batches;
  if (!line) throw new Error('a line is due');
  const fills = batchSteps(line).steps.filter(({ code }) => code === 'fill-to-mark');
  expect(Object.keys(fills[0]?.params ?? {})).toEqual(['name', 'mark', 'step']);
  expect(fills[1]?.params).toEqual({
    name: 'B',
    mark: q(95, 'mm'),
    step: q(1, 'mm'),
    ...line.marks?.[1]?.off,
  });
  expect(fills.map(batchStepText)).toEqual([
    'Or in the marked pail: A up to 64 mm.',
    'Or in the marked pail: B up to 95 mm (-3.1 % off ratio at the line, -10.8 % to 4.8 % if misread).',
  ]);
});

it('a batch that must stand is not poured before its stand time is over', () => {
  const clock = batchClock({ ...input, division: 'equal', potLife: q(60, 'min'), induction: q(15, 'min') });
  for (const [i, line] of clock.batches.entries()) {
    const stand_min = i * clock.stagger.value + 3 + 15;
    expect(line.standUntil?.after.value).toBeCloseTo(stand_min, 9);
    expect(line.pourBy.after.value).toBeGreaterThan(stand_min);
  }
  const [first] = clock.batches;
  if (!first) throw new Error('a line is due');
  const { steps } = batchSteps(first);
  expect(steps.map(({ code }) => code)).toEqual([
    ...input.parts.map(() => 'measure'),
    'mix',
    'stand-until',
    'pour-by',
    'down-by',
    'discard-at',
  ]);
  expect(steps.map(batchStepText)).toContain(
    'Batch 1: let it stand; 18 min after the start its stand time is over.',
  );
  expect(batchClock({ ...input, division: 'equal' }).batches[0]?.standUntil).toBeUndefined();
});

it('gives no mark to pour to where its steps are too coarse', () => {
  const [line] = batchClock({
    ...input,
    division: 'equal',
    marks: {
      pail: { diameter: q(20, 'cm'), height: q(40, 'cm') },
      graduation: q(1, 'm'),
      unit: 'm',
    },
  }).batches;
  const words = batchSteps(line as NonNullable<typeof line>).steps.map(batchStepText);
  expect(words).toContain('No mark in the pail for A: steps of 1 m are too coarse for it.');
  expect(words.filter((one) => one.includes('up to'))).toEqual([]);
});

it('reads a mark off in fractions of an inch where the stick has them', () => {
  const words = (value: number, step: number, unit = 'in') =>
    batchStepText({
      code: 'fill-to-mark',
      params: { name: 'A', mark: { value, unit }, step: { value: step, unit } },
    });
  expect(words(4.6875, 1 / 16)).toBe('Or in the marked pail: A up to 4 11/16 in.');
  expect(words(5, 1)).toBe('Or in the marked pail: A up to 5 in.');
  expect(words(6, 2)).toBe('Or in the marked pail: A up to 6 in.');
  expect(words(4.65, 0.05)).toBe('Or in the marked pail: A up to 4.65 in.');
  expect(words(12.5, 0.25, 'cm')).toBe('Or in the marked pail: A up to 12.5 cm.');
});

it('a mark that is in ratio but for round-off is 0.0 % off at the line', () => {
  const [line] = batchClock({
    ...input,
    marks: { pail: { diameter: q(20, 'cm'), height: q(25, 'cm') }, graduation: q(1, 'mm'), unit: 'mm' },
  }).batches;
  if (!line) throw new Error('a line is due');
  const off = line.marks?.[1]?.off?.atMarks.value ?? 1;
  expect(Math.abs(off)).toBeLessThan(1e-9);
  expect(off).not.toBe(0);
  expect(batchStepText(batchSteps(line).steps[3] ?? { code: 'mix', params: {} })).toContain(
    '(0.0 % off ratio',
  );
});

it('a line of the clock reads as steps with its own figures', () => {
  const [line] = batchClock({ ...input, start: '2025-06-03T07:00:00Z' }).batches;
  if (!line) throw new Error('a line is due');
  const { steps } = batchSteps(line);
  expect(steps.map(({ code }) => code)).toEqual([
    'measure',
    'measure',
    'mix',
    'pour-by',
    'down-by',
    'discard-at',
  ]);
  expect(steps.slice(2).map(({ params }) => params)).toEqual([
    { batch: 1, volume: q(3, 'l'), after: q(0, 'min'), at: '2025-06-03T07:00:00Z' },
    { batch: 1, after: q(6, 'min'), at: '2025-06-03T07:06:00Z' },
    { batch: 1, area: q(18, 'm2'), after: q(15, 'min'), at: '2025-06-03T07:15:00Z' },
    { batch: 1, after: q(20, 'min'), at: '2025-06-03T07:20:00Z' },
  ]);
  const [bare] = batchClock(input).batches;
  if (!bare) throw new Error('a line is due');
  expect(batchSteps(bare).steps.at(-1)).toEqual({
    code: 'discard-at',
    params: { batch: 1, after: q(20, 'min') },
  });
});
