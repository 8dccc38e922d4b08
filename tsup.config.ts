import { existsSync, readdirSync } from 'node:fs';
import { defineConfig } from 'tsup';

/** Every folder of src is a subpath of the package. */
const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));

export default defineConfig({
  entry: Object.fromEntries([
    ['index', 'src/index.ts'],
    ...folders.map((name) => [`${name}/index`, `src/${name}/index.ts`]),
  ]),
  format: ['esm', 'cjs'],
  // The bundler of the declarations still sets an option that TypeScript 6 calls deprecated.
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
  splitting: true,
  clean: true,
  sourcemap: false,
  target: 'es2022',
});
