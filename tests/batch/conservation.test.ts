/** Batches never lose or invent volume or area: the sum of what is answered is the whole, in decimals, exactly. */
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { batchClock, batchSizes } from '../../src/batch/index.ts';
import { splitByVolume } from '../../src/mix/index.ts';

const Wide = Decimal.clone({ precision: 60 });
const sum = (values: readonly number[]) => values.reduce((total, value) => total.plus(value), new Wide(0));
const twelve = (value: number) => new Wide(value.toPrecision(12));

const volume = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
const share = fc.double({ min: 1 / 400, max: 3, noNaN: true });
const parts = fc.array(fc.constantFrom(1, 2, 3, 4, 0.5, 2.5, 1.77, 100 / 7), { minLength: 1, maxLength: 4 });
const division = fc.constantFrom('equal' as const, 'full and rest' as const);

it('batchSizes: count, each and last make the total, and none is too large', () => {
  fc.assert(
    fc.property(volume, share, division, (total, part, how) => {
      const largest = total * part;
      const sizes = batchSizes({
        total: { value: total, unit: 'usgal' },
        largest: { value: largest, unit: 'usgal' },
        division: how,
        unit: 'usgal',
      });
      const made = new Wide(sizes.each.value).times(sizes.count - 1).plus(sizes.last.value);
      expect(made.eq(twelve(total))).toBe(true);
      expect(sizes.last.value).toBeGreaterThan(0);
      // 12 digits of the whole, shared out among the batches, are what one of them may be larger by.
      const most = new Wide(largest).plus(1e-11 * total);
      expect(most.gte(sizes.last.value)).toBe(true);
      if (sizes.count > 1) expect(most.gte(sizes.each.value)).toBe(true);
      expect(sizes.count).toBe(new Wide(total).div(largest).toSignificantDigits(12).ceil().toNumber());
    }),
    { numRuns: 10_000, seed: 11 },
  );
});

it('batchSizes: a whole number of batches has no rest, in whatever unit it is answered', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 1, max: 50 }),
      fc.constantFrom('l' as const, 'usgal' as const, 'usqt' as const, 'impgal' as const, 'ft3' as const),
      division,
      (tenths, times, unit, how) => {
        const largest = { value: tenths / 10, unit: 'l' } as const;
        const sizes = batchSizes({
          total: { value: (tenths * times) / 10, unit: 'l' },
          largest,
          least: largest,
          step: { value: tenths / 100, unit: 'l' },
          division: how,
          unit,
        });
        expect([sizes.count, sizes.cautions]).toEqual([times, []]);
        expect(Math.abs((sizes.lastToMix?.field.value ?? 0) / sizes.last.value - 1)).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 2_000, seed: 14 },
  );
});

it('batchClock: the lines add up to volume and area, and the parts to each line', () => {
  fc.assert(
    fc.property(volume, share, division, parts, volume, (total, part, how, ratio, area) => {
      const largest = { value: total * part, unit: 'l' } as const;
      const clock = batchClock({
        area: { value: area, unit: 'm2' },
        volume: { value: total, unit: 'l' },
        batchVolume: largest,
        division: how,
        parts: ratio.map((weight, i) => ({ name: String(i), parts: weight })),
        potLife: { value: 20, unit: 'min' },
        statedFor: largest,
        usableShare: { value: 70, unit: '%' },
        mixTime: { value: 2, unit: 'min' },
        carryTime: { value: 1, unit: 'min' },
        placingRate: { value: 2, unit: 'm2/min' },
        mixers: 1,
        crews: 1,
        units: { volume: 'l', area: 'm2', time: 'min' },
      });
      expect(sum(clock.batches.map((one) => one.volume.value)).eq(twelve(total))).toBe(true);
      expect(sum(clock.batches.map((one) => one.area.value)).eq(twelve(area))).toBe(true);
      expect(clock.batches.every((one) => one.area.value > 0)).toBe(true);
      for (const one of [clock.batches[0], clock.batches.at(-1)]) {
        const measured = one?.parts.map((measure) => measure.volume.value) ?? [];
        expect(sum(measured).eq(one?.volume.value ?? 0)).toBe(true);
        expect(measured.every((value) => value > 0)).toBe(true);
      }
    }),
    { numRuns: 10_000, seed: 12 },
  );
}, 60_000);

it('splitByVolume: the parts add up to the total', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), parts, (total, ratio) => {
      const split = splitByVolume({
        total: { value: total, unit: 'usgal' },
        parts: ratio.map((weight, i) => ({ name: String(i), parts: weight })),
        unit: 'l',
      });
      expect(sum(split.parts.map((part) => part.volume.value)).eq(split.total.value)).toBe(true);
    }),
    { numRuns: 2_000, seed: 13 },
  );
});
