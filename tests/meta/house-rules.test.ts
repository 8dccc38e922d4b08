/** The form of the house, held by a test: later work only has to add files. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { functions, folders, rows, sources, sourceText } from '../support/library.ts';

/** Folders that hold tools and words rather than formulas of the trade. */
const TOOLS = ['core', 'units', 'exact', 'messages', 'schema'];
/** The order in which a folder may import from another: only from those before it. */
const LAYERS = [
  ['core'],
  ['units', 'exact'],
  ['statistics'],
  ['area', 'film', 'aggregate', 'mix', 'cure', 'climate', 'moisture', 'polish', 'safety'],
  ['batch', 'order', 'inspect', 'schedule', 'price'],
  ['plan'],
  ['messages', 'schema'],
];
const layerOf = (folder: string) => LAYERS.findIndex((layer) => layer.includes(folder));

const ids = [...functions.keys()];
const subjects = ids.filter((id) => !TOOLS.includes(id.split('.')[0] ?? ''));
/** What takes a formula beside its input cannot be written as a row, and is tested in a file of its own. */
const withRows = subjects.filter((id) => functions.get(id)?.length === 1);
const isFormula = (id: string) => /export const \w+ = \/\* @__PURE__ \*\/ monotone\(/.test(sourceText(id));
const formulas = ids.filter(isFormula);

/** The doc block right above the exported function. */
function docOf(id: string): string {
  const [, name = ''] = id.split('.');
  const above = sourceText(id).split(new RegExp(`\\nexport (?:function|const) ${name}\\b`))[0] ?? '';
  return above.slice(above.lastIndexOf('/**'));
}

describe.each(ids)('%s', (id) => {
  const [, name = ''] = id.split('.');
  it('stands alone in the file of its name', () => {
    const exported = [...sourceText(id).matchAll(/^export (?:async )?(?:function|const) (\w+)/gm)].map(
      (m) => m[1],
    );
    expect(exported.filter((one) => ids.some((other) => other.endsWith(`.${String(one)}`)))).toEqual([name]);
  });

  it('has all parts of its doc block, in order', () => {
    const whole = ['@formula', '@units', '@validRange', '@accuracy', '@source'];
    const tags = [
      ...(subjects.includes(id) || isFormula(id) ? whole : []),
      '@returns',
      '@throws',
      '@example',
    ];
    if (isFormula(id)) tags.splice(3, 0, '@monotone');
    const places = tags.map((tag) => docOf(id).indexOf(` ${tag}`));
    expect(tags.filter((_, i) => (places[i] ?? -1) < 0)).toEqual([]);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('cites sources that are in the register', () => {
    const cited = /@source (.*)/.exec(docOf(id))?.[1]?.split(/,\s*/) ?? [];
    for (const source of cited) expect(sources).toHaveProperty([source]);
  });
});

describe.each(withRows)('%s', (id) => {
  const own = rows.filter((row) => row.function === id);
  it('has check rows, one of them not computed by us', () => {
    expect(own.length).toBeGreaterThan(0);
    const excuse = docOf(id).includes('No published figure');
    expect(own.some((row) => row.status !== 'computed') || excuse).toBe(true);
  });

  it('gives every optional input in some row', () => {
    const body = new RegExp(
      `export interface ${id.split('.')[1] ?? ''}Input[^{]*\\{([\\s\\S]*?)\\n\\}`,
      'i',
    ).exec(sourceText(id))?.[1];
    for (const [, field] of (body ?? '').matchAll(/^ {2}readonly (\w+)\?:/gm)) {
      expect(
        own.some((row) => field !== undefined && field in row.given),
        field,
      ).toBe(true);
    }
  });
});

describe.each(formulas)('%s', (id) => {
  it('says in its doc block what it declares', () => {
    const declared = (functions.get(id) as unknown as { directions: Record<string, string> }).directions;
    const words = Object.entries(declared).map(([key, direction]) => `${key} ${direction}`);
    expect(/@monotone (.*)/.exec(docOf(id))?.[1]).toBe(words.join(', '));
  });
});

describe('imports', () => {
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  it.each(files)('%s imports one way', (file) => {
    const folder = file.split(/[\\/]/)[0] ?? '';
    if (layerOf(folder) < 0) return;
    const text = readFileSync(`src/${file}`, 'utf8');
    for (const [, other = ''] of text.matchAll(/from '\.\.\/(\w+)\//g)) {
      expect(layerOf(other), `${file} imports ${other}`).toBeLessThan(layerOf(folder));
      expect(layerOf(other)).toBeGreaterThanOrEqual(0);
    }
  });

  it('every folder has a place', () => {
    expect(folders.filter((folder) => layerOf(folder) < 0)).toEqual([]);
  });
});

describe('package.json', () => {
  const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };
  it('exports every folder, the check values and itself', () => {
    const wanted = ['.', ...folders.map((folder) => `./${folder}`), './shared/*', './package.json'];
    expect(Object.keys(manifest.exports).sort()).toEqual(wanted.sort());
  });

  it('the root re-exports all but the schema, the words and the exact route', () => {
    const root = readFileSync('src/index.ts', 'utf8');
    const named = [...root.matchAll(/from '\.\/(\w+)\/index\.ts'/g)].map((m) => m[1]);
    expect(named.sort()).toEqual(folders.filter((f) => !['schema', 'messages', 'exact'].includes(f)).sort());
  });
});
