/** The library as the tests see it: every public function by folder and name, and every check row. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A function of one input object, as rows call it. */
export type AnyFunction = (input: unknown) => unknown;

export interface CheckRow {
  readonly id: string;
  /** `folder.name` */
  readonly function: string;
  readonly given: Readonly<Record<string, unknown>>;
  /** A quantity, a text, a plain number, or figures by path: `{ "gap": { value, unit }, "verdict": "fails" }`. */
  readonly expect: Readonly<Record<string, unknown>> | string | number;
  readonly tolerance: { readonly abs?: number; readonly rel?: number; readonly why: string };
  readonly source: string;
  readonly status: 'published' | 'computed' | 'common practice' | 'memory';
  readonly note?: string;
}

/** The folders that are tested: all of them, or those that a mutation run asks for. */
const asked = process.env.FOLDERS?.split(',');

/** The folders of src: each a subpath of the package. */
export const folders: readonly string[] = readdirSync('src').filter(
  (name) => existsSync(`src/${name}/index.ts`) && (asked?.includes(name) ?? true),
);

/** Every public function, by `folder.name`. */
export const functions: ReadonlyMap<string, AnyFunction> = new Map(
  (
    await Promise.all(
      folders.map(async (folder) => {
        const module = (await import(`../../src/${folder}/index.ts`)) as Record<string, unknown>;
        return Object.entries(module)
          .filter(([, value]) => typeof value === 'function' && !/^class\b/.test(String(value)))
          .map(([name, value]) => [`${folder}.${name}`, value as AnyFunction] as const);
      }),
    )
  ).flat(),
);

/** Text of the file in which a public function stands. */
export function sourceText(id: string): string {
  const [folder, name] = id.split('.') as [string, string];
  return readFileSync(join('src', folder, `${name}.ts`), 'utf8');
}

/** Every check row of the package. */
export const rows: readonly CheckRow[] = readdirSync('shared/check-values')
  .filter((file) => file.endsWith('.json'))
  .flatMap((file) => JSON.parse(readFileSync(join('shared/check-values', file), 'utf8')) as CheckRow[])
  .filter((row) => folders.includes(row.function.split('.')[0] ?? ''));

/** The register of sources. */
export const sources = JSON.parse(readFileSync('shared/sources.json', 'utf8')) as Readonly<
  Record<
    string,
    { readonly title: string; readonly status: string; readonly year?: number; readonly note?: string }
  >
>;
