/** Nothing that the library says is an all-clear: no answer, no message, no page of the documentation. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { en } from '../../src/messages/en.ts';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floors } from '../support/floors.ts';
import { functions, rows } from '../support/library.ts';
import { textsIn } from '../support/values.ts';

/** Words that tell people that nothing can happen to them. */
const ALL_CLEAR =
  /\b(safe|safely|safer|safest|harmless|non-?hazardous|non-?toxic|risk-?free|(no|without|zero) (risk|danger|hazards?)|all[- ]clear|(ok|okay|fine|good|clear|cleared|ready) to (coat|lay|enter|work|breathe|start|go|grind|mix|pour|use)|good to go|go ahead|no (respirator|gloves|ventilation) (is |are )?(needed|required|necessary)|nothing to (fear|worry about))\b/i;

/** What a caution may say before a word of the list, to say the opposite. */
const DENIED = /\b(no answer of it means that work may go ahead)\b/i;

const allClear = (text: string) => ALL_CLEAR.exec(text.replaceAll(/\s+/g, ' ').replace(DENIED, ''))?.[0];

it('the test knows an all-clear when it sees one', () => {
  expect(allClear('The floor is safe.')).toBe('safe');
  expect(allClear('It is OK to coat now')).toBe('OK to coat');
  expect(allClear('no respirator needed')).toBe('no respirator needed');
  expect(allClear("The product's safety data sheet comes first.")).toBeUndefined();
});

it.each(Object.entries(en))('the words of %s', (_, words) => {
  expect(allClear(words)).toBeUndefined();
});

describe.each(rows)('$id', (row) => {
  it('answers without one', () => {
    const answer = attempt(functions.get(row.function) as (input: unknown) => unknown, row.given);
    expect(textsIn(answer).map(allClear).filter(Boolean)).toEqual([]);
  });
});

it.each(floors)('the plan of %s', (_, floor) => {
  expect(textsIn(planFloor(floor)).map(allClear).filter(Boolean)).toEqual([]);
});

/** All that people read: code with its documentation, pages, and the published data. */
const listed = (folder: string, ends: RegExp) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => ends.test(file))
    .map((file) => `${folder}/${file}`);
const files = [
  'README.md',
  'CHANGELOG.md',
  'DEVELOPERS.md',
  ...listed('docs', /\.md$/),
  ...listed('src', /\.ts$/),
  ...listed('examples', /\.(mjs|json)$/),
  ...listed('shared', /\.json$/),
];
it.each(files)('%s', (file) => {
  expect(allClear(readFileSync(file, 'utf8'))).toBeUndefined();
});
