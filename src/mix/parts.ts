import type { Decimal } from 'decimal.js';
import { counted } from '../core/decimal.ts';
import type { InputPath } from '../core/InputError.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Quantity } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';
import { readNames, readNumber, readObjects } from '../core/readPlain.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** One part of a ratio by volume, as the product's instructions state it. */
export interface VolumePart {
  /** Name on the pail: A, B, hardener. */
  readonly name: string;
  /** How many parts of the whole, by volume. */
  readonly parts: number;
}

/**
 * One part of a ratio by weight. The field has another name than in a ratio by volume, so that neither passes for the
 * other.
 */
export interface WeightPart {
  /** Name on the pail: A, B, hardener. */
  readonly name: string;
  /** How many parts of the whole, by weight. */
  readonly weightParts: number;
}

/** How much of one part, by volume. */
export interface PartVolume<U extends VolumeUnit = VolumeUnit> {
  /** Name of the part. */
  readonly name: string;
  /** How much of it. */
  readonly volume: Quantity<U>;
}

/** A ratio as it was read. */
export interface BaseParts<P = VolumePart> {
  readonly names: readonly string[];
  /** How many parts of each, in decimals. */
  readonly weights: readonly Decimal[];
  /** The ratio as given, without anything else that came with it. */
  readonly given: readonly P[];
}

/** The widest ratio that is split: beyond it a share would have too few digits left, and nobody could measure it. */
const WIDEST = 1e6;

/** Refuses a part that is next to nothing beside another. */
function checkWidth(fn: string, weights: readonly Decimal[], path: InputPath): void {
  const parts = weights.map((weight) => weight.toNumber());
  if (Math.max(...parts) / Math.min(...parts) <= WIDEST) return;
  const expected = 'parts of which none is more than a million times another';
  refuse(fn, 'too-large', path, expected, parts.join(' : '));
}

/** Reads a ratio by volume. */
export function readVolumeParts(
  fn: string,
  parts: readonly VolumePart[] | undefined,
  path: InputPath = [],
): BaseParts {
  const list = readObjects(fn, 'parts', parts, 1, path);
  const inside = (i: number) => [...path, 'parts', i];
  const weights = list.map((part, i) => counted(readNumber(fn, 'parts', part.parts, POSITIVE, inside(i))));
  checkWidth(fn, weights, [...path, 'parts']);
  const names = readNames(fn, list, [...path, 'parts']);
  return { names, weights, given: list.map(({ name, parts }) => ({ name, parts })) };
}

/** Reads a ratio by weight. */
export function readWeightParts(fn: string, parts: readonly WeightPart[] | undefined): BaseParts<WeightPart> {
  const list = readObjects(fn, 'parts', parts, 1);
  const weights = list.map((part, i) =>
    counted(readNumber(fn, 'weightParts', part.weightParts, POSITIVE, ['parts', i])),
  );
  checkWidth(fn, weights, ['parts']);
  const names = readNames(fn, list, ['parts']);
  return { names, weights, given: list.map(({ name, weightParts }) => ({ name, weightParts })) };
}
