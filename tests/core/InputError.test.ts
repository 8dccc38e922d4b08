import { expect, it } from 'vitest';
import { attempt } from '../../src/core/attempt.ts';
import { InputError, type InputIssue } from '../../src/core/InputError.ts';
import { show } from '../../src/core/read.ts';

const issue: InputIssue = {
  code: 'out-of-range',
  function: 'wetThickness',
  path: ['coats', 0, 'spreadRate'],
  expected: 'a spread rate above 0',
  received: "0 'm2/l'",
};
const other: InputIssue = { ...issue, path: [] };

it('makes one sentence of the first issue and keeps them all', () => {
  const error = new InputError([issue, other]);
  expect(error.message).toBe("wetThickness: coats.0.spreadRate must be a spread rate above 0, got 0 'm2/l'");
  expect(new InputError([other]).message).toContain('wetThickness: input must be');
  expect(error.issue).toBe(issue);
  expect(error.issues).toEqual([issue, other]);
  expect(error.name).toBe('InputError');
  expect(error).toBeInstanceOf(RangeError);
  expect(JSON.parse(JSON.stringify(error))).toEqual({
    name: 'InputError',
    message: error.message,
    issues: [issue, other],
  });
});

it('knows the errors of another copy of the library, and leaves subclasses themselves', () => {
  class Narrow extends InputError {}
  const fromElsewhere = Object.assign(new RangeError('x'), { [Symbol.for('coating-math/InputError')]: true });
  expect(fromElsewhere).toBeInstanceOf(InputError);
  expect(fromElsewhere).not.toBeInstanceOf(Narrow);
  expect(new Narrow([issue])).toBeInstanceOf(InputError);
  expect(new Narrow([issue])).toBeInstanceOf(Narrow);
  for (const not of [undefined, null, 7, 'x', {}, new Error('x')]) expect(not).not.toBeInstanceOf(InputError);
});

it('attempt lets every other error through', () => {
  const broken = (): never => {
    throw new TypeError('a bug');
  };
  expect(() => attempt(broken, {})).toThrow(TypeError);
  expect(attempt((x: number) => x + 1, 2)).toEqual({ ok: true, value: 3 });
});

it.each([
  [undefined, 'nothing'],
  [null, 'null'],
  [7, '7'],
  ['gal', "'gal'"],
  ['x'.repeat(50), `'${'x'.repeat(40)}'`],
  [[], 'a list'],
  [{}, 'an object'],
  [{ value: 3, unit: 'mil' }, "3 'mil'"],
  [{ value: '3', unit: 'mil' }, "'3' 'mil'"],
  [{ value: null, unit: 'mil' }, "null 'mil'"],
  [{ unit: 'mil' }, "nothing 'mil'"],
  [{ value: {}, unit: {} }, 'an object an object'],
  [Symbol('s'), 'Symbol(s)'],
  [() => 1, 'a function'],
])('shows %o as %s', (value, words) => {
  expect(show(value)).toBe(words);
});
