/** The conditions under which a floor is laid, the limits of the product for them, and the room between the two. */
import { SHARE } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { PART_OR_WHOLE } from '../core/limits.ts';
import type { Quantity, Share, Temperature } from '../core/quantity.ts';
import { read, refuse } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';
import { CLIMATE } from './limits.ts';

/** What is read before a floor is laid. */
export interface LayingConditions {
  /** Air temperature close to the floor. */
  readonly air?: Temperature | undefined;
  /** Relative humidity of that air. */
  readonly relativeHumidity?: Share | undefined;
  /** Temperature of the floor. */
  readonly surface?: Temperature | undefined;
  /** Temperature of the material. */
  readonly material?: Temperature | undefined;
}

/** Which of them. */
export type LayingCondition = keyof LayingConditions;

/** Least and most that is allowed; an end left out is not judged. */
export interface Bounds<Q> {
  /** Least allowed. */
  readonly least?: Q | undefined;
  /** Most allowed. */
  readonly most?: Q | undefined;
}

/** The limits in the instructions of the product, by what is read. The library knows no others. */
export type LayingLimits = {
  readonly [C in LayingCondition]?: Bounds<NonNullable<LayingConditions[C]>> | undefined;
};

/** One end of one limit, in base units. */
export interface BaseLimit {
  readonly of: LayingCondition;
  readonly end: keyof Bounds<unknown>;
  readonly given: Quantity;
  readonly base: number;
  /** Size of the numbers that are subtracted, for the round-off. */
  readonly scale: number;
}

const CONDITIONS = ['air', 'relativeHumidity', 'surface', 'material'] as const;

/** Reads one condition into °C or a share. */
export function readCondition(
  fn: string,
  of: LayingCondition,
  given: LayingConditions,
  path: InputPath,
): number {
  return readAs(fn, of, of, given[of], path);
}

/** Reads all conditions that were given, whether there is a limit for them or not. */
export function readConditions(
  fn: string,
  given: LayingConditions,
  path: InputPath,
): ReadonlyMap<LayingCondition, number> {
  const there = CONDITIONS.filter((of) => given[of] !== undefined);
  return new Map(there.map((of) => [of, readCondition(fn, of, given, path)]));
}

/** Reads the limits; none at all are refused, and so are ends in the wrong order. */
export function readLimits(fn: string, limits: LayingLimits | undefined): BaseLimit[] {
  const given = readObject(fn, 'limits', limits);
  const all: BaseLimit[] = [];
  for (const of of CONDITIONS) {
    if (given[of] === undefined) continue;
    const bounds = readObject<Bounds<Quantity>>(fn, of, given[of], ['limits']);
    const path = ['limits', of];
    for (const end of ['least', 'most'] as const) {
      const quantity = bounds[end];
      if (quantity === undefined) continue;
      const base = readAs(fn, of, end, quantity, path);
      all.push({ of, end, given: quantity, base, scale: of === 'relativeHumidity' ? 1 : 300 });
    }
    const [least, most] = all.filter((limit) => limit.of === of);
    if (least && most && least.base - most.base > 1e-12 * least.scale) {
      refuse(fn, 'conflict', path, 'limits with least ≤ most', `${least.given.value} to ${most.given.value}`);
    }
  }
  return all.length > 0 ? all : refuse(fn, 'missing', ['limits'], 'at least one limit', 'none');
}

/** How far a reading is inside a limit, in base units; below 0 it is outside. */
export function roomTo(limit: BaseLimit, reading: number): number {
  return limit.end === 'least' ? reading - limit.base : limit.base - reading;
}

function readAs(
  fn: string,
  of: LayingCondition,
  key: string,
  quantity: Quantity | undefined,
  path: InputPath,
): number {
  return of === 'relativeHumidity'
    ? read(fn, key, quantity as Share, SHARE, PART_OR_WHOLE, path)
    : readTemperature(fn, key, quantity as Temperature, CLIMATE, path);
}
