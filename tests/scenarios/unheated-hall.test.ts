/**
 * One October day in an unheated hall, read every two hours: the usual check is open from 12 to 20, honest instruments
 * from 14 to 18, and the hours after laying leave nothing. Expected figures were worked with exact fractions and a
 * Magnus form, which is up to 0.03 K off here.
 */
import { describe, expect, it } from 'vitest';
import * as climate from '../../src/climate/index.ts';
import { timeAt } from '../../src/cure/index.ts';
import { q } from '../support/quantity.ts';

const READ: readonly [hour: number, air: number, humidity: number, slab: number][] = [
  [6, 48, 92, 49],
  [8, 54, 80, 50],
  [10, 62, 64, 54],
  [12, 68, 52, 59],
  [14, 71, 47, 63],
  [16, 69, 52, 64],
  [18, 60, 70, 60],
  [20, 54, 85, 56],
  [22, 50, 93, 52],
];
/** By hour: the dew point, the margin over it, and the same with the errors of the instruments against the floor. */
const WORKED: Readonly<Record<number, readonly [dewPoint: number, margin: number, worst: number]>> = {
  6: [45.78577, 3.21423, -0.6293091],
  8: [47.96695, 2.033052, -1.929469],
  10: [49.67758, 4.322423, 0.1344756],
  12: [49.71142, 9.28858, 4.845125],
  14: [49.74854, 13.25146, 8.661974],
  16: [50.63561, 13.36439, 8.914919],
  18: [50.18309, 9.816911, 5.720443],
  20: [49.59031, 6.409692, 2.490755],
  22: [48.05463, 3.945368, 0.1011558],
};
const midnight = Date.UTC(2025, 9, 14);
const at = (hour: number) => new Date(midnight + hour * 3.6e6).toISOString().replace('.000Z', 'Z');
const hourOf = (instant: string | undefined) => (new Date(instant ?? '').getTime() - midnight) / 3.6e6;
const reading = (hour: number, air: number, humidity: number, slab: number) => ({
  at: at(hour),
  air: q(air, 'degF'),
  relativeHumidity: q(humidity, '%'),
  surface: q(slab, 'degF'),
});
const day = READ.map((one) => reading(...one));
const margins = q(5, 'deltaF');
const errors = {
  airError: q(1, 'deltaF'),
  relativeHumidityError: q(3, '%'),
  surfaceError: q(2, 'deltaF'),
};
const search = { longestGap: q(2, 'h'), marginToLay: margins, marginWhileSensitive: margins };
/** 6 h at 75 °F, half of it for each 18 °F warmer. */
const sensitiveAt = (slab: number) =>
  timeAt({
    rule: {
      rule: 'halving',
      time: q(6, 'h'),
      temperature: q(75, 'degF'),
      step: q(18, 'deltaF'),
      from: q(50, 'degF'),
      to: q(90, 'degF'),
    },
    at: q(slab, 'degF'),
    unit: 'h',
  }).time;

describe.each(READ)('at %i:00, air %i °F, %i %%, slab %i °F', (hour, air, humidity, slab) => {
  const [dewPoint, margin, worst] = WORKED[hour] ?? [NaN, NaN, NaN];
  const read = reading(hour, air, humidity, slab);

  it('has the worked dew point and margin', () => {
    expect(climate.dewPoint({ ...read, unit: 'degF' }).value).toBeCloseTo(dewPoint, 1);
    const face = climate.dewPointMargin({ ...read, limit: margins });
    expect(face.measured.value).toBeCloseTo(margin, 1);
    expect(face.verdict).toBe(margin >= 5 ? 'meets' : 'fails');
  });

  it('meets only where it does with every instrument off against the floor', () => {
    const honest = climate.dewPointMargin({ ...read, ...errors, limit: margins });
    expect(honest.verdict === 'meets').toBe(worst >= 5);
    if (margin < 5) return;
    // Below, the uncertainty is that of the other side.
    expect(honest.measured.value - (honest.uncertainty?.value ?? NaN)).toBeCloseTo(worst, 1);
  });
});

it('is open from 12 to 20 at face value, from 14 to 18 by honest instruments', () => {
  const open = (more: object) =>
    day.flatMap(({ at: when, ...read }) => {
      const { verdict } = climate.dewPointMargin({ ...read, ...more, limit: margins });
      return verdict === 'meets' ? [hourOf(when)] : [];
    });
  expect(open({})).toEqual([12, 14, 16, 18, 20]);
  expect(open(errors)).toEqual([14, 16, 18]);
});

it('keeps the film sensitive for 11.5 h at 58 °F', () => {
  expect(sensitiveAt(58).value).toBeCloseTo(11.546686, 5);
});

it('has no window without heat: the margin is lost at 21:09, so the film had to lie by 9:36', () => {
  const answer = climate.layingWindows({ ...search, readings: day, sensitiveFor: sensitiveAt(58) });
  expect(answer.windows).toEqual([]);
  expect(answer.latestStart).toBeUndefined();
  expect(answer.closed.map((hour) => hourOf(hour.at))).toEqual(READ.map(([hour]) => hour));
  for (const { reasons } of answer.closed) expect(reasons.length).toBeGreaterThan(0);
  const four = answer.closed.find((hour) => hourOf(hour.at) === 16)?.reasons[0];
  expect(four).toMatchObject({ code: 'film-still-sensitive', because: 'dew' });
  const { marginUntil, startBy } = four as { marginUntil: string; startBy: string };
  // 0.03 K of the Magnus form are worth 1.5 min.
  expect(hourOf(marginUntil)).toBeCloseTo(21.1440802, 1);
  expect(hourOf(startBy)).toBeCloseTo(9.59739415, 1);
});

it('has one on the falling slab with heat that holds a margin of 15 °F until half past midnight', () => {
  const held = (hour: number) => reading(hour, 70, 51, 66);
  const heated = [...day.slice(0, 5), ...[16, 18, 20, 22, 24, 26].map(held)];
  const read = held(16);
  expect(climate.dewPoint({ ...read, unit: 'degF' }).value).toBeCloseTo(51, 0);
  expect(sensitiveAt(66).value).toBeCloseTo(8.48528137, 7);
  const answer = climate.layingWindows({
    ...search,
    readings: heated,
    sensitiveFor: sensitiveAt(66),
    trend: 'falling or steady',
  });
  expect(hourOf(answer.windows[0]?.from)).toBe(16);
  expect(hourOf(answer.latestStart) + 8.48528137).toBeCloseTo(26, 5);
  expect(16 + sensitiveAt(66).value).toBeCloseTo(24.4852814, 6);
});

describe('the slab', () => {
  const trend = (from: number) => {
    const [earlier, later] = [day[(from - 6) / 2], day[(from - 4) / 2]] as [(typeof day)[0], (typeof day)[0]];
    return climate.slabTrend({ earlier, later, unit: 'deltaF' });
  };
  const codes = (from: number) => trend(from).cautions.map((caution) => caution.code);

  it('rises until 16:00, which warns of outgassing and suits condensation: two findings', () => {
    expect([6, 8, 10, 12, 14].map((hour) => trend(hour).outgassing)).toEqual(Array(5).fill('fails'));
    expect([16, 18, 20].map((hour) => trend(hour).outgassing)).toEqual(Array(3).fill('meets'));
    expect([10, 18].map((hour) => trend(hour).condensation)).toEqual(['meets', 'fails']);
    expect(codes(10)).toEqual(['outgassing', 'rising-suits-condensation']);
    expect(codes(16)).toEqual(['surface-not-rising', 'falling-suits-outgassing']);
    // Both rules weigh the same.
    const severities = [trend(10), trend(16)].map((one) => one.cautions[0]?.severity);
    expect(severities).toEqual(['caution', 'caution']);
  });

  it('breathes out 2.8 mil of air from 10 to 14, 395 bubbles of 1/8 in on each square foot', () => {
    const layer = climate.poreAirLayer({
      depth: q(2, 'in'),
      airVoids: q(8, '%'),
      from: q(54, 'degF'),
      to: q(63, 'degF'),
      unit: 'in',
    });
    expect(layer.value * 1000).toBeCloseTo(2.80335624, 7);
    const air_in3 = 144 * layer.value;
    expect(air_in3).toBeCloseTo(0.403683299, 8);
    expect(air_in3 * 16.387064).toBeCloseTo(6.61518405, 7);
    expect(air_in3 / ((Math.PI / 6) * 0.125 ** 3)).toBeCloseTo(394.740894, 5);
  });
});
