// How long a conversion takes beside its bare form and beside two general-purpose libraries, all in one run.
// Gates are ratios; the times depend on the machine.
import configureMeasurements from 'convert-units';
import * as math from 'mathjs';
import * as core from '../../dist/core/index.js';
import * as film from '../../dist/film/index.js';
import * as units from '../../dist/units/index.js';

/** The pairs that an app converts all day. */
const PAIRS = [
  ['mil', 'um', 2.54e-5, 1e-6],
  ['ft2', 'm2', 0.09290304, 1],
  ['usgal', 'l', 0.003785411784, 0.001],
  ['lb', 'kg', 0.45359237, 1],
];
const CALLS = 200_000;
const ROUNDS = 40;

/** Bare: the same input object, a new answer object, constant factors, no checks. */
const bare = {
  mil: ({ quantity, unit }) => ({ value: (quantity.value * 2.54e-5) / 1e-6, unit }),
  ft2: ({ quantity, unit }) => ({ value: (quantity.value * 0.09290304) / 1, unit }),
  usgal: ({ quantity, unit }) => ({ value: (quantity.value * 0.003785411784) / 0.001, unit }),
  lb: ({ quantity, unit }) => ({ value: (quantity.value * 0.45359237) / 1, unit }),
};

/** convert-units with its own number type and our definitions. */
const named = (to_anchor) => ({ name: { singular: '', plural: '' }, to_anchor });
const theirs = configureMeasurements(
  Object.fromEntries(
    PAIRS.map(([from, to, a, b]) => [from, { systems: { all: { [from]: named(a), [to]: named(b) } } }]),
  ),
);

const MATH_UNITS = { ft2: 'sqft', usgal: 'gallon', lb: 'lbm' };
const mathName = (unit) => MATH_UNITS[unit] ?? unit;

/** Keeps the results alive, so that no loop is optimised away. */
let sink = 0;

function time(calls, once) {
  const start = performance.now();
  for (let i = 0; i < calls; i++) sink += once(i);
  return ((performance.now() - start) * 1e6) / calls;
}

/** Nanoseconds a call of each contender, measured in turn; the best round of each, as the rest is other work. */
function race(contenders) {
  const times = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]));
  for (let round = 0; round < ROUNDS; round++) {
    for (const [name, { calls = CALLS, once }] of Object.entries(contenders))
      times[name].push(time(calls, once));
  }
  return Object.fromEntries(Object.entries(times).map(([name, list]) => [name, Math.min(...list)]));
}

// Every export is called once before anything is timed, so that nothing is measured in a state no app is ever in.
for (const run of [core, units, film].flatMap(Object.values)) {
  try {
    run({});
  } catch {
    // Refused, as it should be.
  }
}
for (const dimension of ['length', 'area', 'volume', 'mass', 'temperature']) {
  for (const from of units.unitsOf(dimension)) {
    for (const to of units.unitsOf(dimension))
      units.convert({ quantity: { value: 300, unit: from }, unit: to });
  }
}

const ratios = PAIRS.map(([from, to]) => {
  const form = bare[from];
  const inputs = Array.from({ length: 1024 }, (_, i) => ({
    quantity: { value: 1 + i, unit: from },
    unit: to,
  }));
  const input = (i) => inputs[i & 1023];
  const result = race({
    bare: { once: (i) => form(input(i)).value },
    ours: { once: (i) => units.convert(input(i)).value },
    convertUnits: { once: (i) => theirs(input(i).quantity.value).from(from).to(to) },
    mathjs: {
      calls: CALLS / 100,
      once: (i) => math.unit(input(i).quantity.value, mathName(from)).toNumber(mathName(to)),
    },
  });
  const { bare: base, ours, convertUnits, mathjs } = result;
  console.log(
    `${from} to ${to}: bare ${base.toFixed(1)} ns, convert ${ours.toFixed(1)} ns, ` +
      `convert-units ${convertUnits.toFixed(1)} ns, mathjs ${mathjs.toFixed(0)} ns`,
  );
  return { bare: ours / base, convertUnits: convertUnits / ours, mathjs: mathjs / ours };
});

const gates = [
  ['convert costs at most 4 times its bare form', Math.max(...ratios.map((r) => r.bare)), (x) => x <= 4],
  [
    'convert-units takes at least 1.5 times as long',
    Math.min(...ratios.map((r) => r.convertUnits)),
    (x) => x >= 1.5,
  ],
  ['mathjs takes at least 50 times as long', Math.min(...ratios.map((r) => r.mathjs)), (x) => x >= 50],
];
for (const [words, worst, holds] of gates) {
  console.log(`${holds(worst) ? 'holds' : 'FAILS'}  ${words}: ${worst.toFixed(2)}`);
  if (!holds(worst)) process.exitCode = 1;
}
if (Number.isNaN(sink)) console.log(sink);
