/** A quantity that says how well it is known, by the GUM. */
import type { Dimension } from '../core/dimension.ts';
import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { TEMPERATURE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { NOT_NEGATIVE, type Limits } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { read, refuse } from '../core/read.ts';
import { readAny } from '../core/readAny.ts';
import { readNumber } from '../core/readPlain.ts';
import type { TemperatureDifferenceUnit, TemperatureUnit } from '../core/unitCodes.ts';
import { differenceUnit } from '../units/differenceUnit.ts';

/** The units of a difference of two quantities: between two temperatures lies a temperature difference. */
export type StepUnit<U extends string> = U extends TemperatureUnit
  ? TemperatureDifferenceUnit
  : U extends Unit
    ? SameKind<U>
    : string;

/** How well a quantity is known. */
export interface StandardUncertainty<U extends string = string> {
  /** Its uncertainty as a standard deviation; of a temperature as a temperature difference. */
  readonly standardUncertainty: Quantity<U>;
  /** How well that uncertainty is known itself, 1 or more; left out where it is known exactly. */
  readonly degreesOfFreedom?: number | undefined;
}

/** A quantity with its standard uncertainty. Plain JSON, and still a quantity wherever one is due. */
export interface Uncertain<U extends string = string> extends Quantity<U>, StandardUncertainty<StepUnit<U>> {}

/** The same in numbers. */
export interface BaseUncertainty {
  /** Standard uncertainty in base units; of a temperature in K. */
  readonly base: number;
  /** Degrees of freedom; nothing where there are infinitely many. */
  readonly freedom: number | undefined;
}

/** A reading in base units with its uncertainty. */
export interface UncertainReading {
  /** In base units. */
  readonly base: number;
  /** Its kind. */
  readonly dimension: Dimension<string>;
  /** The kind of a difference of two of them. */
  readonly step: Dimension<string>;
  /** How well it is known. */
  readonly uncertainty: BaseUncertainty;
}

/** At least the deviation of two readings. */
const FREEDOM: Limits = { above: 0.999999999999, below: Infinity, words: ' of 1 or more' };

/** The kind of a difference of two quantities of one kind. */
export function stepOf(dimension: Dimension<string>): Dimension<string> {
  return dimension.kind === TEMPERATURE.kind ? TEMPERATURE_DIFFERENCE : dimension;
}

/** The unit of a difference of one in a unit. */
export function stepUnitOf<U extends string>(unit: U, dimension: Dimension<string>): StepUnit<U> {
  return (dimension.kind === TEMPERATURE.kind ? differenceUnit(unit) : unit) as StepUnit<U>;
}

/** Whether a value says how well it is known. */
export function isUncertainty(value: unknown): value is StandardUncertainty {
  return typeof value === 'object' && value !== null && 'standardUncertainty' in value;
}

/** Reads degrees of freedom that may be left out. */
export function readFreedom(fn: string, freedom: number | undefined, path?: InputPath): number | undefined {
  return freedom === undefined ? undefined : readNumber(fn, 'degreesOfFreedom', freedom, FREEDOM, path);
}

/** Reads how well a quantity is known, into base units of the kind of its differences. */
export function readUncertainty<U extends string>(
  fn: string,
  given: StandardUncertainty<U>,
  step: Dimension<U>,
  limits: Limits,
  path: InputPath,
): BaseUncertainty {
  return {
    base: read(fn, 'standardUncertainty', given.standardUncertainty, step, limits, path),
    freedom: readFreedom(fn, given.degreesOfFreedom, path),
  };
}

/** Reads the quantity that came in the field `key`, of whatever kind, with its standard uncertainty. */
export function readUncertain(
  fn: string,
  key: string | number,
  given: (Quantity & StandardUncertainty) | undefined,
  path: InputPath = [],
): UncertainReading {
  const { base, dimension } = readAny(fn, key, given, undefined, path);
  const step = stepOf(dimension);
  const own = given as Uncertain;
  const uncertainty = readUncertainty(fn, own, step, NOT_NEGATIVE, [...path, key]);
  return { base, dimension, step, uncertainty };
}

/** Answers a standard uncertainty with its degrees of freedom as fields; infinitely many are left out. */
export function freedomField(freedom: number | undefined): { readonly degreesOfFreedom?: number } {
  return freedom === undefined ? {} : { degreesOfFreedom: freedom };
}

/** Refuses two ways to say one thing at once, and none. */
export function exactlyOne(fn: string, given: object, first: string, second: string): void {
  const said = [first, second].filter((key) => (given as Record<string, unknown>)[key] !== undefined);
  if (said.length === 0) refuse(fn, 'missing', [first], `a value, or ${second} in its place`, undefined);
  if (said.length === 2) refuse(fn, 'conflict', [second], `nothing beside ${first}`, 'both');
}
