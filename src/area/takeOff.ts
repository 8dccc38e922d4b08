import { attempt } from '../core/attempt.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { AREA, LENGTH } from '../core/dimensions.ts';
import type { InputIssue } from '../core/InputError.ts';
import { inside } from '../core/inside.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Area, Quantity } from '../core/quantity.ts';
import { fields, readOr, refuse, refuseAll, write } from '../core/read.ts';
import { readObject } from '../core/readPlain.ts';
import type { AreaUnit } from '../core/unitCodes.ts';
import { measure, type Measured } from './measure.ts';
import type { Shape, ShapeName } from './shape.ts';

/** Input of {@link takeOff}. */
export interface TakeOffInput<U extends AreaUnit = AreaUnit> {
  /** The pieces that the floor is made of. */
  readonly add: readonly Shape[];
  /** What is not coated: pits, trench drains, columns, fixed machines. Nothing where not given. */
  readonly deduct?: readonly Shape[] | undefined;
  /** Size from which a single piece is deducted; smaller ones are left in. Where not given, every piece is deducted. */
  readonly deductFrom?: Area | undefined;
  /** Unit of the areas in the answer. */
  readonly unit: U;
}

/** What became of one piece. */
export interface TakeOffItem<U extends AreaUnit = AreaUnit> {
  /** Its name, or its form where it has none. */
  readonly name: string;
  /** Its form. */
  readonly shape: ShapeName;
  /** How many of it. */
  readonly count: number;
  /** Area of one. */
  readonly each: Quantity<U>;
  /** Area of all of them. */
  readonly area: Quantity<U>;
  /** Whether it counts towards the gross area, was taken off it, or was left in it. */
  readonly treatment: 'added' | 'deducted' | 'left-in';
  /** Why a deduction was taken off or left in: by its size, or because no size is stated from which on to deduct. */
  readonly reason?: 'at-least-deduct-from' | 'below-deduct-from' | 'no-deduct-from' | undefined;
}

/** One length in metric and in US measure. */
export interface LengthInBoth {
  /** Metres. */
  readonly metric: Quantity<'m'>;
  /** Feet. */
  readonly us: Quantity<'ft'>;
}

/** The measured area of a floor. */
export interface TakeOff<U extends AreaUnit = AreaUnit> {
  /** All pieces added. */
  readonly gross: Quantity<U>;
  /** What was taken off. */
  readonly deducted: Quantity<U>;
  /** What is coated. */
  readonly net: Quantity<U>;
  /** Deductions that were left in the net area. */
  readonly leftIn: Quantity<U>;
  /** Outline of the flat pieces, without what is open. Missing where some piece does not tell its outline. */
  readonly perimeter?: LengthInBoth | undefined;
  /** Every edge to be cut in: the perimeter, that around each deduction, and that of whatever stands up. */
  readonly edges?: LengthInBoth | undefined;
  /** Piece by piece, in the order in which they came. */
  readonly items: readonly TakeOffItem<U>[];
  /** What belongs with the figures. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * Measures a floor: adds its pieces, takes off what is not coated, and says what was left in and why.
 *
 * Small columns and drains are often left in, because cutting around them costs what they save; from which size on
 * they are deducted is agreed in the contract.
 *
 * @formula
 * ```math
 * A_\text{net} = \sum A_\text{added} - \sum_{A_i \ge A_\text{from}} A_i
 * ```
 * @units shapes with lengths, area; answers areas and lengths.
 * @validRange every shape as its own function; deductions no larger than what was added. A piece exactly of the size
 * `deductFrom` is deducted.
 * @accuracy Relative error below 1e-12 of the gross area. A taped floor is good for about 2 %, a paced one for 5 %.
 * @source common-practice
 * @param input - Pieces to add and to deduct, the deduct-from size and the unit wanted.
 * @returns Gross, deducted and net area, perimeter and edges, and every piece with what became of it.
 * @throws An `InputError` with all that is wrong in all pieces, each with its path.
 * @example
 * ```ts
 * import * as area from 'coating-math/area';
 *
 * const ft = (value: number) => ({ value, unit: 'ft' as const });
 * const { net, items } = area.takeOff({
 *   add: [{ shape: 'rectangle', name: 'hall', length: ft(40), width: ft(25) }],
 *   deduct: [
 *     { shape: 'rectangle', name: 'pit', length: ft(5), width: ft(4) },
 *     { shape: 'circle', name: 'column', diameter: ft(1), count: 6 },
 *   ],
 *   deductFrom: { value: 10, unit: 'ft2' },
 *   unit: 'ft2',
 * });
 * net.value.toFixed(1); // => '980.0'
 * items.map((item) => item.treatment); // => ['added', 'deducted', 'left-in']
 * ```
 */
export function takeOff<U extends AreaUnit>(input: TakeOffInput<U>): TakeOff<U> {
  const { add, deduct = [], deductFrom, unit } = fields('takeOff', input);
  const from_m2 = readOr(0, 'takeOff', 'deductFrom', deductFrom, AREA, NOT_NEGATIVE);
  const issues: InputIssue[] = [];
  const added = readPieces('add', add, issues);
  const others = readPieces('deduct', deduct, issues);
  refuseAll(issues);
  if (added.length === 0) refuse('takeOff', 'out-of-range', ['add'], 'at least one shape', add);

  const isLarge = ({ area_m2 }: Measured) => area_m2 >= from_m2 * (1 - 1e-12);
  const small = others.filter((piece) => !isLarge(piece));
  const gross_m2 = totalArea(added);
  const deducted_m2 = totalArea(others.filter(isLarge));
  const area = (base: number) => write('takeOff', base, AREA, unit);
  if (deducted_m2 > gross_m2 * (1 + 1e-12)) {
    refuse('takeOff', 'conflict', ['deduct'], 'no more than what is added', area(deducted_m2));
  }
  const flat = added.filter(({ isFlat }) => isFlat);
  const answer = {
    gross: area(gross_m2),
    deducted: area(deducted_m2),
    net: area(Math.max(gross_m2 - deducted_m2, 0)),
    leftIn: area(totalArea(small)),
    ...both('perimeter', flat.length > 0 ? totalEdge(flat) : undefined),
    ...both('edges', totalEdge([...added, ...others])),
  };

  const deduction: Became = {
    treatment: 'deducted',
    reason: deductFrom ? 'at-least-deduct-from' : 'no-deduct-from',
  };
  const toItem = ({ name, shape, count, area_m2 }: Measured, what: Became): TakeOffItem<U> => ({
    ...{ name, shape, count, each: area(area_m2), area: area(count * area_m2) },
    ...what,
  });
  const { gross, deducted } = answer;
  return {
    ...answer,
    items: [
      ...added.map((piece) => toItem(piece, { treatment: 'added' })),
      ...others.map((piece) => toItem(piece, isLarge(piece) ? deduction : LEFT_IN)),
    ],
    cautions: [
      ...small.map((piece) =>
        note('deduction-left-in', { name: piece.name, area: area(piece.count * piece.area_m2) }),
      ),
      ...[...added, ...others]
        .filter(({ edge_m }) => edge_m === undefined)
        .map((piece) => note('outline-unknown', { name: piece.name })),
      ...(answer.edges && added.length > 1 ? [note('edges-of-each-piece', { pieces: added.length })] : []),
    ],
    basis: [
      basis('net', 'area.takeOff', 'net = gross − deducted', 'common-practice', {
        gross,
        deducted,
        deductFrom,
      }),
    ],
  };
}

/** What became of a piece. */
type Became = Pick<TakeOffItem, 'treatment' | 'reason'>;
const LEFT_IN: Became = { treatment: 'left-in', reason: 'below-deduct-from' };

/** Reads all pieces of a list; what is wrong with any of them goes to `issues`. */
function readPieces(key: 'add' | 'deduct', shapes: readonly Shape[], issues: InputIssue[]): Measured[] {
  if (!Array.isArray(shapes)) {
    const code = (shapes as unknown) === undefined ? 'missing' : 'wrong-type';
    refuse('takeOff', code, [key], 'a list of shapes', shapes);
  }
  // Array.from visits the holes of a list as well.
  return Array.from(shapes as readonly Shape[]).flatMap((shape, i) => {
    const run = () => {
      const piece = readObject('takeOff', i, shape, [key]);
      return inside('takeOff', [key, i], () => measure(piece));
    };
    const result = attempt(run, undefined);
    if (result.ok) return [result.value];
    issues.push(...result.issues);
    return [];
  });
}

function totalArea(pieces: readonly Measured[]): number {
  return pieces.reduce((sum, { count, area_m2 }) => sum + count * area_m2, 0);
}

/** All edges together; nothing where one of them is not known. */
function totalEdge(pieces: readonly Measured[]): number | undefined {
  return pieces.reduce<number | undefined>(
    (sum, { count, edge_m }) =>
      sum === undefined || edge_m === undefined ? undefined : sum + count * edge_m,
    0,
  );
}

/** A length in both measures under its name; nothing where it is not known. */
function both<K extends string>(key: K, base: number | undefined): Partial<Record<K, LengthInBoth>> {
  if (base === undefined) return {};
  const lengths = { metric: write('takeOff', base, LENGTH, 'm'), us: write('takeOff', base, LENGTH, 'ft') };
  return { [key]: lengths } as Record<K, LengthInBoth>;
}

function note(code: CautionCode, params: Caution['params']): Caution {
  return { code, severity: 'note', params, source: 'common-practice' };
}
