// What each public function costs an app: bundled alone, minified, gzip. Fails over the budget.
import { existsSync, readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

/** What a formula or a conversion may add to an app that has one formula, `volumeNeeded`, and with it the guard. */
const ADDED = 1.2 * 1024;

/** Formulas that need more than arithmetic, and what for. */
const LARGER = {
  'area.polygonArea': [1.6 * 1024, 'a sweep that refuses an outline that crosses itself'],
  'area.polygonPerimeter': [1.6 * 1024, 'the same sweep'],
  'cure.degreeOfCure': [1.5 * 1024, 'a checked integrator'],
  'cure.timeToDegreeOfCure': [1.5 * 1024, 'a checked integrator'],
  'mix.leastMeasurableBatch': [15 * 1024, 'counting in decimals'],
  'statistics.arithmeticMean': [1.9 * 1024, 'every unit'],
  'statistics.coefficientOfVariation': [1.9 * 1024, 'every unit'],
  'statistics.conformanceProbability': [2.4 * 1024, "every unit and Student's distribution"],
  'statistics.expandedUncertainty': [2.4 * 1024, "every unit and Student's distribution"],
  'statistics.sampleStandardDeviation': [1.9 * 1024, 'every unit'],
  'statistics.typeAUncertainty': [1.9 * 1024, 'every unit'],
  'statistics.typeBUncertainty': [1.9 * 1024, 'every unit'],
  'statistics.uncertaintyFromExpanded': [2.7 * 1024, "every unit and Student's distribution"],
  'units.add': [1.5 * 1024, 'every unit, and points and differences apart'],
  'units.subtract': [1.5 * 1024, 'every unit, and points and differences apart'],
};

async function gzip(code) {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: process.cwd() },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    logLevel: 'error',
  });
  return gzipSync(outputFiles[0].contents, { level: 9 }).length;
}

const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));
const base = `export { volumeNeeded } from './dist/film/index.js';`;
const baseSize = await gzip(base);
let failed = 0;
console.log('gzip bytes: alone, and added to an app that has film.volumeNeeded');
for (const folder of folders) {
  const module = await import(`../dist/${folder}/index.js`);
  for (const name of Object.keys(module)) {
    const id = `${folder}.${name}`;
    const line = `export { ${name} } from './dist/${folder}/index.js';`;
    const alone = await gzip(line);
    const added = name === 'volumeNeeded' ? alone - baseSize : (await gzip(base + line)) - baseSize;
    const isFormula = typeof module[name] === 'function' && 'directions' in module[name];
    const [budget, reason = ''] = LARGER[id] ?? [ADDED];
    const over = isFormula && added > budget;
    if (over) failed++;
    const kind = isFormula ? `formula ${reason}` : '';
    console.log(
      `${id.padEnd(40)}${String(alone).padStart(7)}${String(added).padStart(7)}  ${over ? 'OVER BUDGET' : kind}`,
    );
  }
}
process.exit(failed ? 1 : 0);
