/** Every public function of one input object either refuses with an InputError or answers with finite numbers. */
import { describe, expect, it } from 'vitest';
import { dimensionOf } from '../../src/core/dimensionOf.ts';
import { InputError } from '../../src/core/InputError.ts';
import { functions, rows, type AnyFunction, type CheckRow, sourceText } from '../support/library.ts';
import { numbersIn, quantitiesIn, replaced } from '../support/values.ts';

const BAD_VALUES = [
  NaN,
  Infinity,
  -Infinity,
  -1,
  0,
  -0,
  1e308,
  -1e308,
  5e-324,
  '12',
  null,
  undefined,
  {},
  [],
];
const BAD_UNITS = [
  '',
  'gal',
  'furlong',
  'toString',
  '__proto__',
  'constructor',
  'hasOwnProperty',
  null,
  undefined,
  3,
  {},
  ['mil'],
  ['ft2/usgal'],
  Object.create(null) as object,
];
const BAD_QUANTITIES = [
  undefined,
  null,
  12,
  '12 mil',
  [],
  {},
  true,
  { value: 1 },
  { unit: 'ft' },
  Symbol('x'),
  () => 1,
];
const NO_INPUTS = [undefined, null, 0, 12, 'text', true, [], {}, Symbol('x'), () => 1];

/** The wrong kind for every kind. */
const OTHERS = [
  { value: 1, unit: 'kJ/mol' },
  { value: 1, unit: 'deg' },
];

function refusesOrAnswers(run: AnyFunction, input: unknown): InputError | undefined {
  let answer: unknown;
  try {
    answer = run(input);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    const { issues, message } = error as InputError;
    expect(issues.length).toBeGreaterThan(0);
    expect(message).toContain(issues[0].function);
    expect(JSON.parse(JSON.stringify(error))).toHaveProperty('issues.0.code');
    return error as InputError;
  }
  for (const [path, number] of numbersIn(answer)) {
    expect(Number.isFinite(number) && !Object.is(number, -0), `${path} is ${String(number)}`).toBe(true);
  }
  return undefined;
}

/** One row for each function, the one with most to damage. */
const richest = new Map<string, CheckRow>();
for (const row of rows) {
  const most = richest.get(row.function);
  if (!most || quantitiesIn(row.given).length > quantitiesIn(most.given).length)
    richest.set(row.function, row);
}

describe.each([...richest])('%s', (id, row) => {
  const run = functions.get(id);
  if (!run) throw new Error(`no function ${id}`);

  it.each(NO_INPUTS)('refuses %s for an input', (input) => {
    expect(refusesOrAnswers(run, input)).toBeInstanceOf(InputError);
  });

  it('refuses or answers whatever stands in a field', () => {
    for (const key of Object.keys(row.given)) {
      for (const bad of BAD_QUANTITIES) refusesOrAnswers(run, replaced(row.given, [key], bad));
    }
  });

  it('refuses numbers that are none, unknown units and other kinds, and names the field', () => {
    for (const [path, quantity] of quantitiesIn(row.given)) {
      for (const bad of BAD_VALUES) refusesOrAnswers(run, replaced(row.given, [...path, 'value'], bad));
      for (const bad of ['12', NaN, Infinity, undefined]) {
        const error = refusesOrAnswers(run, replaced(row.given, [...path, 'value'], bad));
        expect(error?.issue.path.slice(0, path.length)).toEqual(path);
      }
      for (const bad of BAD_UNITS) {
        const error = refusesOrAnswers(run, replaced(row.given, [...path, 'unit'], bad));
        expect(error?.issue.path.slice(0, path.length), JSON.stringify(bad)).toEqual(path);
        // A name that every object inherits is a unit of nothing.
        if (typeof bad === 'string') expect(error?.issue.code, bad).toMatch(/^(wrong-unit|conflict)$/);
      }
      for (const other of OTHERS) {
        if (dimensionOf(other.unit) === dimensionOf(quantity.unit)) continue;
        const error = refusesOrAnswers(run, replaced(row.given, path, { ...quantity, ...other }));
        // One end of a range in another kind: nobody can tell which of the ends is wrong.
        const isEnd = ['low', 'likely', 'high'].includes(String(path.at(-1)));
        expect(isEnd ? ['wrong-unit', 'conflict'] : ['wrong-unit']).toContain(error?.issue.code);
      }
    }
  });

  it('refuses an unknown unit of the answer', () => {
    if (!('unit' in row.given)) return;
    const mayBeLeftOut = /^ {2}readonly unit\?:/m.test(sourceText(id));
    for (const bad of BAD_UNITS) {
      if (bad === undefined && mayBeLeftOut) continue;
      expect(refusesOrAnswers(run, { ...row.given, unit: bad })?.issue).toMatchObject({
        code: 'wrong-unit',
        path: ['unit'],
      });
    }
  });
});

/** What a careless caller may hand over, in whatever place. */
const ARGUMENTS = [
  ...NO_INPUTS,
  NaN,
  'm',
  '__proto__',
  10n,
  Object.create(null) as object,
  () => undefined,
  { code: 'toString', params: {} },
  { code: 'condensation' },
  { code: 'condensation', params: { surface: {}, margin: { value: 1, unit: 'toString' } } },
  { code: 'mix', params: { batch: NaN } },
  { low: 1, high: 2 },
];

describe.each([...functions])('%s', (_, run) => {
  it('refuses or answers whatever stands in any place', () => {
    const call: (...given: unknown[]) => unknown = run;
    for (const a of ARGUMENTS) {
      refusesOrAnswers(call, a);
      for (const b of ARGUMENTS) {
        refusesOrAnswers(() => call(a, b), undefined);
        refusesOrAnswers(() => call(1, 2, a, b), undefined);
      }
    }
  });
});

it('every public function of one input object has a row to damage', () => {
  const damaged = richest;
  const apart = [...functions].filter(([id, run]) => !damaged.has(id) && run.length === 1).map(([id]) => id);
  // Those that do not take an input object of their own.
  expect(apart.filter((id) => !/^(core|messages|schema)\.|^units\.(describeUnit|unitsOf)$/.test(id))).toEqual(
    [],
  );
});
