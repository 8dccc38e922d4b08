/** The demo floors. */
import { readdirSync, readFileSync } from 'node:fs';
import type { FloorDocument } from '../../src/plan/index.ts';

const folder = 'examples/floors';

export const floors: readonly (readonly [string, FloorDocument])[] = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => [file, JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as FloorDocument]);
