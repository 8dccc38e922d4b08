// How long 100,000 readings of a film take to judge, and whether it grows in proportion. Prints one line for each size.
import { performance } from 'node:perf_hooks';
import { dryFilmCheck } from '../../dist/inspect/index.js';

const q = (value, unit) => ({ value, unit });

/** Areas of five spots of three readings, between 16 and 24 mil, without random numbers. */
const film = (readings, rule) => ({
  rule,
  substrate: 'concrete',
  specified: { least: q(16, 'mil'), most: q(24, 'mil') },
  coatedArea: q(100, 'ft2'),
  areas: Array.from({ length: Math.ceil(readings / 15) }, (_, a) => ({
    name: `area ${a + 1}`,
    spots: Array.from({ length: 5 }, (_, s) =>
      Array.from({ length: 3 }, (_, r) => q(20 + ((a * 31 + s * 17 + r * 7) % 31) / 10, 'mil')),
    ),
  })),
  gaugeError: q(2, '%'),
  unit: 'mil',
});
const RULES = [
  { rule: 'SSPC-PA 9:2015', level: 3, areasIn: 'ft2' },
  {
    rule: 'own',
    name: 'share of low spots',
    areas: 1,
    spotsPerArea: 5,
    readingsPerSpot: 3,
    terms: { lowShare: q(10, '%') },
  },
];

/** Median time of several runs, in ms. */
function timed(input, runs) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    if (dryFilmCheck(input).verdict === 'fails') throw new Error('a good film failed');
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return times[Math.floor(runs / 2)];
}

for (const rule of RULES) {
  const [tenth, whole] = [film(10_000, rule), film(100_000, rule)];
  timed(tenth, 9);
  const small = timed(tenth, 9);
  const large = timed(whole, 9);
  console.log(`${rule.rule}: 10,000 readings ${small.toFixed(1)} ms`);
  console.log(
    `${rule.rule}: 100,000 readings ${large.toFixed(1)} ms, ${(large / small).toFixed(1)} times as long`,
  );
}
