// What each public function costs an app: bundled alone, minified, gzip. Fails over the budget.
import { existsSync, readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

/** One formula alone, with the whole guard that every import shares. */
const FORMULA = 1.75 * 1024;
/** What one more formula or conversion adds to an app that has one already. */
const ADDED = 1.2 * 1024;

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
const base = `export { wetThickness } from './dist/film/index.js';`;
const baseSize = await gzip(base);
let failed = 0;
console.log('gzip bytes: alone, added to an app that has one formula');
for (const folder of folders) {
  const module = await import(`../dist/${folder}/index.js`);
  for (const name of Object.keys(module)) {
    const line = `export { ${name} } from './dist/${folder}/index.js';`;
    const alone = await gzip(line);
    const added = name === 'wetThickness' ? 0 : (await gzip(base + line)) - baseSize;
    const formula = typeof module[name] === 'function' && 'directions' in module[name];
    const over = (formula && (alone > FORMULA || added > ADDED)) || (name === 'convert' && added > ADDED);
    if (over) failed++;
    const mark = over ? 'OVER BUDGET' : formula ? 'formula' : '';
    console.log(
      `${`${folder}.${name}`.padEnd(40)}${String(alone).padStart(7)}${String(added).padStart(7)}  ${mark}`,
    );
  }
}
process.exit(failed ? 1 : 0);
