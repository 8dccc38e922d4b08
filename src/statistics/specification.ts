/** What a measured value is held against: the limits of a specification, in the unit of the value. */
import { judge } from '../core/assessment.ts';
import type { Unit } from '../core/dimensionOf.ts';
import type { Quantity } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';
import { readAny } from '../core/readAny.ts';
import { studentTail } from './student.ts';
import { readUncertain, type Uncertain, type UncertainReading } from './uncertain.ts';

/** A measured value and the limits that it is to be within; at least one of them. */
export interface Specification<U extends Unit = Unit> {
  /** What was measured, with its standard uncertainty. */
  readonly measured: Uncertain<U>;
  /** Least allowed. */
  readonly least?: Quantity<U> | undefined;
  /** Most allowed. */
  readonly most?: Quantity<U> | undefined;
}

/** One end of a specification. */
export interface BaseEnd {
  readonly end: 'least' | 'most';
  readonly given: Quantity;
  /** In base units. */
  readonly base: number;
  /** How far inside the value is, in base units; below 0 it is outside. */
  readonly room: number;
  /** Size of the numbers that were subtracted, for the round-off in the room. */
  readonly scale: number;
}

/** The value and the ends in base units. */
export interface BaseSpecification extends UncertainReading {
  /** One or both. */
  readonly ends: readonly BaseEnd[];
}

/** Reads a value with its limits; none at all are refused, and so are limits in the wrong order. */
export function readSpecification(fn: string, given: Specification): BaseSpecification {
  const reading = readUncertain(fn, 'measured', given.measured);
  const ends: BaseEnd[] = [];
  for (const end of ['least', 'most'] as const) {
    const quantity = given[end];
    if (quantity === undefined) continue;
    const { base } = readAny(fn, end, quantity, reading.dimension);
    const room = end === 'least' ? reading.base - base : base - reading.base;
    // Temperatures come from scales that start elsewhere, hence the size.
    const shift = reading.step === reading.dimension ? 0 : 300;
    const scale = Math.max(Math.abs(reading.base), Math.abs(base)) + shift;
    ends.push({ end, given: quantity, base, room, scale });
  }
  const [first, second] = ends;
  if (!first) return refuse(fn, 'missing', ['least'], 'there, or most', undefined);
  if (second && first.base - second.base > 1e-12 * first.scale) {
    refuse(fn, 'conflict', ['least'], 'at or below most', given.least);
  }
  return Object.assign(reading, { ends });
}

/** The chance that the true value is within the limits, by what the measurement says of it. */
export function chanceWithin({ uncertainty: { base, freedom }, ends }: BaseSpecification): number {
  if (base === 0) return ends.every(({ room, scale }) => judge(room, 0, scale) === 'meets') ? 1 : 0;
  const [first, second] = ends.map(({ room }) => room / base).sort((a, b) => a - b) as [number, number?];
  // From the nearer end, so that a small chance keeps its digits.
  const chance = studentTail(-first, freedom);
  return second === undefined ? chance : Math.max(0, chance - studentTail(second, freedom));
}
