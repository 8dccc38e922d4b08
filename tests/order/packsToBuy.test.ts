/** What is left where the need fills its packs, and where it does not. */
import { describe, expect, it } from 'vitest';
import { packsToBuy } from '../../src/order/packsToBuy.ts';
import { q } from '../support/quantity.ts';

describe('a need that fills its packs', () => {
  it.each([
    [6, 1, 6],
    [2.4, 0.8, 3],
    [0.9, 0.3, 3],
  ])('%d l in packs of %d l leaves nothing, and nothing to warn of', (need, pack, buy) => {
    const answer = packsToBuy({ name: 'primer', need: q(need, 'l'), pack: q(pack, 'l'), unit: 'l' });
    expect([answer.buy, answer.leftover.low.value, answer.leftover.high.value]).toEqual([buy, 0, 0]);
    expect(answer.cautions).toEqual([]);
  });

  it('only at its highest may leave some at its lowest', () => {
    const need = { low: q(1.6, 'l'), high: q(2.4, 'l') };
    const answer = packsToBuy({ name: 'primer', need, pack: q(0.8, 'l'), unit: 'l' });
    expect(answer.leftover.low.value).toBe(0);
    expect(answer.leftover.high.value).toBeCloseTo(0.8, 12);
    expect(answer.cautions.map(({ code }) => code)).toEqual(['leftover-material']);
  });
});
