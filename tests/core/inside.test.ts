import { expect, it } from 'vitest';
import { inside } from '../../src/core/inside.ts';
import { attempt } from '../../src/core/attempt.ts';
import { refuse } from '../../src/core/read.ts';

it('a refusal from inside names the outer function and the whole path', () => {
  const result = attempt(
    () => inside('outer', ['list', 2], () => refuse('inner', 'missing', ['length'], 'a length', undefined)),
    {},
  );
  expect(result.ok ? undefined : result.issues).toEqual([
    {
      code: 'missing',
      function: 'outer',
      path: ['list', 2, 'length'],
      expected: 'a length',
      received: 'nothing',
    },
  ]);
});

it('any other error goes through as it is', () => {
  const error = new TypeError('not ours');
  expect(() =>
    inside('outer', [], () => {
      throw error;
    }),
  ).toThrow(error);
});
