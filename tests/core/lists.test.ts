/** A hole in a list is nothing, and nothing is refused: no test, corner or layer is counted that is not there. */
import { expect, it } from 'vitest';
import { InputError } from '../../src/core/InputError.ts';
import { functions } from '../support/library.ts';

const floorArea = { value: 480, unit: 'ft2' };

/** A list whose first place is a hole. */
function afterHole(...rest: unknown[]): unknown[] {
  const list = new Array<unknown>(rest.length + 1);
  rest.forEach((one, i) => (list[i + 1] = one));
  return list;
}

it.each([
  ['moisture.alkalinityTest', { floorArea, readings: afterHole(7.5), most: 10 }],
  ['moisture.alkalinityTest', { floorArea, readings: new Array(2), most: 10 }],
  [
    'moisture.calciumChlorideTest',
    { floorArea, tests: afterHole(), limit: { value: 3, unit: 'lb/1000ft2/24h' } },
  ],
  ['area.polygonArea', { corners: { unit: 'm', points: afterHole([1, 0], [1, 1], [0, 1]) }, unit: 'm2' }],
  [
    'area.polygonArea',
    {
      corners: {
        unit: 'm',
        points: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
      },
      holes: afterHole(),
      unit: 'm2',
    },
  ],
  ['aggregate.buildUp', { layers: afterHole(), unit: 'mil' }],
  ['area.repairVolume', { cracks: afterHole(), slabThickness: { value: 6, unit: 'in' }, unit: 'l' }],
  [
    'mix.splitByVolume',
    { total: { value: 1, unit: 'l' }, parts: afterHole({ name: 'B', parts: 1 }), unit: 'l' },
  ],
])('%s refuses it', (id, input) => {
  expect(() => functions.get(id)?.(input)).toThrow(InputError);
});
