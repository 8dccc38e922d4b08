// How long a clock of many batches takes, and whether it grows in proportion. Prints one line for each size.
import { performance } from 'node:perf_hooks';
import { batchClock } from '../../dist/batch/index.js';

const q = (value, unit) => ({ value, unit });
const clock = (batches) =>
  batchClock({
    area: q(40 * batches, 'ft2'),
    volume: q(0.25 * batches, 'usgal'),
    batchVolume: q(0.25, 'usgal'),
    division: 'equal',
    parts: [
      { name: 'A', parts: 2 },
      { name: 'B', parts: 1 },
    ],
    potLife: q(20, 'min'),
    statedFor: q(1, 'usgal'),
    usableShare: q(70, '%'),
    mixTime: q(2, 'min'),
    carryTime: q(1, 'min'),
    placingRate: q(20, 'ft2/min'),
    mixers: 1,
    crews: 1,
    marks: {
      pail: { diameter: q(6, 'in'), height: q(8, 'in') },
      graduation: q(1 / 16, 'in'),
      unit: 'in',
    },
    start: '2025-06-03T07:30:00-05:00',
    units: { volume: 'usgal', area: 'ft2', time: 'min' },
  });

/** Median time of several runs, in ms; each run keeps so many clocks, as one large clock is kept. */
function timed(clocks, batches, runs) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    const kept = Array.from({ length: clocks }, () => clock(batches));
    const time = performance.now() - start;
    if (kept.some((one) => one.batches.length !== batches)) throw new Error('a batch was lost');
    return time;
  }).sort((a, b) => a - b);
  return times[Math.floor(runs / 2)];
}

timed(1, 10_000, 5);
const one = timed(1, 10_000, 9);
const ten = timed(10, 10_000, 5);
const large = timed(1, 100_000, 5);
console.log(`10,000 batches: ${one.toFixed(0)} ms; ten such clocks: ${ten.toFixed(0)} ms`);
console.log(`100,000 batches: ${large.toFixed(0)} ms, ${(large / ten).toFixed(2)} × the ten clocks`);
