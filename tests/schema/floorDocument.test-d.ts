import { expectTypeOf, test } from 'vitest';
import type * as z from 'zod/mini';
import type { FloorDocument } from '../../src/plan/index.ts';
import type { floorDocument } from '../../src/schema/index.ts';

type Parsed = z.infer<typeof floorDocument>;

test('what the schema gives is a floor document, and the other way round', () => {
  expectTypeOf<Parsed>().toExtend<FloorDocument>();
  expectTypeOf<FloorDocument>().toExtend<Parsed>();
});
