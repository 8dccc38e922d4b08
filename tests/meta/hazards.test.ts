/** A hazard says why, what to do and what comes first; what is quoted from memory says so. */
import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import type { Basis, Caution } from '../../src/core/caution.ts';
import { cautionText } from '../../src/messages/cautionText.ts';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floors } from '../support/floors.ts';
import { functions, rows, sources } from '../support/library.ts';

/** Every object inside a value that names a source. */
function saidIn(value: unknown): (Caution | Basis)[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(saidIn);
  return typeof (value as Basis).source === 'string' ? [value as Basis, ...inner] : inner;
}

const answers: [string, unknown][] = [
  ...rows.map((row): [string, unknown] => {
    const answer = attempt(functions.get(row.function) as (input: unknown) => unknown, row.given);
    return [row.id, answer.ok ? answer.value : undefined];
  }),
  ...floors.map(([name, floor]): [string, unknown] => [name, planFloor(floor)]),
];

it.each(answers)('%s marks what is quoted from memory', (_, answer) => {
  for (const { source, status } of saidIn(answer)) {
    if (sources[source]?.status === 'memory') expect([source, status]).toEqual([source, 'memory']);
  }
});

const dangers = new Map(
  answers
    .flatMap(([, answer]) => saidIn(answer))
    .filter((said): said is Caution => 'severity' in said && said.severity === 'danger')
    .map((caution) => [caution.code, caution]),
);

describe.each([...dangers])('%s', (_, caution) => {
  const text = cautionText(caution);
  it('ends in what comes first, once', () => {
    expect(text.match(/comes? first/g)).toHaveLength(1);
    expect(text).toMatch(
      /safety data sheet and instructions, local codes and licensed practice come first\.$/,
    );
  });

  it('gives a reason and says what to do', () => {
    const own = text.split(/The product's safety data sheet|The source of this/)[0] ?? '';
    expect(own.split(/[.:;] /).length).toBeGreaterThan(1);
    expect(own.length).toBeGreaterThan(60);
  });

  it('says so where it is quoted from memory', () => {
    expect(text.includes('quoted from memory')).toBe(caution.status === 'memory');
  });
});
