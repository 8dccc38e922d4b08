import { describe, expect, it } from 'vitest';
import { across, between } from '../../src/core/index.ts';
import { cautionText } from '../../src/messages/index.ts';
import * as moisture from '../../src/moisture/index.ts';

const percent = (value: number) => ({ value, unit: '%' }) as const;
const inches = (value: number) => ({ value, unit: 'in' }) as const;
const hours = (value: number) => ({ value, unit: 'h' }) as const;
const ft2 = (value: number) => ({ value, unit: 'ft2' }) as const;
const grams = (value: number) => ({ value, unit: 'g' }) as const;
const pounds = (value: number) => ({ value, unit: 'lb/1000ft2/24h' }) as const;
const codes = (answer: { cautions: readonly { code: string }[] }) => answer.cautions.map(({ code }) => code);

const hole = (humidity: number, depth = 2.4, closed = 24) => ({
  relativeHumidity: percent(humidity),
  depth: inches(depth),
  closedFor: hours(closed),
});
const slab = {
  floorArea: ft2(1000),
  slabThickness: inches(6),
  drying: 'one side',
  equilibration: hours(24),
  limit: percent(85),
} as const;
const dish = (gain: number, exposure = 66) => ({
  gain: grams(gain),
  exposedArea: { value: 64.06, unit: 'in2' } as const,
  exposure: hours(exposure),
});

describe('holes', () => {
  it('a shallow hole over the limit fails the floor, below it decides nothing', () => {
    const good = [hole(70), hole(71), hole(72)];
    expect(moisture.inSlabHumidityTest({ ...slab, tests: [...good, hole(88, 1)] }).verdict).toBe('fails');
    const aside = moisture.inSlabHumidityTest({ ...slab, tests: [...good, hole(60, 1)] });
    expect([aside.verdict, aside.usable]).toEqual(['meets', 3]);
    expect(codes(aside)).toContain('probe-too-shallow');
    const short = moisture.inSlabHumidityTest({ ...slab, tests: [hole(70), hole(71), hole(60, 1)] });
    expect(short.verdict).toBe('undecided');
    expect(codes(short)).toContain('too-few-tests');
  });

  it('no hole deep enough is undecided, with the reason', () => {
    const none = moisture.inSlabHumidityTest({ ...slab, tests: [hole(70, 1), hole(71, 2), hole(72, 2.3)] });
    expect([none.verdict, none.usable, none.measured.value]).toEqual(['undecided', 0, 72]);
    expect(codes(none)).toContain('probe-too-shallow');
  });

  it('a hole through the slab is refused', () => {
    expect(() => moisture.inSlabHumidityTest({ ...slab, tests: [hole(70), hole(70, 6)] })).toThrow(
      /tests\.1\.depth must be less than the slab, got 6 'in'/,
    );
  });

  it('a hole read too early decides nothing, over the limit or below it', () => {
    const good = [hole(70), hole(71), hole(72)];
    expect(moisture.inSlabHumidityTest({ ...slab, tests: [...good, hole(95, 2.4, 2)] }).verdict).toBe(
      'undecided',
    );
    expect(moisture.inSlabHumidityTest({ ...slab, tests: [...good, hole(40, 2.4, 2)] }).verdict).toBe(
      'meets',
    );
  });

  it('a doubtful reading that is not within the limit is named, with all that is wrong with it', () => {
    const tests = [hole(71), hole(75), hole(70), hole(97, 2.4, 20), hole(60, 1, 2), hole(61, 1)];
    const answer = moisture.inSlabHumidityTest({ ...slab, tests });
    expect(answer).toMatchObject({ verdict: 'undecided', governing: 1, measured: percent(75), usable: 3 });
    const params = (code: string) => answer.cautions.find((caution) => caution.code === code)?.params;
    expect(params('doubtful-reading')).toMatchObject({ test: 4, measured: percent(97), limit: percent(85) });
    expect(params('equilibration-too-short')).toEqual({ tests: 2, places: '4, 5' });
    expect(params('probe-too-shallow')).toEqual({ tests: 2, places: '5, 6' });
    const text = answer.cautions.map(cautionText).join(' ');
    expect(text).toContain('test 2 reads 75 %');
    expect(text).toContain('Test 4 reads 97 %');
    expect(text).not.toMatch(/[{}]/);
  });

  it('a hole too shallow and too early decides nothing over the limit', () => {
    const tests = [hole(70), hole(71), hole(72), hole(95, 1, 2)];
    expect(moisture.inSlabHumidityTest({ ...slab, tests }).verdict).toBe('undecided');
  });

  it('half the depth is enough where the slab dries to both sides', () => {
    const tests = [hole(70, 1.2), hole(71, 1.2), hole(72, 1.2)];
    expect(moisture.inSlabHumidityTest({ ...slab, tests }).verdict).toBe('undecided');
    expect(moisture.inSlabHumidityTest({ ...slab, drying: 'both sides', tests }).verdict).toBe('meets');
  });

  it('one bad hole is not averaged away by ninety-nine good ones', () => {
    const tests = [...Array.from({ length: 99 }, () => hole(50)), hole(85.1)];
    const answer = moisture.inSlabHumidityTest({ ...slab, floorArea: ft2(90000), tests });
    expect([answer.verdict, answer.governing]).toEqual(['fails', 99]);
  });

  it('warns of the dust of drilling', () => {
    const answer = moisture.inSlabHumidityTest({ ...slab, tests: [hole(70)] });
    expect(answer.cautions.find(({ code }) => code === 'silica-dust-from-testing')?.severity).toBe('danger');
  });
});

describe('dishes', () => {
  const floor = { floorArea: ft2(1000), limit: pounds(3) };
  it('outside the window decide nothing, whichever way they read', () => {
    const good = [dish(1), dish(1), dish(1)];
    expect(moisture.calciumChlorideTest({ ...floor, tests: [...good, dish(9, 80)] }).verdict).toBe(
      'undecided',
    );
    expect(moisture.calciumChlorideTest({ ...floor, tests: [...good, dish(0.5, 80)] }).verdict).toBe('meets');
    const none = moisture.calciumChlorideTest({ ...floor, tests: [dish(1, 48), dish(1, 48), dish(1, 48)] });
    expect([none.verdict, none.usable]).toEqual(['undecided', 0]);
    expect(codes(none)).toContain('exposure-outside-window');
  });

  it('errors of balance, area and clock make a close floor undecided', () => {
    const tests = [dish(1.8, 65.5), dish(1.8, 65.5), dish(1.8, 65.5)];
    const limit = pounds(3.3);
    expect(moisture.calciumChlorideTest({ ...floor, limit, tests }).verdict).toBe('meets');
    expect(moisture.calciumChlorideTest({ ...floor, limit, tests, gainError: grams(0.1) }).verdict).toBe(
      'undecided',
    );
  });

  it('readings between their ends give an emission between proven ends', () => {
    const range = across(moisture.emissionRate, {
      gain: between(1.75, 1.85, 'g'),
      exposedArea: between(63.56, 64.56, 'in2'),
      exposure: between(65.5, 65.8333333333, 'h'),
      unit: 'lb/1000ft2/24h',
    });
    expect(range.enclosure).toBe('proven');
    expect(Math.abs(range.low.value / 3.13716 - 1)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(range.high.value / 3.385747 - 1)).toBeLessThanOrEqual(1e-6);
  });

  it('a dish that is not deducted from its flange hides a twelfth of the emission', () => {
    const through = (exposedArea: number) =>
      moisture.emissionRate({
        gain: grams(3),
        exposedArea: { value: exposedArea, unit: 'in2' },
        exposure: hours(72),
        unit: 'lb/1000ft2/24h',
      }).value;
    expect(Math.abs(through(70) / through(64.06) / 0.9151429 - 1)).toBeLessThanOrEqual(1e-7);
  });

  it('refuses errors as large as what was measured', () => {
    const tests = [dish(1)];
    expect(() =>
      moisture.calciumChlorideTest({ ...floor, tests, exposedAreaError: { value: 1, unit: 'ft2' } }),
    ).toThrow(/exposedAreaError/);
    expect(() => moisture.calciumChlorideTest({ ...floor, tests, exposureError: hours(70) })).toThrow(
      /exposureError/,
    );
    expect(() => moisture.calciumChlorideTest({ ...floor, tests: [] })).toThrow(/1 or more/);
    expect(() => moisture.exposedArea({ flangeArea: ft2(1), dishArea: ft2(1), unit: 'ft2' })).toThrow(
      /dishArea/,
    );
  });
});

describe('sheets and pH', () => {
  it('a wet sheet fails however short it lay; a dry one never becomes a number', () => {
    const floor = { floorArea: ft2(400), leastDwell: hours(16) };
    const wet = moisture.plasticSheetTest({ ...floor, tests: [{ dwell: hours(2), moisture: true }] });
    expect(wet.verdict).toBe('fails');
    expect(codes(wet)).toEqual(
      expect.arrayContaining(['sheet-shows-moisture', 'dwell-too-short', 'sheet-is-no-measurement']),
    );
    expect(wet).not.toHaveProperty('measured');
    expect(() =>
      moisture.plasticSheetTest({ ...floor, tests: [{ dwell: hours(2), moisture: 'no' as never }] }),
    ).toThrow(/tests\.0\.moisture must be true or false/);
  });

  it('pH is judged at both ends, with its error, and only from 0 to 14', () => {
    const floor = { floorArea: ft2(400), least: 5, most: 9 };
    expect(moisture.alkalinityTest({ ...floor, readings: [4.5, 8] })).toMatchObject({
      verdict: 'fails',
      limit: 5,
      measured: 4.5,
      gap: -0.5,
    });
    expect(moisture.alkalinityTest({ ...floor, readings: [8.9, 8], readingError: 0.2 }).verdict).toBe(
      'undecided',
    );
    const few = moisture.alkalinityTest({ ...floor, readings: [8] });
    expect([few.verdict, codes(few)]).toEqual(['undecided', ['too-few-tests', 'alkalinity-not-corrected']]);
    expect(() => moisture.alkalinityTest({ ...floor, readings: [15] })).toThrow(/readings\.0/);
    expect(() => moisture.alkalinityTest({ ...floor, readings: [NaN] })).toThrow(/readings\.0/);
    expect(() => moisture.alkalinityTest({ ...floor, readings: ['7' as never] })).toThrow(/readings\.0/);
    expect(() => moisture.alkalinityTest({ ...floor, least: 10, readings: [8] })).toThrow(/least/);
  });
});

describe('three answers', () => {
  const finding = (measured: number, more: { error?: number; barrierLimit?: number } = {}) => ({
    measured: percent(measured),
    systemLimit: percent(80),
    ...(more.error !== undefined && { error: percent(more.error) }),
    ...(more.barrierLimit !== undefined && { barrierLimit: percent(more.barrierLimit) }),
  });
  const answers = (input: moisture.BarrierDecisionInput) => {
    const { barrierNeeded, withinBarrierLimit, fitToCoat, by } = moisture.barrierDecision(input);
    return [barrierNeeded, withinBarrierLimit, fitToCoat, by];
  };

  it.each([
    ['dry', finding(70), ['no', 'no limit given', 'meets', 'system alone']],
    ['wet without a barrier', finding(90), ['yes', 'no limit given', 'fails', undefined]],
    ['wet within the barrier', finding(90, { barrierLimit: 99 }), ['yes', 'meets', 'meets', 'barrier']],
    [
      'wetter than the barrier bears',
      finding(100, { barrierLimit: 99 }),
      ['yes', 'fails', 'fails', undefined],
    ],
    ['close', finding(79, { error: 2 }), ['undecided', 'no limit given', 'undecided', undefined]],
    [
      'close, with a barrier',
      finding(79, { error: 2, barrierLimit: 99 }),
      ['undecided', 'meets', 'meets', 'barrier'],
    ],
    [
      'close to the barrier',
      finding(98, { error: 2, barrierLimit: 99 }),
      ['yes', 'undecided', 'undecided', undefined],
    ],
  ] as const)('%s', (_, inSlabHumidity, expected) => {
    expect(answers({ inSlabHumidity })).toEqual(expected);
  });

  it('the worst method governs, and none is converted into another', () => {
    const wet = { measured: pounds(12), systemLimit: pounds(3) };
    expect(answers({ inSlabHumidity: finding(70), emission: wet })).toEqual([
      'yes',
      'no limit given',
      'fails',
      undefined,
    ]);
    // A barrier limit for one method does not speak for another.
    const apart = { inSlabHumidity: finding(90, { barrierLimit: 99 }), emission: wet };
    expect(answers(apart)).toEqual(['yes', 'undecided', 'undecided', undefined]);
    const { cautions } = moisture.barrierDecision(apart);
    expect(cautions.find(({ code }) => code === 'no-barrier-limit')?.params.without).toBe('vapour emission');
    expect(codes({ cautions })).not.toContain('beyond-barrier');
    const surface = { measured: percent(76), systemLimit: percent(75) };
    expect(answers({ inSlabHumidity: finding(76), surfaceHumidity: surface })[0]).toBe('yes');
  });

  it('are never better than the test', () => {
    const dry = finding(70, { barrierLimit: 99 });
    const wet = finding(90, { barrierLimit: 99 });
    const by = (inSlabHumidity: moisture.BarrierDecisionInput['inSlabHumidity']) =>
      answers({ inSlabHumidity });
    const open = ['undecided', 'undecided', 'undecided', undefined];
    expect(by({ ...finding(70), verdict: 'undecided' })).toEqual([
      'undecided',
      'no limit given',
      'undecided',
      undefined,
    ]);
    expect(by({ ...dry, verdict: 'undecided' })).toEqual(open);
    expect(by({ ...dry, verdict: 'fails' })).toEqual(['yes', 'undecided', 'undecided', undefined]);
    expect(by({ ...dry, verdict: 'meets' })[3]).toBe('system alone');
    expect(by({ ...wet, verdict: 'meets' })).toEqual(['yes', 'meets', 'meets', 'barrier']);
    expect(by({ ...wet, verdict: 'fails' })).toEqual(['yes', 'undecided', 'undecided', undefined]);
    expect(by({ ...wet, verdict: 'fails', barrierVerdict: 'meets' })[3]).toBe('barrier');
    expect(by({ ...wet, verdict: 'fails', barrierVerdict: 'fails' })[2]).toBe('fails');
    expect(by({ ...dry, verdict: 'undecided', barrierVerdict: 'meets' })[2]).toBe('meets');
    expect(() => by({ ...dry, verdict: 'pass' as never })).toThrow(/inSlabHumidity\.verdict/);
    expect(() => by({ ...dry, barrierVerdict: 1 as never })).toThrow(/inSlabHumidity\.barrierVerdict/);
  });

  it('take the test of a floor at its word: one hole read too early, a pH below the lowest', () => {
    const limit = percent(80);
    const tests = [hole(70), hole(98, 2.4, 20), hole(70), hole(70)];
    const { measured, verdict } = moisture.inSlabHumidityTest({ ...slab, limit, tests });
    expect([measured, verdict]).toEqual([percent(70), 'undecided']);
    expect(answers({ inSlabHumidity: { measured, verdict, systemLimit: limit } })[2]).toBe('undecided');
    const pH = moisture.alkalinityTest({ floorArea: ft2(400), readings: [6, 8], least: 7, most: 10 });
    const alkalinity = { measured: pH.measured, verdict: pH.verdict, systemLimit: 10, barrierLimit: 13 };
    expect(answers({ alkalinity })).toEqual(['yes', 'undecided', 'undecided', undefined]);
  });

  it('a barrier limit equal to that of the system in another unit is one', () => {
    const equal = {
      measured: percent(70),
      systemLimit: percent(7),
      barrierLimit: { value: 0.07, unit: 'fraction' },
    } as const;
    expect(answers({ inSlabHumidity: equal })[1]).toBe('fails');
  });

  it('says how far each figure may be off, in the unit of its limit', () => {
    const { findings } = moisture.barrierDecision({
      inSlabHumidity: {
        measured: percent(70),
        error: { value: 0.02, unit: 'fraction' },
        systemLimit: percent(75),
      },
      emission: {
        measured: { value: 2, unit: 'lb/1000ft2/24h' },
        systemLimit: { value: 3, unit: 'lb/1000ft2/24h' },
      },
      alkalinity: { measured: 9, error: 0.2, systemLimit: 10 },
    });
    expect(findings.map(({ uncertainty }) => uncertainty)).toEqual([percent(2), undefined, 0.2]);
  });

  it('refuses no method, and a barrier that bears less than the system', () => {
    expect(() => moisture.barrierDecision({})).toThrow(/another method/);
    expect(() => moisture.barrierDecision({ inSlabHumidity: finding(70, { barrierLimit: 75 }) })).toThrow(
      /barrierLimit/,
    );
    expect(() => moisture.barrierDecision({ inSlabHumidity: null as never })).toThrow(/inSlabHumidity/);
  });
});

describe('drying', () => {
  const time = (thickness: number, more: object = {}) =>
    moisture.dryingTime({
      slabThickness: { value: thickness, unit: 'mm' },
      drying: 'one side',
      unit: 'd',
      ...more,
    });

  it('is a range of rules that disagree by a factor of two', () => {
    const { range, orLonger, rules } = time(150);
    expect(range.high.value / range.low.value).toBeGreaterThan(2);
    expect(orLonger).toBe(true);
    expect(rules.map((rule) => rule.orLonger)).toEqual([false, true, true]);
    expect(codes(time(150))).toEqual(['drying-rules-disagree']);
  });

  it('laboratory slabs say nothing of thinner ones, and only the least of thicker and wetter ones', () => {
    expect(time(80, { waterCement: 0.5, below: 'vapour retarder' }).rules.length).toBe(2);
    const below = 'vapour retarder';
    const between = time(120, { waterCement: 0.55, below }).rules[2];
    expect(between?.orLonger).toBe(true);
    expect(between?.time.value).toBeCloseTo(99.5, 9);
    expect(time(101.6, { waterCement: 0.6, below: 'wet ground' }).rules[2]).toMatchObject({
      orLonger: true,
      time: { value: 144 },
    });
    expect(time(101.6, { waterCement: 0.45, below: 'wet ground' }).rules.length).toBe(2);
    expect(time(80, { waterCement: 0.5, below: 'wet ground' }).rules.length).toBe(2);
  });

  it('wet ground leaves no upper end, and a sealed base is never taken for granted', () => {
    expect(time(40, { below: 'wet ground' }).orLonger).toBe(true);
    expect(time(40).orLonger).toBe(false);
    expect(time(101.6, { waterCement: 0.5 }).rules.length).toBe(2);
    expect(() => time(100, { drying: 'both sides', below: 'wet ground' })).toThrow(/below/);
  });

  it('refuses what the rules do not know', () => {
    expect(() => time(5)).toThrow(/slabThickness/);
    expect(() => time(100, { waterCement: 0.3 })).toThrow(/waterCement/);
    expect(() => time(100, { below: 'sand' })).toThrow(/below/);
    expect(() => time(100, { drying: 'top' })).toThrow(/drying/);
  });
});

describe('numbers that are whole but for round-off', () => {
  it('a whole number of areas in square yards asks for no test more', () => {
    const count = (value: number, method: 'alkalinity' | 'plastic sheet') =>
      moisture.testCount({ method, floorArea: { value, unit: 'yd2' } }).count;
    expect(count(55.5555555556, 'plastic sheet')).toBe(1);
    expect(count(166.666666667, 'alkalinity')).toBe(6);
    expect(count(55.56, 'plastic sheet')).toBe(2);
  });

  it('a water to cement a hair above 1 is 1', () => {
    const days = (waterCement: number) =>
      moisture
        .dryingTime({
          slabThickness: inches(4),
          drying: 'one side',
          waterCement,
          below: 'vapour retarder',
          unit: 'd',
        })
        .rules.map(({ time }) => time.value);
    expect(days(1 + Number.EPSILON)).toEqual(days(1));
  });
});
