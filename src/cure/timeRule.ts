import { echo } from '../core/echo.ts';
import type { Caution } from '../core/caution.ts';
import { MOLAR_ENERGY, TEMPERATURE_DIFFERENCE, TIME } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { ABSOLUTE, POSITIVE } from '../core/limits.ts';
import type { MolarEnergy, Temperature, TemperatureDifference, Time } from '../core/quantity.ts';
import { read, refuse, refuseAll, show } from '../core/read.ts';
import { readChoice, readObjects, readObject } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';
import { arrheniusFactor, ZERO_CELSIUS } from './arrheniusFactor.ts';

/** A time at a temperature, as the product's instructions print it. */
export interface TimePoint {
  /** Temperature for which the time is stated. */
  readonly temperature: Temperature;
  /** The time at that temperature. */
  readonly time: Time;
}

/** A table of the product's instructions. Nothing is answered outside its ends. */
export interface TimeTable {
  /** Which rule this is. */
  readonly rule: 'table';
  /** Two points or more, from cold to warm. */
  readonly points: readonly TimePoint[];
  /** Between two points: on a straight line, or on the curve of one activation energy. */
  readonly between: 'linear' | 'arrhenius';
}

/** One stated time that halves with each step warmer: a rule of thumb, to be used between two ends only. */
export interface HalvingRule extends TimePoint {
  /** Which rule this is. */
  readonly rule: 'halving';
  /** How much warmer the material must be for half the time. */
  readonly step: TemperatureDifference;
  /** Coldest temperature for which the instructions let the material be used. */
  readonly from: Temperature;
  /** Warmest temperature for which the instructions let the material be used. */
  readonly to: Temperature;
}

/** One stated time and the activation energy of the reaction, to be used between two ends only. */
export interface ArrheniusRule extends TimePoint {
  /** Which rule this is. */
  readonly rule: 'arrhenius';
  /** How strongly the reaction speeds up with temperature. */
  readonly activationEnergy: MolarEnergy;
  /** Coldest temperature for which the figure holds. */
  readonly from: Temperature;
  /** Warmest temperature for which the figure holds. */
  readonly to: Temperature;
}

/** How a time of a product depends on temperature. */
export type TimeRule = TimeTable | HalvingRule | ArrheniusRule;

/** A rule as it was read: the time in s at a temperature in °C, between its ends. */
export interface BaseRule {
  readonly seconds: (celsius: number) => number;
  readonly from: number;
  readonly to: number;
  /** The one time that is stated; not there for a table, which states several. */
  readonly stated?: number;
  readonly cautions: readonly Caution[];
}

/** Reads a rule. */
export function readTimeRule(
  fn: string,
  key: string,
  rule: TimeRule | undefined,
  path: InputPath = [],
): BaseRule {
  const given = readObject(fn, key, rule, path);
  const inside = [...path, key];
  const kind = readChoice(fn, 'rule', given.rule, ['table', 'halving', 'arrhenius'], inside);
  if (kind === 'table') return readTable(fn, given as TimeTable, inside);
  return readStated(fn, given as HalvingRule | ArrheniusRule, inside);
}

/** A point in s and °C. */
export interface BasePoint {
  readonly celsius: number;
  readonly seconds: number;
}

/** Reads a time at a temperature. */
export function readPoint(fn: string, point: TimePoint, path: InputPath): BasePoint {
  return {
    celsius: readTemperature(fn, 'temperature', point.temperature, ABSOLUTE, path),
    seconds: read(fn, 'time', point.time, TIME, POSITIVE, path),
  };
}

function readTable(fn: string, table: TimeTable, path: InputPath): BaseRule {
  const between = readChoice(fn, 'between', table.between, ['linear', 'arrhenius'], path);
  const points = readObjects(fn, 'points', table.points, 2, path).map((point, i) =>
    readPoint(fn, point, [...path, 'points', i]),
  );
  refuseAll(
    points.flatMap((point, i) => {
      const colder = points[i - 1];
      if (!colder || (point.celsius > colder.celsius && point.seconds <= colder.seconds)) return [];
      const expected = 'warmer than the point before it, with a time no longer';
      const received = show(table.points[i]);
      return [{ code: 'conflict' as const, function: fn, path: [...path, 'points', i], expected, received }];
    }),
  );
  const seconds = (celsius: number) => {
    const i = Math.max(
      1,
      points.findIndex((point) => point.celsius >= celsius),
    );
    const [cold, warm] = [points[i - 1], points[i]] as [BasePoint, BasePoint];
    return between === 'linear' ? onLine(cold, warm, celsius) : onCurve(cold, warm, celsius);
  };
  const [first, last] = [points[0], points.at(-1)] as [BasePoint, BasePoint];
  return { seconds, from: first.celsius, to: last.celsius, cautions: [] };
}

/** On the straight line between two points. */
function onLine(cold: BasePoint, warm: BasePoint, celsius: number): number {
  const along = (celsius - cold.celsius) / (warm.celsius - cold.celsius);
  return cold.seconds * (1 - along) + warm.seconds * along;
}

/** On the curve between two points whose logarithm is straight over the reciprocal of the absolute temperature. */
function onCurve(cold: BasePoint, warm: BasePoint, celsius: number): number {
  const inverse = (at: number) => 1 / (at + ZERO_CELSIUS);
  const along = (inverse(celsius) - inverse(cold.celsius)) / (inverse(warm.celsius) - inverse(cold.celsius));
  return cold.seconds * (warm.seconds / cold.seconds) ** along;
}

function readStated(fn: string, rule: HalvingRule | ArrheniusRule, path: InputPath): BaseRule {
  const stated = readPoint(fn, rule, path);
  const from = readTemperature(fn, 'from', rule.from, ABSOLUTE, path);
  const to = readTemperature(fn, 'to', rule.to, ABSOLUTE, path);
  const inside = from <= stated.celsius + SLACK && stated.celsius <= to + SLACK;
  if (!inside) {
    refuse(fn, 'conflict', [...path, 'temperature'], 'between the ends of the rule', rule.temperature);
  }
  if (rule.rule === 'arrhenius') {
    const { activationEnergy } = rule;
    const energy = read(fn, 'activationEnergy', activationEnergy, MOLAR_ENERGY, POSITIVE, path);
    const seconds = (celsius: number) => stated.seconds / arrheniusFactor(energy, stated.celsius, celsius);
    return { seconds, from, to, stated: stated.seconds, cautions: [] };
  }
  const step = read(fn, 'step', rule.step, TEMPERATURE_DIFFERENCE, POSITIVE, path);
  const seconds = (celsius: number) => stated.seconds * 2 ** ((stated.celsius - celsius) / step);
  const params = echo({ step: rule.step, from: rule.from, to: rule.to });
  return {
    seconds,
    from,
    to,
    stated: stated.seconds,
    cautions: [{ code: 'rule-of-thumb', severity: 'caution', params, source: 'ufgs-09971' }],
  };
}

/** Round-off of a temperature that lies exactly on an end, in K. */
export const SLACK = 1e-9;

/** The temperature that came in the field `key`, in °C; refused outside the ends of the rule. */
export function celsiusAt(fn: string, rule: BaseRule, key: string, at: Temperature | undefined): number {
  const celsius = readTemperature(fn, key, at, ABSOLUTE);
  if (celsius < rule.from - SLACK || celsius > rule.to + SLACK) {
    const ends = [rule.from, rule.to].map((end) => String(Number(end.toPrecision(6))));
    const expected = `a temperature from ${ends.join(' to ')} °C, the ends of the rule`;
    refuse(fn, 'out-of-range', [key], expected, at);
  }
  return Math.min(Math.max(celsius, rule.from), rule.to);
}
