// Time to judge a hundred thousand readings, by the built package: run `npm run build` first.
import { performance } from 'node:perf_hooks';
import * as climate from '../../dist/climate/index.js';
import * as moisture from '../../dist/moisture/index.js';
import * as statistics from '../../dist/statistics/index.js';

const COUNT = 100_000;
const places = Array.from({ length: COUNT }, (_, i) => i);
const confidence = { value: 95, unit: '%' };
const q = (value, unit) => ({ value, unit });

const holes = places.map((i) => ({
  relativeHumidity: q(60 + (i % 190) / 10, '%'),
  depth: q(2.5, 'in'),
  closedFor: q(26, 'h'),
}));
const slab = {
  floorArea: q(1e8, 'ft2'),
  slabThickness: q(6, 'in'),
  drying: 'one side',
  equilibration: q(24, 'h'),
  tests: holes,
  limit: q(80, '%'),
};
const dishes = {
  floorArea: q(1e8, 'ft2'),
  tests: places.map((i) => ({
    gain: q(1 + (i % 90) / 100, 'g'),
    exposedArea: q(64.06, 'in2'),
    exposure: q(66, 'h'),
  })),
  limit: q(3, 'lb/1000ft2/24h'),
};
const films = places.map((i) => q(14 + (i % 60) / 10, 'mil'));
const uncertain = (quantity) => ({ ...quantity, standardUncertainty: q(0.3, 'mil'), degreesOfFreedom: 8 });
const air = (i) => ({
  air: q(15 + (i % 100) / 10, 'degC'),
  relativeHumidity: q(50 + (i % 40), '%'),
  surface: q(16, 'degC'),
  limit: q(3, 'deltaC'),
});
const gum = {
  airError: { standardUncertainty: q(0.3, 'deltaC'), degreesOfFreedom: 12 },
  relativeHumidityError: { standardUncertainty: q(1.5, '%'), degreesOfFreedom: 6 },
  confidence,
};

const JOBS = {
  'inSlabHumidityTest, one call': () =>
    moisture.inSlabHumidityTest({ ...slab, relativeHumidityError: q(2, '%') }),
  'the same by the GUM': () =>
    moisture.inSlabHumidityTest({ ...slab, relativeHumidityError: gum.relativeHumidityError, confidence }),
  'calciumChlorideTest, one call': () => moisture.calciumChlorideTest({ ...dishes, gainError: q(0.1, 'g') }),
  'the same by the GUM ': () =>
    moisture.calciumChlorideTest({
      ...dishes,
      gainError: { standardUncertainty: q(0.05, 'g'), degreesOfFreedom: 4 },
      exposureError: q(0.5, 'h'),
      confidence,
    }),
  'dewPointMargin, a call each': () => places.map((i) => climate.dewPointMargin(air(i))),
  'the same by the GUM  ': () => places.map((i) => climate.dewPointMargin({ ...air(i), ...gum })),
  'guardedConformity, a call each': () =>
    films.map((film) =>
      statistics.guardedConformity({
        measured: uncertain(film),
        least: q(16, 'mil'),
        guardBand: q(0.5, 'mil'),
      }),
    ),
  'sampleStandardDeviation, one call': () =>
    statistics.sampleStandardDeviation({ readings: films, unit: 'mil' }),
};

console.log(`${COUNT} readings judged, best of 7`);
for (const [name, run] of Object.entries(JOBS)) {
  let best = Infinity;
  for (let round = 0; round < 7; round++) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  console.log(`  ${name.trim().padEnd(36)} ${best.toFixed(0).padStart(6)} ms`);
}
