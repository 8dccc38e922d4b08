/** What the compiler knows of a pot life: the amount it holds for is the kind that was given. */
import { potLife, type PotLifeInput } from 'coating-math/cure';
import type { Mass, Volume } from 'coating-math/core';
import { expectTypeOf, test } from 'vitest';

declare const asked: Omit<PotLifeInput<'min'>, 'statedFor'>;
declare const either: Volume | Mass;

test('the stated amount stays a volume, or a mass', () => {
  const pail = { value: 2, unit: 'usgal' } as const;
  expectTypeOf(potLife({ ...asked, statedFor: pail }).statedFor).toExtend<Volume>();
  expectTypeOf(potLife({ ...asked, statedFor: { value: 3, unit: 'kg' } }).statedFor).toExtend<Mass>();
  expectTypeOf(potLife({ ...asked, statedFor: either }).statedFor).toEqualTypeOf<Volume | Mass>();
});
