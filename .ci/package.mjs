// Installs the packed tarball into an empty project and uses it there: ESM, CJS, both at once, and the declarations.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const run = (cwd, command, ...args) =>
  execFileSync(command, args, { cwd, stdio: ['ignore', 'pipe', 'inherit'], encoding: 'utf8' });
const packed = resolve('temp/pack');
rmSync(packed, { recursive: true, force: true });
mkdirSync(packed, { recursive: true });
run('.', 'npm', 'pack', '--ignore-scripts', '--pack-destination', packed);
const tarball = join(packed, readdirSync(packed)[0]);

const app = mkdtempSync(join(tmpdir(), 'coating-math-app-'));
const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));
writeFileSync(join(app, 'package.json'), '{ "name": "app", "private": true, "type": "module" }');
run(
  app,
  'npm',
  'install',
  '--no-audit',
  '--no-fund',
  '--prefer-offline',
  tarball,
  resolve('node_modules/typescript'),
);

writeFileSync(
  join(app, 'esm.mjs'),
  `import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { InputError, wetThickness } from 'coating-math';
import * as film from 'coating-math/film';
import sources from 'coating-math/shared/sources.json' with { type: 'json' };
${folders.map((name, i) => `import * as m${i} from 'coating-math/${name}';`).join('\n')}
const cjs = createRequire(import.meta.url)('coating-math');
assert.equal(film.wetThickness, wetThickness);
assert.equal(typeof sources, 'object');
for (const throwing of [() => wetThickness(), () => cjs.wetThickness()]) {
  try { throwing(); assert.fail('no refusal'); } catch (error) {
    assert.ok(error instanceof InputError && error instanceof cjs.InputError && error instanceof RangeError);
  }
}
`,
);
writeFileSync(
  join(app, 'cjs.cjs'),
  `const assert = require('node:assert/strict');
${folders.map((name) => `assert.ok(Object.keys(require('coating-math/${name}')).length > 0);`).join('\n')}
assert.equal(require('coating-math').wetThickness({ spreadRate: { value: 1, unit: 'm2/l' }, unit: 'mm' }).value, 1);
`,
);
const types = `import { wetThickness, type Quantity } from 'coating-math';
${folders.map((name, i) => `import * as m${i} from 'coating-math/${name}';`).join('\n')}
export const film: Quantity<'mil'> = wetThickness({ spreadRate: { value: 100, unit: 'ft2/usgal' }, unit: 'mil' });
export const all = [${folders.map((_, i) => `m${i}`).join(', ')}];
// @ts-expect-error an area is no spread rate
wetThickness({ spreadRate: { value: 100, unit: 'ft2' }, unit: 'mil' });
`;
for (const ending of ['mts', 'cts']) writeFileSync(join(app, `types.${ending}`), types);

cpSync('examples', join(app, 'examples'), { recursive: true });

const tsc = join(app, 'node_modules/typescript/bin/tsc');
const checks = {
  'runs as ESM': () => run(app, 'node', 'esm.mjs'),
  'plans the demo floors': () => run(app, 'node', 'examples/plan.mjs'),
  'runs as CJS': () => run(app, 'node', 'cjs.cjs'),
  'types under nodenext': () =>
    run(app, 'node', tsc, '--noEmit', '--strict', '--module', 'nodenext', 'types.mts', 'types.cts'),
  'types under bundler': () =>
    run(
      app,
      'node',
      tsc,
      '--noEmit',
      '--strict',
      '--module',
      'esnext',
      '--moduleResolution',
      'bundler',
      'types.mts',
    ),
};
let failed = 0;
for (const [name, check] of Object.entries(checks)) {
  try {
    check();
    console.log(`ok      ${name}`);
  } catch (error) {
    failed++;
    console.log(`FAILED  ${name}\n${error.stdout ?? error}`);
  }
}
rmSync(app, { recursive: true, force: true });
process.exit(failed ? 1 : 0);
