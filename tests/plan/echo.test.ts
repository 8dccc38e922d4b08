/** What a caller gave stands in the plan as the number that it was, in the unit in which it came. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floors } from '../support/floors.ts';
import { replaced } from '../support/values.ts';

const [, floor] = floors[0] as (typeof floors)[number];

/** A number as people write it: so many thousandths. */
const written = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n / 1000);

it('holds for films, losses, batches and packs', () => {
  const figures = fc.record({
    film: written(3000, 30_000),
    tools: written(100, 2000),
    stated: written(1000, 4000),
    step: written(5, 100),
    pack: written(500, 5000),
  });
  fc.assert(
    fc.property(figures, ({ film, tools, stated, step, pack }) => {
      const changes: [(string | number)[], unknown][] = [
        [['coats', 1, 'amount', 'wetThickness'], { value: film, unit: 'mil' }],
        [['coats', 1, 'amount', 'toolLoad'], { value: tools, unit: 'usgal' }],
        [['materials', 0, 'statedFor'], { value: stated, unit: 'usgal' }],
        [['crew', 'measuringStep'], { value: step, unit: 'usgal' }],
        [['materials', 0, 'pack'], { value: pack, unit: 'usgal' }],
      ];
      const plan = planFloor(
        changes.reduce<unknown>((whole, [path, to]) => replaced(whole, path, to), floor),
      );
      const { amount, batches } = plan.coats[1] as (typeof plan.coats)[number];
      expect(amount.wetThickness.likely).toEqual({ value: film, unit: 'mil' });
      const held = amount.losses.find(({ cause }) => cause === 'tools')?.volume;
      expect([held?.low.value, held?.high.value]).toEqual([tools, tools]);
      const largest = batches?.largest;
      expect(largest?.volume.step).toEqual({ value: step, unit: 'usgal' });
      if (largest?.limitedBy === 'stated volume') expect(largest.volume.exact.value).toBe(stated);
      const { buy, bought } = plan.purchases[0]?.packs as (typeof plan.purchases)[number]['packs'];
      expect(bought.value).toBe((buy * Math.round(pack * 1000)) / 1000);
    }),
    { numRuns: 60, seed: 3 },
  );
});
