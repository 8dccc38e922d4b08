/** The demo as a person runs it, on the built package. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floors } from '../support/floors.ts';
import { replaced } from '../support/values.ts';

const run = (...args: string[]) => spawnSync('node', ['examples/plan.mjs', ...args], { encoding: 'utf8' });
const [, floor] = floors[0] as (typeof floors)[number];

function written(name: string, text: string): string {
  const path = join(mkdtempSync(join(tmpdir(), 'floor-')), name);
  writeFileSync(path, text);
  return path;
}

describe('npm start', () => {
  it('prints every demo floor, each figure with its unit and its function', () => {
    const { status, stdout } = run();
    expect(status).toBe(0);
    for (const [, { name, coats, zones }] of floors) {
      for (const word of [name, ...coats.map((coat) => coat.name), ...zones.map((zone) => zone.name)]) {
        expect(stdout).toContain(word);
      }
    }
    expect(stdout).not.toMatch(/undefined|NaN|\[object|null/);
    for (const line of stdout
      .split('\n')
      .filter((one) => /^ {2}(?! {2,}\d|.*(CAUTION|DANGER|note))\S.*\d/.test(one))) {
      expect(line, line).toMatch(/\[[\w.]+: ?\w+\]|\[\w+\.\w+\]/);
    }
  });

  it('prints the same as data', () => {
    const { stdout } = run('--json', 'examples/floors/mill-lane.json');
    const mill = floors.find(([file]) => file === 'mill-lane.json')?.[1];
    expect(JSON.parse(stdout)).toEqual(planFloor(mill));
  });

  it.each([
    [
      'a wrong unit',
      JSON.stringify(replaced(floor, ['dewPointLimit', 'unit'], 'degF')),
      'dewPointLimit: expected a temperature difference in deltaC, deltaF, got 5 ',
    ],
    ['text that is no JSON', '{ "schema": 1,', 'is no JSON'],
    ['something else', '[1, 2]', 'the whole: expected an object, got a list'],
  ])('refuses %s with exit code 2 and no stack trace', (_, text, words) => {
    const { status, stdout, stderr } = run(written('floor.json', text));
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain(words);
    expect(stderr).not.toMatch(/^ {4}at /m);
  });

  it('refuses a file that is not there and an option that it does not have', () => {
    expect(run('no-such-floor.json')).toMatchObject({ status: 2 });
    expect(run('--xml')).toMatchObject({ status: 2 });
  });
});
