import { describe, expect, it } from 'vitest';
import {
  batchClock,
  batchPace,
  batchSizes,
  batchSteps,
  handsNeeded,
  largestBatch,
  latestStart,
  poreCoatLots,
  stopPoint,
  wetEdge,
} from '../../src/batch/index.ts';
import { rows } from '../support/library.ts';
import { refusal } from '../support/issues.ts';
import { q } from '../support/quantity.ts';

/** The input of a check row, to be damaged. */
const given = (id: string) => rows.find((row) => row.id === id)?.given ?? {};

describe('batchClock refuses', () => {
  const clock = given('clock-four-batches');
  it.each([
    ['a batch larger than the pail', { pailCapacity: q(2.4, 'l') }, 'conflict batchVolume'],
    ['a batch larger than the stated volume', { statedFor: q(2.4, 'l') }, 'conflict batchVolume'],
    [
      'a pail that runs over',
      { marks: { pail: { diameter: q(10, 'cm'), height: q(10, 'cm') }, graduation: q(1, 'mm'), unit: 'mm' } },
      'conflict marks.pail',
    ],
    ['parts of zero', { parts: [{ name: 'A', parts: 0 }] }, 'out-of-range parts.0.parts'],
    ['no parts', { parts: [] }, 'out-of-range parts'],
    ['parts that are no list', { parts: { A: 2 } }, 'wrong-type parts'],
    ['a part that is text', { parts: ['A'] }, 'wrong-type parts.0'],
    [
      'two parts of one name',
      {
        parts: [
          { name: 'A', parts: 1 },
          { name: 'A', parts: 1 },
        ],
      },
      'conflict parts.1.name',
    ],
    ['a part without name', { parts: [{ parts: 1 }] }, 'missing parts.0.name'],
    ['a part with an empty name', { parts: [{ name: '', parts: 1 }] }, 'out-of-range parts.0.name'],
    ['parts as text', { parts: [{ name: 'A', parts: '2' }] }, 'wrong-type parts.0.parts'],
    ['parts left out', { parts: [{ name: 'A' }] }, 'missing parts.0.parts'],
    ['parts that are none', { parts: [{ name: 'A', parts: NaN }] }, 'not-finite parts.0.parts'],
    ['parts by weight', { parts: [{ name: 'A', weightParts: 2 }] }, 'missing parts.0.parts'],
    ['no mixer', { mixers: 0 }, 'out-of-range mixers'],
    ['half a crew', { crews: 0.5 }, 'out-of-range crews'],
    ['a crew and a half', { crews: 1.5 }, 'wrong-type crews'],
    ['an unknown division', { division: 'some' }, 'out-of-range division'],
    ['no division', { division: undefined }, 'missing division'],
    ['a division of another type', { division: 2 }, 'wrong-type division'],
    ['no units', { units: undefined }, 'missing units'],
    ['units as text', { units: 'l' }, 'wrong-type units'],
    [
      'an unknown unit of volume',
      { units: { volume: 'gal', area: 'm2', time: 'min' } },
      'wrong-unit units.volume',
    ],
    ['an unknown unit of area', { units: { volume: 'l', area: 'a', time: 'min' } }, 'wrong-unit units.area'],
    ['an unknown unit of time', { units: { volume: 'l', area: 'm2', time: 'm' } }, 'wrong-unit units.time'],
    ['a start without offset', { start: '2025-06-03T07:30:00' }, 'out-of-range start'],
    ['a start on a day that is none', { start: '2025-06-31T07:30:00Z' }, 'out-of-range start'],
    ['a start in a month that is none', { start: '2025-13-01T07:30:00Z' }, 'out-of-range start'],
    ['a start that is no text', { start: 7 }, 'wrong-type start'],
    ['more than a million batches', { volume: q(3e6, 'l') }, 'too-large batchVolume'],
  ])('%s', (_, damage, expected) => {
    expect(refusal(batchClock, { ...clock, ...damage })).toBe(expected);
  });

  it('but answers a million', () => {
    expect(
      refusal(batchSizes, { ...given('sizes-by-area'), total: q(1e6, 'ft2'), largest: q(1, 'ft2') }),
    ).toBe('');
  });

  it('a batch that fits exactly is none of them', () => {
    expect(refusal(batchClock, { ...clock, statedFor: q(2.5, 'l'), pailCapacity: q(2.5, 'l') })).toBe('');
  });
});

describe('the others refuse', () => {
  it.each([
    ['wetEdge', wetEdge, 'edge-30C', { margin: q(6, 'min') }, 'conflict margin'],
    [
      'wetEdge',
      wetEdge,
      'edge-30C',
      { units: { time: 'min', length: 'm2', rate: 'm2/min' } },
      'wrong-unit units.length',
    ],
    [
      'wetEdge',
      wetEdge,
      'edge-30C',
      { units: { time: 'min', length: 'm', rate: 'm' } },
      'wrong-unit units.rate',
    ],
    [
      'wetEdge',
      wetEdge,
      'edge-30C',
      { units: { time: 'm', length: 'm', rate: 'm2/min' } },
      'wrong-unit units.time',
    ],
    ['stopPoint', stopPoint, 'stop-with-reserve', { reserve: q(2.5, 'h') }, 'conflict reserve'],
    ['stopPoint', stopPoint, 'stop-with-reserve', { stops: [] }, 'out-of-range stops'],
    ['stopPoint', stopPoint, 'stop-with-reserve', { stops: [{ area: q(1, 'm2') }] }, 'missing stops.0.name'],
    ['poreCoatLots', poreCoatLots, 'lots-of-a-showroom', { tooHard: q(25, 'min') }, 'conflict tooHard'],
    [
      'poreCoatLots',
      poreCoatLots,
      'lots-of-a-showroom',
      { units: { area: 'm', time: 'min' } },
      'wrong-unit units.area',
    ],
    [
      'poreCoatLots',
      poreCoatLots,
      'lots-of-a-showroom',
      { units: { area: 'm2', time: 'm' } },
      'wrong-unit units.time',
    ],
    ['batchPace', batchPace, 'pace-grout', { units: { time: 'm', rate: 'm2/h' } }, 'wrong-unit units.time'],
    ['batchPace', batchPace, 'pace-grout', { units: { time: 'min', rate: 'm2' } }, 'wrong-unit units.rate'],
    ['batchPace', batchPace, 'pace-grout', { batchArea: q(1e-300, 'm2') }, 'too-large '],
    ['batchSizes', batchSizes, 'sizes-by-area', { largest: q(1, 'l') }, 'wrong-unit largest'],
    ['batchSizes', batchSizes, 'sizes-by-area', { total: q(1, 'kg') }, 'wrong-unit total'],
    ['batchSizes', batchSizes, 'sizes-by-area', { unit: 'l' }, 'wrong-unit unit'],
    [
      'largestBatch',
      largestBatch,
      'largest-pail',
      { units: { volume: 'm', area: 'm2', time: 's' } },
      'wrong-unit units.volume',
    ],
    [
      'largestBatch',
      largestBatch,
      'largest-pail',
      { units: { volume: 'l', area: 'm', time: 's' } },
      'wrong-unit units.area',
    ],
    [
      'largestBatch',
      largestBatch,
      'largest-pail',
      { units: { volume: 'l', area: 'm2', time: 'l' } },
      'wrong-unit units.time',
    ],
    ['handsNeeded', handsNeeded, 'hands-exactly', { placingRate: q(1e-300, 'm2/h') }, 'too-large '],
    ['latestStart', latestStart, 'latest-start', { end: undefined }, 'missing end'],
    ['latestStart', latestStart, 'latest-start', { duration: q(4e6, 'd') }, 'too-large '],
  ])('%s', (_, fn, id, damage, expected) => {
    expect(refusal(fn, { ...given(id), ...damage })).toBe(expected);
  });
});

describe('batchSteps refuses', () => {
  const minutes = (value: number) => ({ after: q(value, 'min') });
  const line = {
    number: 2,
    volume: q(3, 'l'),
    area: q(18, 'm2'),
    parts: [{ name: 'A', volume: q(3, 'l') }],
    start: minutes(9),
    pourBy: minutes(15),
    downBy: minutes(24),
    discardAt: minutes(29),
  };
  it.each([null, 0, ''])('a stand time of %j', (standUntil) => {
    expect(refusal(batchSteps, { ...line, standUntil })).toBe('wrong-type standUntil');
  });
});
