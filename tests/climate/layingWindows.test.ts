import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as climate from '../../src/climate/index.ts';
import type { ClimateReading, LayingWindowsInput } from '../../src/climate/index.ts';

const C = (value: number) => ({ value, unit: 'degC' }) as const;
const K = (value: number) => ({ value, unit: 'deltaC' }) as const;
const percent = (value: number) => ({ value, unit: '%' }) as const;
const hours = (value: number) => ({ value, unit: 'h' }) as const;
const noon = Date.UTC(2025, 9, 14, 0);
const at = (h: number) => new Date(noon + h * 3.6e6).toISOString().replace('.000Z', 'Z');
const hourOf = (instant: string) => (new Date(instant).getTime() - noon) / 3.6e6;

/** A reading whose dew point is 10 °C: saturated air of 10 °C. */
const margin = (h: number, above_K: number): ClimateReading => ({
  at: at(h),
  air: C(10),
  relativeHumidity: percent(100),
  surface: C(10 + above_K),
});
const plain = {
  longestGap: hours(4),
  marginToLay: K(3),
  marginWhileSensitive: K(3),
  sensitiveFor: hours(2),
} as const;
const windows = (readings: ClimateReading[], change: Partial<LayingWindowsInput> = {}) =>
  climate.layingWindows({ ...plain, readings, ...change });
const spans = (answer: climate.LayingWindows) =>
  answer.windows.map((window) => [hourOf(window.from), hourOf(window.until)]);

describe('windows', () => {
  it('end one sensitive time before the margin is lost', () => {
    // 3 K at 2 h, 3 K again at 10 h by straight lines.
    const day = windows([margin(0, 1), margin(4, 5), margin(8, 5), margin(12, 1)]);
    expect(spans(day)).toEqual([[2, 8]]);
    expect(day.windows[0]?.length).toEqual({ value: 6, unit: 'h' });
    expect(hourOf(day.windows[0]?.sensitiveUntil ?? '')).toBe(10);
    expect(day.latestStart).toBe(day.windows[0]?.until);
    expect(day.closed.map(({ at: when, reasons }) => [hourOf(when), reasons.map((r) => r.code)])).toEqual([
      [0, ['dew-margin']],
      [12, ['dew-margin']],
    ]);
  });

  it('a smaller margin may be enough while the film is sensitive', () => {
    const day = [margin(0, 5), margin(4, 5), margin(8, 1)];
    // 3 K is lost at 6 h, 2 K at 7 h.
    expect(spans(windows(day))).toEqual([[0, 4]]);
    expect(spans(windows(day, { marginWhileSensitive: K(2) }))).toEqual([[0, 5]]);
  });

  it('are judged in the unit of each margin', () => {
    const day = [margin(0, 2.9), margin(4, 2.9), margin(8, 2.9)];
    expect(spans(windows(day))).toEqual([]);
    const us = { value: 5, unit: 'deltaF' } as const;
    expect(spans(windows(day, { marginToLay: us, marginWhileSensitive: us }))).toEqual([[0, 6]]);
  });

  it('a reading exactly on the margin is open', () => {
    expect(spans(windows([margin(0, 3), margin(4, 3)]))).toEqual([[0, 2]]);
  });

  it('nothing is open in a gap, and a film must be through before it', () => {
    const day = windows([margin(0, 5), margin(4, 5), margin(9, 5), margin(13, 5)]);
    expect(spans(day)).toEqual([
      [0, 2],
      [9, 11],
    ]);
    expect(day.gaps).toEqual([{ from: at(4), to: at(9) }]);
    expect(day.closed.map(({ reasons }) => reasons)).toEqual([
      [
        {
          code: 'film-still-sensitive',
          because: 'gap in readings',
          marginUntil: '2025-10-14T04:00:00Z',
          startBy: '2025-10-14T02:00:00Z',
        },
      ],
      [
        {
          code: 'film-still-sensitive',
          because: 'end of readings',
          marginUntil: '2025-10-14T13:00:00Z',
          startBy: '2025-10-14T11:00:00Z',
        },
      ],
    ]);
    expect(day.cautions.map((caution) => caution.code)).toContain('gap-in-readings');
  });

  it('a reading alone between two gaps is closed', () => {
    const day = windows([margin(0, 5), margin(9, 5), margin(18, 5)]);
    expect(day.windows).toEqual([]);
    expect(day.closed[1]?.reasons).toEqual([{ code: 'film-still-sensitive', because: 'gap in readings' }]);
    expect(day.cautions[0]?.code).toBe('no-laying-window');
  });

  it('a film that asks for more than laying does is wetted at once', () => {
    const day = windows([margin(0, 4), margin(4, 4)], { marginWhileSensitive: K(5) });
    expect(day.closed[0]?.reasons).toEqual([{ code: 'film-still-sensitive', because: 'dew' }]);
  });

  it('instrument errors close what is undecided', () => {
    const day = [margin(0, 3.5), margin(4, 3.5), margin(8, 6), margin(12, 6), margin(16, 6)];
    const answer = windows(day, { surfaceError: K(1) });
    // 4 K are read at 4.8 h.
    expect(spans(answer)).toEqual([[4.8, 14]]);
    expect(answer.closed[0]?.reasons[0]).toMatchObject({ code: 'dew-margin', verdict: 'undecided' });
    expect((answer.closed[0]?.reasons[0] as { gap: { value: number } }).gap.value).toBeCloseTo(0.5, 12);
  });

  it('limits of the product close, each by name', () => {
    const day = [margin(0, 5), margin(4, 9), margin(8, 9), margin(12, 9)];
    const answer = windows(day, { limits: { surface: { least: C(17) }, air: { most: C(9) } } });
    expect(answer.windows).toEqual([]);
    expect(answer.closed[0]?.reasons).toEqual([
      { code: 'product-limit', verdict: 'fails', of: 'air', end: 'most' },
      { code: 'product-limit', verdict: 'fails', of: 'surface', end: 'least' },
    ]);
    expect(spans(windows(day, { limits: { surface: { least: C(17) } } }))).toEqual([[2, 10]]);
  });

  it('the floor may have to be falling or rising', () => {
    const day = [margin(0, 5), margin(4, 7), margin(8, 7), margin(12, 6)];
    expect(spans(windows(day, { trend: 'falling or steady' }))).toEqual([[4, 10]]);
    expect(spans(windows(day, { trend: 'rising' }))).toEqual([[0, 4]]);
    expect(windows(day, { trend: 'rising' }).closed[0]?.reasons).toEqual([
      { code: 'slab-trend', verdict: 'fails' },
    ]);
  });

  it('a change that the thermometer cannot tell is no way to lay by', () => {
    const day = [margin(0, 7), margin(4, 6.8), margin(8, 5), margin(12, 5)];
    const blind = { trend: 'falling or steady', changeError: K(0.5) } as const;
    const answer = windows(day, blind);
    expect(spans(windows(day, { trend: 'falling or steady' }))).toEqual([[0, 10]]);
    expect(spans(answer)).toEqual([[4, 8]]);
    expect(answer.closed[0]?.reasons).toEqual([{ code: 'slab-trend', verdict: 'undecided' }]);
    // Where no way was asked for, both cautions tell of it.
    const told = windows(day, { changeError: K(3) }).cautions.map(({ code }) => code);
    expect(told).toEqual(['window-on-rising-slab', 'window-on-falling-slab', 'measure-before-laying']);
    expect(() => windows(day, { changeError: K(-1) })).toThrow(/changeError/);
    const sure = { changeError: { standardUncertainty: K(0.2) }, confidence: percent(95) };
    const [, uncertainty] = windows(day, sure).basis;
    expect(uncertainty).toMatchObject({ id: 'uncertainty', inputs: sure });
  });

  it('the same temperature read in another unit is no change', () => {
    const same = [
      { value: 13.1, unit: 'degC' },
      { value: 55.58, unit: 'degF' },
      { value: 286.25, unit: 'K' },
      { value: 13.1, unit: 'degC' },
    ] as const;
    const day = same.map((surface, i) => ({ ...margin(4 * i, 0), surface }));
    expect(spans(windows(day, { trend: 'falling or steady' }))).toEqual([[0, 10]]);
    expect(spans(windows(day, { trend: 'rising' }))).toEqual([]);
  });

  it('readings just as far apart as they may be leave no gap, in any unit', () => {
    for (const minutes of [6, 42, 66, 102, 246]) {
      const day = [0, 1, 2].map((i) => margin((i * minutes) / 60, 5));
      const longestGap = { value: minutes / 60, unit: 'h' } as const;
      expect(windows(day, { longestGap, sensitiveFor: { value: 1, unit: 'min' } }).gaps).toEqual([]);
    }
  });

  it('before a gap only the way to the reading counts', () => {
    const day = [margin(0, 7), margin(4, 6), margin(9, 9), margin(13, 8)];
    const answer = windows(day, { trend: 'falling or steady' });
    expect(answer.closed.map(({ reasons }) => reasons.map(({ code }) => code))).toEqual([
      ['film-still-sensitive'],
      ['film-still-sensitive'],
    ]);
    const alone = windows([margin(0, 7), margin(9, 8), margin(18, 9)], { trend: 'falling or steady' });
    expect(alone.closed.flatMap(({ reasons }) => reasons.map(({ code }) => code))).not.toContain(
      'slab-trend',
    );
  });

  it('say which way the slab goes while they are open, unless that was asked for', () => {
    const ways = (answer: climate.LayingWindows) =>
      answer.cautions.map(({ code }) => code).filter((code) => code.startsWith('window-on'));
    const day = [margin(0, 5), margin(4, 7), margin(8, 6), margin(12, 6)];
    expect(ways(windows(day))).toEqual(['window-on-rising-slab', 'window-on-falling-slab']);
    expect(ways(windows(day.slice(0, 2)))).toEqual(['window-on-rising-slab']);
    expect(ways(windows(day.slice(1)))).toEqual(['window-on-falling-slab']);
    expect(ways(windows(day, { trend: 'rising' }))).toEqual([]);
  });

  it('that hold no whole millisecond are none', () => {
    // The margin reaches 3 K only between two milliseconds.
    const ms = (t: number, above_K: number) => ({
      ...margin(0, above_K),
      at: `2025-10-14T00:00:0${Math.floor(t / 1000)}.${String(t % 1000).padStart(3, '0')}Z`,
    });
    const day = [ms(0, 0), ms(1, 2.9), ms(2, 2.9), ms(3, 6), ms(2000, 6)];
    const open = windows(day, { sensitiveFor: { value: 1.9975, unit: 's' }, longestGap: hours(1) });
    for (const { from, until } of open.windows) expect(from <= until).toBe(true);
    expect(open.windows).toEqual([]);
  });

  it('a film ages by the sensitive time of each reading', () => {
    // 2 h at first, 4 h later: between them the mean speed of 3/8 an hour.
    const day = [
      { ...margin(0, 5), sensitiveFor: hours(2) },
      { ...margin(4, 5), sensitiveFor: hours(4) },
      { ...margin(8, 5), sensitiveFor: hours(4) },
    ];
    // From 8 h back: a quarter an hour, so 4 h.
    expect(spans(windows(day))).toEqual([[0, 4]]);
    const first = windows([...day.slice(0, 2), { ...margin(8, -1), sensitiveFor: hours(4) }]);
    // The margin is lost at 4 + 4/3 h; 1/3 is cured after 4 h, 2/3 before it at 3/8 an hour.
    expect(spans(first)[0]?.[1]).toBeCloseTo(4 - 16 / 9, 6);
  });

  it('keep the offset of the readings', () => {
    const local = windows([
      { ...margin(0, 5), at: '2025-10-14T07:00:00+02:00' },
      { ...margin(0, 5), at: '2025-10-14T11:00:00+02:00' },
    ]);
    expect(local.windows[0]).toMatchObject({
      from: '2025-10-14T07:00:00+02:00',
      until: '2025-10-14T09:00:00+02:00',
    });
    const west = windows([
      { ...margin(0, 5), at: '2025-10-14T07:00:30.25-03:30' },
      { ...margin(0, 5), at: '2025-10-14T11:00:30.25-03:30' },
    ]);
    expect(west.latestStart).toBe('2025-10-14T09:00:30.250-03:30');
  });
});

it('a sinusoidal slab opens and closes where the exact curve does', () => {
  // Slab 16 ± 2.5 °C with its peak 6 h after 13 h, dew point 12.5 °C; readings every 3 min.
  const readings = Array.from({ length: 24 * 20 + 1 }, (_, i) => {
    const h = 9 + i / 20;
    const surface = C(16 + 2.5 * Math.sin((2 * Math.PI * (h - 13)) / 24));
    return { at: at(h), air: C(12.5), relativeHumidity: percent(100), surface };
  });
  const answer = windows(readings, { sensitiveFor: { value: 1, unit: 's' } });
  expect(hourOf(answer.windows[0]?.from ?? '')).toBeCloseTo(12.2309, 3);
  expect(hourOf(answer.windows[0]?.until ?? '')).toBeCloseTo(25.7691, 2);
  const falling = windows(readings, { sensitiveFor: { value: 1, unit: 's' }, trend: 'falling or steady' });
  expect(hourOf(falling.windows[0]?.from ?? '')).toBeCloseTo(19, 1);
});

it('agrees with looking at every minute', () => {
  const reading = fc.record({ above: fc.integer({ min: 0, max: 8 }), step: fc.integer({ min: 1, max: 6 }) });
  fc.assert(
    fc.property(
      fc.array(reading, { minLength: 2, maxLength: 12 }),
      fc.integer({ min: 1, max: 5 }),
      (list, film) => {
        let h = 0;
        const series = list.map(({ above, step }) => ({ h: (h += step), above }));
        const answer = windows(
          series.map((one) => margin(one.h, one.above)),
          { sensitiveFor: hours(film) },
        );
        /** The margin by straight lines; nothing in a gap. */
        const marginAt = (t: number) => {
          const j = series.findIndex((one) => one.h >= t);
          const [a, b] = [series[j - 1], series[j]];
          if (!b) return -1;
          if (b.h === t) return b.above;
          if (!a || b.h - a.h > 4) return -1;
          return a.above + ((b.above - a.above) * (t - a.h)) / (b.h - a.h);
        };
        const first = series[0]?.h ?? 0;
        for (let t = first + 1 / 120; t < h; t += 1 / 7) {
          let holds = true;
          for (let s = t; holds && s <= t + film; s += 1 / 60) holds = marginAt(s) >= 3 - 1e-9;
          const inside = spans(answer).some(([from = 0, until = 0]) => from <= t && t <= until);
          // A minute of grid on either side may differ.
          const near = spans(answer).some(([from = 0, until = 0]) =>
            [from, until].some((end) => Math.abs(end - t) < 1 / 30),
          );
          if (!near) expect(inside, `${t}`).toBe(holds);
        }
        for (const { reasons } of answer.closed) expect(reasons.length).toBeGreaterThan(0);
      },
    ),
    { numRuns: 60, seed: 11 },
  );
});

it('no change at all is steady, or undecided where the thermometer could not tell', () => {
  const flat = { earlier: margin(0, 5), later: margin(4, 5), unit: 'deltaC' } as const;
  expect(climate.slabTrend(flat).trend).toBe('steady');
  expect(climate.slabTrend({ ...flat, changeError: K(0.5) }).trend).toBe('undecided');
});

describe('bad input', () => {
  it('refuses readings out of order, twice, fewer than two, and no instants', () => {
    expect(() => windows([margin(4, 5), margin(0, 5)])).toThrow(/readings\.1\.at must be after/);
    expect(() => windows([margin(4, 5), margin(4, 5)])).toThrow(/readings\.1\.at must be after/);
    expect(() => windows([margin(4, 5)])).toThrow(/2 or more/);
    expect(() => windows('no' as never)).toThrow(/readings must be a list/);
    for (const bad of [
      '2025-10-14',
      '2025-10-14T10:00',
      '2025-10-14 10:00Z',
      '2025-02-30T10:00Z',
      '2025-13-01T10:00Z',
      '2025-10-14T24:00Z',
      '2025-10-14T10:00+15:00',
      '0099-10-14T10:00Z',
      12,
      undefined,
    ]) {
      expect(() => windows([{ ...margin(0, 5), at: bad as string }, margin(4, 5)])).toThrow(
        /readings\.0\.at/,
      );
    }
  });

  it('refuses a reading that has a limit and is not there, and limits that are none', () => {
    const two = [margin(0, 5), margin(4, 5)];
    expect(() => windows(two, { limits: { material: { least: C(15) } } })).toThrow(/readings\.0\.material/);
    expect(() => windows(two, { limits: {} })).toThrow(/at least one limit/);
    expect(() => windows(two, { limits: { air: { least: C(20), most: C(10) } } })).toThrow(/limits\.air/);
    const same = { least: C(21), most: { value: 69.8, unit: 'degF' } } as const;
    expect(() => windows(two, { limits: { air: same } })).not.toThrow();
    expect(() => windows(two, { sensitiveFor: undefined })).toThrow(/readings\.0\.sensitiveFor/);
    for (const none of [null, 0, '']) {
      expect(() => windows(two, { sensitiveFor: none as never })).toThrow(/: sensitiveFor must be/);
    }
    expect(() => windows(two, { trend: 'level' as never })).toThrow(/one of falling or steady, rising/);
    expect(() => windows(two, { relativeHumidityError: percent(60) })).toThrow(/relativeHumidityError/);
    const dry = [{ ...margin(0, 5), relativeHumidity: percent(2) }, margin(4, 5)];
    expect(() => windows(dry, { relativeHumidityError: percent(3) })).toThrow(/smaller than the humidity/);
    expect(() => climate.slabTrend({ earlier: margin(4, 1), later: margin(4, 2), unit: 'deltaC' })).toThrow(
      /later\.at must be after/,
    );
  });
});
