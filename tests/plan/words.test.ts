/** The clock of every demo floor can be read out, step by step. */
import { expect, it } from 'vitest';
import { batchSteps } from '../../src/batch/batchSteps.ts';
import { batchStepText } from '../../src/messages/batchStepText.ts';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floors } from '../support/floors.ts';

it.each(floors)('%s', (_, floor) => {
  const lines = planFloor(floor).coats.flatMap((coat) => coat.batches?.clock?.batches ?? []);
  expect(lines.length).toBeGreaterThan(10);
  for (const line of lines) {
    const words = batchSteps(line).steps.map(batchStepText);
    expect(words).toHaveLength(2 * line.parts.length + 4);
    for (const sentence of words) expect(sentence).not.toMatch(/[{}]|undefined|\[object/);
  }
});
