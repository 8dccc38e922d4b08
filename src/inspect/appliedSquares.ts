/** What was used on the squares of a floor, by the pail or by the scale. */
import { AREA, DENSITY, MASS, VOLUME } from '../core/dimensions.ts';
import type { Dimension } from '../core/dimension.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Density, Mass, Volume } from '../core/quantity.ts';
import { read, refuse } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import { readNames, readObjects } from '../core/readPlain.ts';

/** A square of the chalked grid, or a bay. */
export interface AppliedSquare {
  /** Its name in the grid. */
  readonly name: string;
  /** Its area. */
  readonly area: Area;
  /** What was mixed and used on it: poured out of a pail, or weighed. All squares by volume, or all by mass. */
  readonly used: Volume | Mass;
  /** The batches that went into it. */
  readonly batches?: readonly string[] | undefined;
}

/** A square in base units. */
export interface BaseSquare {
  readonly name: string;
  readonly area_m2: number;
  /** Volume in m³ or mass in kg. */
  readonly used: number;
}

/** The squares, and in which kind of amount they were logged. */
export interface BaseSquares {
  readonly squares: readonly BaseSquare[];
  readonly kind: Dimension<string>;
}

/** Reads the squares; their names must differ. */
export function readSquares(fn: string, given: readonly AppliedSquare[]): BaseSquares {
  const list = readObjects(fn, 'squares', given, 1);
  const { dimension: kind } = readOneOf(fn, 'used', list[0]?.used, [VOLUME, MASS], POSITIVE, ['squares', 0]);
  const names = readNames(fn, list, ['squares']);
  const squares = list.map((square, i): BaseSquare => {
    const path = ['squares', i];
    return {
      name: names[i] ?? '',
      area_m2: read(fn, 'area', square.area, AREA, POSITIVE, path),
      used: read<string>(fn, 'used', square.used, kind, POSITIVE, path),
    };
  });
  return { squares, kind };
}

/** What one unit of the logged amount is in m³: 1 for a volume, the inverse of the density for a mass. */
export function volumeOf(fn: string, kind: Dimension<string>, density: Density | undefined): number {
  if (kind.kind === VOLUME.kind) {
    if (density !== undefined) refuse(fn, 'conflict', ['density'], 'nothing without masses', density);
    return 1;
  }
  return 1 / read(fn, 'density', density, DENSITY, POSITIVE);
}
