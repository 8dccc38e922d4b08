// How long 100,000 readings take to judge: of a film in one call, and whether it grows in proportion; and one by one,
// in a call each of every check that judges one reading. Run `npm run build` first.
import { performance } from 'node:perf_hooks';
import * as aggregate from '../../dist/aggregate/index.js';
import * as climate from '../../dist/climate/index.js';
import * as inspect from '../../dist/inspect/index.js';
import * as moisture from '../../dist/moisture/index.js';
import * as safety from '../../dist/safety/index.js';
import * as statistics from '../../dist/statistics/index.js';

const { dryFilmCheck } = inspect;
const COUNT = 100_000;

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

const bounds = { airError: q(0.5, 'deltaC'), relativeHumidityError: q(2, '%') };
const gum = {
  airError: { standardUncertainty: q(0.3, 'deltaC'), degreesOfFreedom: 12 },
  relativeHumidityError: { standardUncertainty: q(1.5, '%'), degreesOfFreedom: 6 },
  confidence: q(95, '%'),
};
const air = (i) => ({
  air: q(15 + (i % 100) / 10, 'degC'),
  relativeHumidity: q(50 + (i % 40), '%'),
  surface: q(16, 'degC'),
  limit: q(3, 'deltaC'),
});
const film_mil = (i, degreesOfFreedom) => ({
  value: 14 + (i % 60) / 10,
  unit: 'mil',
  standardUncertainty: q(0.3, 'mil'),
  degreesOfFreedom,
});
const slab = { floorArea: q(100, 'ft2'), slabThickness: q(6, 'in'), drying: 'one side' };
const hole = (i) => ({
  relativeHumidity: q(60 + (i % 190) / 10, '%'),
  depth: q(2.5, 'in'),
  closedFor: q(26, 'h'),
});
const gauge = { series: 'ASTM D4414', shortest: q(2, 'mil'), longest: q(30, 'mil') };
const method = 'ANSI A326.3 wet';
const bond = { method: 'ASTM D7234', substrate: 'concrete', limit: q(200, 'psi'), acceptance: 'strength' };

/** Every check that judges one reading, each reading another. */
const SINGLE = {
  'climate.dewPointMargin': [climate.dewPointMargin, air],
  '  errors as bounds': [climate.dewPointMargin, (i) => Object.assign(air(i), bounds)],
  '  errors by the GUM': [climate.dewPointMargin, (i) => Object.assign(air(i), gum)],
  'climate.ambientLimits': [
    climate.ambientLimits,
    (i) => ({
      readings: { relativeHumidity: q(50 + (i % 40), '%') },
      limits: { relativeHumidity: { most: q(85, '%') } },
    }),
  ],
  'climate.slabTrend': [
    climate.slabTrend,
    (i) => ({
      earlier: { at: '2026-03-02T08:00:00Z', surface: q(15, 'degC') },
      later: { at: '2026-03-02T09:00:00Z', surface: q(14 + (i % 20) / 10, 'degC') },
      changeError: q(0.5, 'deltaC'),
      unit: 'deltaC',
    }),
  ],
  'statistics.guardedConformity': [
    statistics.guardedConformity,
    (i) => ({ measured: film_mil(i, 8), least: q(16, 'mil'), guardBand: q(0.5, 'mil') }),
  ],
  '  by confidence': [
    statistics.guardedConformity,
    (i) => ({ measured: film_mil(i, 3 + (i % 40)), least: q(16, 'mil'), confidence: q(95, '%') }),
  ],
  'moisture.inSlabHumidityTest': [
    moisture.inSlabHumidityTest,
    (i) => ({ ...slab, equilibration: q(24, 'h'), limit: q(80, '%'), tests: [hole(i)] }),
  ],
  'moisture.calciumChlorideTest': [
    moisture.calciumChlorideTest,
    (i) => ({
      floorArea: q(100, 'ft2'),
      limit: q(3, 'lb/1000ft2/24h'),
      tests: [{ gain: q(1 + (i % 90) / 100, 'g'), exposedArea: q(64.06, 'in2'), exposure: q(66, 'h') }],
    }),
  ],
  'moisture.alkalinityTest': [
    moisture.alkalinityTest,
    (i) => ({ floorArea: q(100, 'ft2'), readings: [8 + (i % 40) / 10], most: 10, readingError: 0.2 }),
  ],
  'moisture.membranePermeance': [
    moisture.membranePermeance,
    (i) => ({ permeance: q(0.01 + (i % 19) / 100, 'perm'), limit: q(0.1, 'perm') }),
  ],
  'moisture.surfaceHygrometerTest': [
    moisture.surfaceHygrometerTest,
    (i) => ({
      equilibration: q(72, 'h'),
      tests: [{ relativeHumidity: q(60 + (i % 30), '%'), closedFor: q(80, 'h') }],
      limit: q(75, '%'),
    }),
  ],
  'moisture.plasticSheetTest': [
    moisture.plasticSheetTest,
    (i) => ({
      floorArea: q(100, 'ft2'),
      leastDwell: q(16, 'h'),
      tests: [{ dwell: q(16 + (i % 9), 'h'), moisture: i % 7 === 0 }],
    }),
  ],
  'aggregate.sandDryness': [
    aggregate.sandDryness,
    (i) => ({ wetMass: q(500, 'g'), dryMass: q(498 + (i % 20) / 10, 'g'), limit: q(0.2, '%') }),
  ],
  'safety.silicaExposure': [
    safety.silicaExposure,
    (i) => ({
      tasks: [{ name: 'grinding', concentration: q(20 + (i % 50), 'ug/m3'), duration: q(8, 'h') }],
      limit: q(50, 'ug/m3'),
      actionLevel: q(25, 'ug/m3'),
    }),
  ],
  'safety.checkPailMass': [
    safety.checkPailMass,
    (i) => ({ mass: q(1 + (i % 50) / 10, 'kg'), limit: q(4, 'kg'), massError: q(0.1, 'kg') }),
  ],
  'inspect.notchGaugeReading': [
    inspect.notchGaugeReading,
    (i) => ({ gauge, lastWetted: q(2 + (i % 9), 'mil'), planned: { least: q(8, 'mil') }, unit: 'mil' }),
  ],
  'inspect.slipCheck': [
    inspect.slipCheck,
    (i) => ({ method, limit: 0.42, places: [{ name: 'aisle', method, readings: [0.3 + (i % 30) / 100] }] }),
  ],
  'inspect.appearanceCheck': [
    inspect.appearanceCheck,
    (i) => ({
      scale: 'gloss 60°',
      places: [{ name: 'door', readings: [30 + (i % 40)] }],
      limits: { eachLeast: 40 },
    }),
  ],
  'inspect.pullOffCheck': [
    inspect.pullOffCheck,
    (i) => ({
      ...bond,
      tests: [
        {
          name: 'bay',
          load: q(2000 + (i % 2000), 'N'),
          dollyDiameter: q(50, 'mm'),
          failure: { substrate: q(100, '%') },
        },
      ],
    }),
  ],
  'inspect.pendulumClass': [
    inspect.pendulumClass,
    (i) => ({ pendulumValue: 10 + (i % 50), readingError: 2 }),
  ],
  'inspect.polishLevel': [inspect.polishLevel, (i) => ({ imageClarity: i % 100, imageClarityError: 1 })],
  'inspect.glossLevel': [inspect.glossLevel, (i) => ({ gloss60: i % 100, gloss60Error: 1 })],
  'inspect.aggregateExposure': [
    inspect.aggregateExposure,
    (i) => ({
      cementFines: q(80 + (i % 20), '%'),
      fineAggregate: q(20 - (i % 20), '%'),
      coarseAggregate: q(0, '%'),
      shareError: q(1, '%'),
    }),
  ],
};

console.log(`${COUNT} single readings, a call each, best of 7; the answers dropped, and all kept`);
for (const [name, [check, reading]] of Object.entries(SINGLE)) {
  const inputs = Array.from({ length: COUNT }, (_, i) => reading(i));
  const best = { dropped: Infinity, kept: Infinity };
  for (let round = 0; round < 7; round++) {
    let start = performance.now();
    for (const input of inputs) check(input);
    best.dropped = Math.min(best.dropped, performance.now() - start);
    start = performance.now();
    const kept = inputs.map((input) => check(input));
    best.kept = Math.min(best.kept, performance.now() - start);
    if (kept.length !== COUNT) throw new Error('an answer is missing');
  }
  console.log(
    `  ${name.padEnd(30)} ${best.dropped.toFixed(0).padStart(5)} ms ${best.kept.toFixed(0).padStart(6)} ms`,
  );
}
