/** The demo as a person runs it, on the built package. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floors } from '../support/floors.ts';
import { replaced } from '../support/values.ts';

const run = (...args: string[]) => spawnSync('node', ['examples/plan.mjs', ...args], { encoding: 'utf8' });
const [, floor] = floors[0] as (typeof floors)[number];

const closet = {
  shape: 'rectangle',
  length: { value: 8, unit: 'ft' },
  width: { value: 5, unit: 'ft' },
} as const;

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
    // All but the rows of batches, whose head names the function, and the cautions.
    const figures = stdout.split('\n').filter((one) => /^ {2}(?! *\d|CAUTION|DANGER|note).*\d/.test(one));
    for (const line of figures) {
      expect(line, line).toMatch(/\[[\w.]+: ?\w+\]|\[\w+\.\w+\]/);
    }
  });

  it('prints what was read, and no more than one of what is the same or single', () => {
    const small = replaced(floor, ['zones'], [{ ...floor.zones[0], add: [closet], deduct: [] }]);
    const everywhere = floor.coats.map((coat) => replaced(coat, ['zones'], undefined));
    const { status, stdout } = run(
      written('closet.json', JSON.stringify({ ...(small as object), coats: everywhere })),
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/batches +1 batch {3}\[/);
    expect(stdout).not.toMatch(/ 1 packs| 1, one every|gross/);
    expect(stdout).toMatch(/relative humidity +58\.0 % ± 3\.0 % /);
    expect(stdout).toMatch(/wet film +16\.00 mil {3}\[/);
  });

  it('says once what comes first, and measures a metric floor in metres first', () => {
    const { stdout } = run('examples/floors/mill-lane.json');
    expect(stdout.split('local codes and licensed practice come first.')).toHaveLength(2);
    expect(stdout).toMatch(/perimeter +[\d.]+ m = [\d.]+ ft {3}/);
  });

  it('prints no mark where the steps of the pail are too coarse', () => {
    const coarse = replaced(floor, ['crew', 'graduation'], { value: 10, unit: 'in' });
    const { stdout } = run(written('coarse.json', JSON.stringify(coarse)));
    expect(stdout).toMatch(/no mark for A +steps of 10\.00 in are too coarse for it/);
    expect(stdout).not.toMatch(/up to +0 in/);
  });

  it('prints what the README shows of it', () => {
    const [, sample = ''] = /```text\n([^]*?)```/.exec(readFileSync('README.md', 'utf8')) ?? [];
    expect(sample.split('\n').length).toBeGreaterThan(10);
    const { stdout } = run('examples/floors/lantern-wharf.json');
    for (const part of sample.trimEnd().split('\n…\n')) expect(stdout).toContain(part);
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
      'dewPointLimit: expected a temperature difference of 0 or more as { value, unit } in deltaC, deltaF, got 5 ',
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
