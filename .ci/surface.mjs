// Compares the public surface of every subpath with the reviewed report in .ci/surface; `--update` writes it anew.
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { Extractor, ExtractorConfig } from '@microsoft/api-extractor';

const update = process.argv.includes('--update');
const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));
mkdirSync('.ci/surface', { recursive: true });
mkdirSync('temp/surface', { recursive: true });

let failed = 0;
for (const folder of folders) {
  const config = ExtractorConfig.prepare({
    configObjectFullPath: resolve('.ci/surface.mjs'),
    packageJsonFullPath: resolve('package.json'),
    configObject: {
      projectFolder: resolve('.'),
      newlineKind: 'lf',
      mainEntryPointFilePath: resolve(`dist/${folder}/index.d.ts`),
      compiler: {
        overrideTsconfig: {
          compilerOptions: {
            module: 'NodeNext',
            moduleResolution: 'NodeNext',
            target: 'ES2022',
            strict: true,
            skipLibCheck: true,
          },
          include: ['dist/**/*.d.ts'],
        },
      },
      apiReport: {
        enabled: true,
        reportFolder: resolve('.ci/surface'),
        reportTempFolder: resolve('temp/surface'),
        reportFileName: `${folder}.api.md`,
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      messages: {
        compilerMessageReporting: { default: { logLevel: 'none' } },
        extractorMessageReporting: { default: { logLevel: 'none' } },
        tsdocMessageReporting: { default: { logLevel: 'none' } },
      },
    },
  });
  const result = Extractor.invoke(config, { localBuild: update, messageCallback: (m) => (m.handled = true) });
  const ok = update || !result.apiReportChanged;
  if (!ok) failed++;
  console.log(`${ok ? 'same' : 'CHANGED'}  coating-math/${folder}`);
}
if (failed) {
  console.log('The public surface changed: review it, then run `npm run surface -- --update`.');
  process.exit(1);
}
