// Speed of the climate functions, by the built package: run `npm run build` first. Ratios are within this one run.
import { performance } from 'node:perf_hooks';
import { readFileSync } from 'node:fs';
import psychrolib from 'psychrolib';
import * as climate from '../../dist/climate/index.js';

psychrolib.SetUnitSystem(psychrolib.SI);
const sweep = JSON.parse(readFileSync('tests/climate/data/dew-points.json', 'utf8'));

/** Points whose dew point is above 0.01 °C: below, the other library answers frost points. */
const points = sweep.air_C
  .flatMap((air, i) =>
    sweep.relativeHumidity_percent.map((percent, j) => ({ air, percent, reference: sweep.dewPoint_C[i][j] })),
  )
  .filter(({ air, reference }) => air > 0.01 && reference > 0.01);
const inputs = points.map(({ air, percent }) => ({
  air: { value: air, unit: 'degC' },
  relativeHumidity: { value: percent, unit: '%' },
  unit: 'degC',
}));

/** The same equations without a check: same input object, new answer object, constant factors. */
const n = [
  0, 1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
  -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
];
const [, n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = n;
function bare({ air, relativeHumidity, unit }) {
  const T = air.value + 273.15;
  const t = T + n9 / (T - n10);
  const [a, b, c] = [t * t + n1 * t + n2, n3 * t * t + n4 * t + n5, n6 * t * t + n7 * t + n8];
  const s =
    ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) * Math.sqrt(Math.sqrt(relativeHumidity.value * 0.01));
  const [e, f, g] = [s * s + n3 * s + n6, n1 * s * s + n4 * s + n7, n2 * s * s + n5 * s + n8];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return { value: (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2 - 273.15, unit };
}
const theirs = ({ air, relativeHumidity, unit }) => ({
  value: psychrolib.GetTDewPointFromRelHum(air.value, relativeHumidity.value / 100),
  unit,
});

const ROUTES = { dewPoint: climate.dewPoint, bare: bare, 'psychrolib 1.1.1': theirs };

/** Best time of one call in ns, the routes taking turns. */
function times(routes, rounds) {
  const best = Object.fromEntries(Object.keys(routes).map((name) => [name, Infinity]));
  let sink = 0;
  for (let round = 0; round < rounds; round++) {
    for (const [name, run] of Object.entries(routes)) {
      const start = performance.now();
      for (let again = 0; again < 10; again++) for (const input of inputs) sink += run(input).value;
      best[name] = Math.min(best[name], ((performance.now() - start) * 1e6) / (10 * inputs.length));
    }
  }
  if (!Number.isFinite(sink)) throw new Error('a route answered no number');
  return best;
}

const warm = () => {
  for (const unit of ['degF', 'K', 'degC']) for (const input of inputs) climate.dewPoint({ ...input, unit });
};
warm();
times(ROUTES, 20);
const best = times(ROUTES, 60);
const ours = best.dewPoint;
console.log(`dew point over ${inputs.length} points above 0.01 °C`);
for (const [name, run] of Object.entries(ROUTES)) {
  const error = Math.max(...points.map(({ reference }, i) => Math.abs(run(inputs[i]).value - reference)));
  console.log(
    `  ${name.padEnd(17)} ${best[name].toFixed(1).padStart(7)} ns a call, ${(best[name] / ours).toFixed(2).padStart(6)} × dewPoint, largest error ${error.toFixed(5)} K`,
  );
}

/** A made-up year of hours: seasons, days and passing weather, with a slab that lags behind. */
function year(count) {
  return Array.from({ length: count }, (_, h) => {
    const day = Math.sin((2 * Math.PI * (h - 9)) / 24);
    const season = Math.sin((2 * Math.PI * (h - 2900)) / 8760);
    const weather = Math.sin(h / 37) + Math.sin(h / 91);
    return {
      at: new Date(Date.UTC(2025, 0, 1) + h * 3.6e6).toISOString(),
      air: { value: 11 + 10 * season + 5 * day + 2 * weather, unit: 'degC' },
      relativeHumidity: { value: 66 - 18 * day + 8 * weather, unit: '%' },
      surface: { value: 11 + 9 * season + 3 * Math.sin((2 * Math.PI * (h - 12)) / 24), unit: 'degC' },
    };
  });
}
const search = (readings) =>
  climate.layingWindows({
    readings,
    longestGap: { value: 2, unit: 'h' },
    marginToLay: { value: 3, unit: 'deltaC' },
    marginWhileSensitive: { value: 3, unit: 'deltaC' },
    sensitiveFor: { value: 8, unit: 'h' },
    limits: {
      surface: { least: { value: 10, unit: 'degC' } },
      relativeHumidity: { most: { value: 85, unit: '%' } },
    },
    airError: { value: 0.5, unit: 'deltaC' },
    relativeHumidityError: { value: 2, unit: '%' },
    surfaceError: { value: 0.5, unit: 'deltaC' },
  });
/** Best time of several runs, in ms, of so many searches of one series whose answers are all kept. */
function searched(readings, searches) {
  let [fastest, answer] = [Infinity];
  for (let i = 0; i < 12; i++) {
    const start = performance.now();
    const kept = Array.from({ length: searches }, () => search(readings));
    fastest = Math.min(fastest, performance.now() - start);
    answer = kept[0];
  }
  const { windows, closed } = answer;
  const each = (fastest * 1e3) / (readings.length * searches);
  console.log(
    `layingWindows, ${searches} × ${readings.length} readings: ${fastest.toFixed(1)} ms, ${each.toFixed(2)} µs a reading, ${windows.length} windows, ${closed.length} closed`,
  );
  return fastest;
}
searched(year(8760), 1);
const tenTimes = searched(year(8760), 10);
const tenYears = searched(year(87600), 1);
console.log(`  ten years take ${(tenYears / tenTimes).toFixed(2)} × one year ten times`);
