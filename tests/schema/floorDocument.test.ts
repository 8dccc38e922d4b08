/** The schema and the guard of `planFloor` agree on what is a floor, however it is damaged. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { attempt } from '../../src/core/attempt.ts';
import { planFloor } from '../../src/plan/planFloor.ts';
import { floorDocument } from '../../src/schema/floorDocument.ts';
import { pathsIn, WRONG, type Path } from '../support/damage.ts';
import { floors } from '../support/floors.ts';
import { replaced } from '../support/values.ts';

function agree(document: unknown): boolean {
  const parsed = floorDocument.safeParse(document);
  const planned = attempt(planFloor, document);
  expect(
    planned.ok,
    JSON.stringify(planned.ok ? parsed.error?.issues.slice(0, 3) : planned.issues.slice(0, 3)),
  ).toBe(parsed.success);
  return parsed.success;
}

describe.each(floors)('%s', (_, floor) => {
  const paths = pathsIn(floor);

  it('is accepted by both', () => {
    expect(agree(floor)).toBe(true);
  });

  it('is accepted or refused by both with anything wrong anywhere', () => {
    let accepted = 0;
    let refused = 0;
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.constantFrom(...WRONG), (path, wrong) => {
        if (agree(replaced(floor, path, wrong))) accepted++;
        else refused++;
      }),
      { numRuns: 1500, seed: 11 },
    );
    expect(accepted).toBeGreaterThan(10);
    expect(refused).toBeGreaterThan(500);
  });

  it('may say to an editor where its form is written down, as a text', () => {
    expect(agree({ ...floor, $schema: '../floor.json' })).toBe(true);
    for (const wrong of [1, null, [], {}]) expect(agree({ ...floor, $schema: wrong })).toBe(false);
  });

  it('is refused by both with a field that nothing reads', () => {
    for (const path of paths) {
      const at = path.reduce<unknown>((value, key) => (value as never)[key], floor);
      if (typeof at !== 'object' || at === null || Array.isArray(at)) continue;
      expect(agree(replaced(floor, [...path, 'colour'], 'grey')), path.join('.')).toBe(false);
    }
  });

  it('is refused by both for what cannot hold together', () => {
    const conflicts: [Path, unknown][] = [
      [['coats', 0, 'material'], 'no such resin'],
      [['coats', 0, 'zones'], ['no such room']],
      [['zones', 1, 'name'], floor.zones[0]?.name],
      [['materials', 1, 'name'], floor.materials[0]?.name],
      [['crew', 'pailCapacity'], { value: 1000, unit: 'l' }],
      [['coats', 1, 'amount', 'dryThickness'], { value: 100, unit: 'um' }],
      [['coats', 0, 'start'], '2027-02-30T08:00:00Z'],
      [
        ['zones', 0, 'add', 0],
        {
          shape: 'polygon',
          corners: {
            unit: 'm',
            points: [
              [0, 0],
              [4, 4],
              [4, 0],
              [0, 3],
            ],
          },
        },
      ],
    ];
    for (const [path, wrong] of conflicts) {
      const result = attempt(planFloor, replaced(floor, path, wrong));
      expect(result.ok, path.join('.')).toBe(false);
      expect(agree(replaced(floor, path, wrong))).toBe(false);
      if (!result.ok) expect(result.issues[0].path.slice(0, path.length - 1)).toEqual(path.slice(0, -1));
    }
  });
});

it('answers a list of hundreds of thousands of wrong entries', () => {
  const [[, floor] = []] = floors;
  const zones = new Array<number>(200_000).fill(3);
  const result = floorDocument.safeParse({ ...floor, zones });
  expect(result.success).toBe(false);
  expect(result.error?.issues.length).toBeLessThanOrEqual(1000);
  expect(result.error?.issues[0]?.path).toEqual(['zones', 0]);
});

it('is published as JSON Schema', async () => {
  const schema = z.toJSONSchema(floorDocument, { io: 'input', reused: 'ref' });
  await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot('../../shared/schemas/floor.json');
});
