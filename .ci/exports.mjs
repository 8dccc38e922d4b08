// Writes the export map of package.json from the folders of src: each is a subpath.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';

const manifest = JSON.parse(readFileSync('package.json', 'utf8'));
const entry = (name) => ({
  import: { types: `./dist/${name}.d.ts`, default: `./dist/${name}.js` },
  require: { types: `./dist/${name}.d.cts`, default: `./dist/${name}.cjs` },
});
const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));
manifest.exports = {
  '.': entry('index'),
  ...Object.fromEntries(folders.map((name) => [`./${name}`, entry(`${name}/index`)])),
  './shared/*': './shared/*',
  './package.json': './package.json',
};
writeFileSync('package.json', `${JSON.stringify(manifest, null, 2)}\n`);
