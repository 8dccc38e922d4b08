/** The register of sources as a page: what was read, what is a restatement, what is from memory. Write it anew with -u. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { rows, sources } from '../support/library.ts';

const ABOUT: Readonly<Record<string, string>> = {
  read: 'The document or an excerpt of it was seen, with the figures that are used.',
  restatement: 'Seen in a text that repeats it, not in the document itself.',
  memory:
    'Not seen: quoted from memory and to be looked up. Every caution, basis and entry of a table that rests on one carries `status: "memory"`.',
  computed: 'Worked out from definitions or with a reference library.',
  'common practice': 'What the trade does, without a published source.',
};

/** A title as plain text of a page. */
const plain = (text: string) => text.replaceAll(/[*_<[\]]/g, '\\$&');

const entries = Object.entries(sources);
const page = Object.entries(ABOUT).map(([status, about]) => {
  const lines = entries
    .filter(([, source]) => source.status === status)
    .map(
      ([id, { title, year, note }]) =>
        `- \`${id}\`: ${plain(title)}${year ? `, ${String(year)}` : ''}${note ? `. ${plain(note)}` : ''}`,
    );
  return [`## ${status[0]?.toUpperCase() ?? ''}${status.slice(1)}`, about, lines.join('\n')].join('\n\n');
});
const head =
  '# Sources\n\nEvery figure names its source by an id of this register, which is published as\n`coating-math/shared/sources.json`. This page is written from it.';

it('stands on a page of the documentation', async () => {
  await expect(`${[head, ...page].join('\n\n')}\n`).toMatchFileSnapshot('../../docs/sources.md');
});

it.each(entries)('%s has a status that is explained', (_, { status }) => {
  expect(Object.keys(ABOUT)).toContain(status);
});

it('no row that rests on a source from memory calls itself published', () => {
  const wrong = rows.filter((row) => row.status === 'published' && sources[row.source]?.status === 'memory');
  expect(wrong.map(({ id }) => id)).toEqual([]);
});

it('every source is used', () => {
  const texts = [
    ...readdirSync('src', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .map((file) => `src/${file}`),
    ...readdirSync('shared/check-values').map((file) => `shared/check-values/${file}`),
    'shared/deviations.json',
    'shared/nomenclature.json',
  ].map((file) => readFileSync(file, 'utf8'));
  const unused = entries.filter(([id]) => !texts.some((text) => text.includes(id))).map(([id]) => id);
  expect(unused).toEqual([]);
});
