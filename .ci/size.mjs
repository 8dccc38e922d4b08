// What each public function costs an app: bundled alone, minified, gzip. Fails over the budget, and where a folder leaves
// more than the error class with an app that calls nothing of it.
import { existsSync, readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

/** What a formula or a conversion may add to an app that has one formula, `spreadRate`, and with it the guard. */
const ADDED = 1.2 * 1024;
/** What a formula may cost an app that has nothing else, with the guard and the units of all its inputs. */
const ALONE = 1.75 * 1024;

/** Formulas small enough to cost no more than that with the guard, too. */
const SMALL = ['wetThickness', 'spreadRateForThickness', 'dryThickness', 'wetThicknessForDry'];

/** Formulas that need more than arithmetic: what each may add, what it may cost alone, and what for. */
const LARGER = {
  'area.polygonArea': [1.65, 2.5, 'a sweep that refuses an outline that crosses itself'],
  'area.polygonPerimeter': [1.65, 2.5, 'the same sweep'],
  'climate.dewPoint': [1.2, 2.2, 'the curves of vapour pressure'],
  'climate.frostPoint': [1.2, 2.2, 'the same curves'],
  'climate.relativeHumidityFromWetBulb': [1.2, 2.2, 'the same curves'],
  'climate.sealedPoreRise': [1.2, 2.2, 'the same curves'],
  'climate.vapourDrive': [1.2, 2.2, 'the same curves'],
  'climate.wetBulb': [1.2, 2.2, 'the same curves'],
  'cure.degreeOfCure': [1.4, 2.5, 'a checked integrator'],
  'cure.timeToDegreeOfCure': [1.4, 2.5, 'the same integrator'],
  'mix.leastMeasurableBatch': [14, 15, 'counting in decimals'],
  'statistics.arithmeticMean': [1.8, 3, 'every unit'],
  'statistics.coefficientOfVariation': [1.8, 3, 'every unit'],
  'statistics.conformanceProbability': [2.4, 3.6, "every unit and Student's distribution"],
  'statistics.expandedUncertainty': [2.4, 3.6, "every unit and Student's distribution"],
  'statistics.sampleStandardDeviation': [1.8, 3, 'every unit'],
  'statistics.typeAUncertainty': [1.8, 3, 'every unit'],
  'statistics.typeBUncertainty': [1.8, 3, 'every unit'],
  'statistics.uncertaintyFromExpanded': [2.7, 4, "every unit and Student's distribution"],
  'units.add': [1.5, 2.6, 'every unit, and points and differences apart'],
  'units.convert': [1.2, 2.5, 'every unit'],
  'units.subtract': [1.5, 2.6, 'every unit, and points and differences apart'],
};

/** Has a bundler look at what is imported statement by statement, as it does within a folder that is used. */
const lookInside = {
  name: 'look inside',
  setup({ onResolve, resolve }) {
    onResolve({ filter: /^\./ }, async ({ path, pluginData, ...from }) =>
      pluginData === 'seen'
        ? undefined
        : { ...(await resolve(path, { ...from, pluginData: 'seen' })), sideEffects: true },
    );
  },
};

async function gzip(code, plugins = []) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: process.cwd() },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    logLevel: 'error',
    plugins,
    external: plugins.length ? ['decimal.js', 'convert-units'] : [],
  });
  return gzipSync(outputFiles[0].contents, { level: 9 }).length;
}

function budgetOf(folder, name) {
  const larger = LARGER[`${folder}.${name}`];
  if (larger) return [larger[0] * 1024, larger[1] * 1024, larger[2]];
  return [ADDED, folder === 'film' && SMALL.includes(name) ? 1.2 * 1024 : ALONE];
}

const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));
const base = `export { spreadRate } from './dist/film/index.js';`;
const baseSize = await gzip(base);
let failed = 0;
console.log('gzip bytes: alone, and added to an app that has film.spreadRate');
for (const folder of folders) {
  const module = await import(`../dist/${folder}/index.js`);
  for (const name of Object.keys(module)) {
    const id = `${folder}.${name}`;
    const line = `export { ${name} } from './dist/${folder}/index.js';`;
    const alone = await gzip(line);
    const added = name === 'spreadRate' ? alone - baseSize : (await gzip(base + line)) - baseSize;
    const isFormula = typeof module[name] === 'function' && 'directions' in module[name];
    const [mayAdd, mayCost, reason = ''] = budgetOf(folder, name);
    const over = isFormula && (added > mayAdd || alone > mayCost);
    if (over) failed++;
    const kind = isFormula ? `formula ${reason}` : '';
    console.log(
      `${id.padEnd(40)}${String(alone).padStart(7)}${String(added).padStart(7)}  ${over ? 'OVER BUDGET' : kind}`,
    );
  }
}

/** One function each, so that there is nothing to leave out. */
const WHOLE = ['plan', 'schema'];
const errorClass = await gzip(`import './dist/core/index.js';`, [lookInside]);
for (const folder of folders.filter((name) => !WHOLE.includes(name))) {
  const left = (await gzip(`import './dist/${folder}/index.js';`, [lookInside])) - errorClass;
  if (left <= 100) continue;
  failed++;
  console.log(`${folder}: an app that calls nothing of it still gets ${left} bytes of it`);
}
process.exit(failed ? 1 : 0);
