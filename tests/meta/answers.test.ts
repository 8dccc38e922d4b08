/** What decisions and checks carry beside their figures: where these come from, and cautions that read as sentences. */
import { describe, expect, it } from 'vitest';
import type { Basis, Caution } from '../../src/core/caution.ts';
import { cautionText } from '../../src/messages/cautionText.ts';
import { functions, rows, sources, sourceText, type CheckRow } from '../support/library.ts';

/** Decisions and checks: what answers more than one quantity. */
const decisions = rows.filter((row) => sourceText(row.function).toLowerCase().includes('basis'));
const answerOf = (row: CheckRow) =>
  functions.get(row.function)?.(row.given) as {
    readonly basis: readonly Basis[];
    readonly cautions?: readonly Caution[];
  };

/** The folders whose answers name each input as it was given. */
const ECHO = /^(mix|cure|batch)\./;

describe.each(decisions)('$id', (row) => {
  it('says where its figures come from, and what went in', () => {
    const { basis } = answerOf(row);
    expect(basis.length).toBeGreaterThan(0);
    for (const { function: fn, formula, source, inputs } of basis) {
      expect(functions.has(fn), fn).toBe(true);
      expect(formula).not.toBe('');
      expect(sources).toHaveProperty([source]);
      expect(Object.keys(inputs).length).toBeGreaterThan(0);
      if (!ECHO.test(row.function)) continue;
      expect(fn).toBe(row.function);
      for (const [key, value] of Object.entries(inputs)) {
        if (key in row.given) expect(value, key).toEqual(row.given[key]);
      }
    }
  });

  it('has words and a source for every caution', () => {
    for (const caution of answerOf(row).cautions ?? []) {
      expect(cautionText(caution)).not.toMatch(/undefined|NaN|\{/);
      expect(sources).toHaveProperty([caution.source]);
    }
  });
});
