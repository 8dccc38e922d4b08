// Turns every ts example of README, docs and doc blocks into a test: `expression; // => value` must hold.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import ts from 'typescript';

const out = 'tests/generated';
const listed = (folder, ends) =>
  readdirSync(folder, { recursive: true })
    .map((f) => `${folder}/${f}`)
    .filter((f) => f.endsWith(ends));
const files = ['README.md', ...listed('docs', '.md'), ...listed('src', '.ts')].map((f) =>
  f.replaceAll('\\', '/'),
);

/** The ts fences of a file, with the line each starts on. */
function fencesOf(text) {
  const lines = text.split('\n');
  const fences = [];
  for (let i = 0; i < lines.length; i++) {
    const open = /^(\s*(?:\* ?)?)```ts\s*$/.exec(lines[i]);
    if (!open) continue;
    const body = [];
    const start = i + 1;
    for (i++; !/^\s*(?:\* ?)?```\s*$/.test(lines[i]); i++)
      body.push(lines[i].replace(/^\s*\* ?/, open[1].includes('*') ? '' : '$&'));
    fences.push({ start, body: body.join('\n') });
  }
  return fences;
}

/** An import as a statement inside a test; the types among its names are left to `types`. */
function toImport(statement, types) {
  const from = statement.moduleSpecifier.text;
  const bound = statement.importClause.namedBindings;
  if (ts.isNamespaceImport(bound)) return `const ${bound.name.text} = await import('${from}');`;
  const isType = (e) => e.isTypeOnly || statement.importClause.isTypeOnly;
  for (const e of bound.elements.filter(isType)) types.add(`import type { ${e.name.text} } from '${from}';`);
  const values = bound.elements.filter((e) => !isType(e)).map((e) => e.name.text);
  return values.length ? `const { ${values.join(', ')} } = await import('${from}');` : '';
}

/** One fence as a test. */
function toTest(body, where, types) {
  const file = ts.createSourceFile('example.ts', body, ts.ScriptTarget.Latest, true);
  const steps = file.statements.map((statement, i) => {
    if (ts.isImportDeclaration(statement)) return toImport(statement, types);
    const text = body.slice(statement.getStart(), statement.end);
    const tail = body.slice(statement.end, file.statements[i + 1]?.getStart() ?? body.length);
    const thrown = /\/\/ throws (\w+)/.exec(tail)?.[1];
    if (thrown) return `expect(() => { ${text} }).toThrow(expect.objectContaining({ name: '${thrown}' }));`;
    const wanted = /\/\/ => ([\s\S]*)/.exec(tail)?.[1];
    if (wanted === undefined) return text;
    assertions++;
    const lines = wanted.split('\n').map((line) => line.replace(/^\s*\/\/ ?/, ''));
    return `expect(${text.replace(/;$/, '')}).toEqual(${lines.join('\n').trim()});`;
  });
  return `test(${JSON.stringify(where)}, async () => {\n${steps.join('\n')}\n});\n`;
}

let assertions = 0;
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
/** One test file for each folder of src and for each page. */
const groups = new Map();
for (const file of files) {
  const group = file.startsWith('src/') ? file.split('/').slice(0, 2).join('_') : file.replace(/[/.]/g, '_');
  groups.set(group, [...(groups.get(group) ?? []), file]);
}
for (const [group, members] of groups) {
  const types = new Set();
  const tests = members.flatMap((file) =>
    fencesOf(readFileSync(file, 'utf8')).map(({ start, body }) => toTest(body, `${file}:${start}`, types)),
  );
  if (!tests.length) continue;
  const head = ["import { expect, test } from 'vitest';", ...types].join('\n');
  writeFileSync(`${out}/${group}.test.ts`, `${head}\n\n${tests.join('\n')}`);
}
console.log(`${assertions} assertions in the examples`);
