import { existsSync, readdirSync } from 'node:fs';

const folders = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`));

/** @type {Partial<import('typedoc').TypeDocOptions>} */
export default {
  name: 'coating-math',
  entryPoints: folders.map((name) => `src/${name}/index.ts`),
  out: 'site',
  readme: 'README.md',
  projectDocuments: ['docs/*.md'],
  includeVersion: true,
  hideGenerator: true,
  excludeInternal: true,
  disableSources: true,
  searchInComments: true,
  searchInDocuments: true,
  requiredToBeDocumented: ['Function', 'Variable', 'Class', 'Interface', 'TypeAlias'],
  validation: { notExported: false, invalidLink: true, notDocumented: true, rewrittenLink: true },
  treatValidationWarningsAsErrors: true,
  ignoredHighlightLanguages: ['math'],
  highlightLanguages: ['typescript', 'javascript', 'json', 'bash', 'tex'],
};
