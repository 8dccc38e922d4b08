/** What decisions and checks carry beside their figures: where these come from, and cautions that read as sentences. */
import { describe, expect, it } from 'vitest';
import type { Basis, Caution } from '../../src/core/caution.ts';
import { cautionText } from '../../src/messages/cautionText.ts';
import { functions, rows, sources } from '../support/library.ts';

const answered = rows.flatMap((row) => {
  const answer = functions.get(row.function)?.(row.given) as
    { basis?: readonly Basis[]; cautions?: readonly Caution[] } | undefined;
  return answer?.basis ? [{ row, basis: answer.basis, cautions: answer.cautions ?? [] }] : [];
});

/** The folders whose answers name each input as it was given. */
const ECHO = /^(mix|cure|batch)\./;

describe.each(answered)('$row.id', ({ row, basis, cautions }) => {
  it('says where its figures come from, and what went in', () => {
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
    for (const caution of cautions) {
      expect(cautionText(caution)).not.toMatch(/undefined|\{/);
      expect(sources).toHaveProperty([caution.source]);
    }
  });
});
