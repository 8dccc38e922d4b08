import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { AREA, VOLUME } from '../core/dimensions.ts';
import { toField, type FieldValue } from '../core/fieldValue.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Area, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import { readChoice } from '../core/readPlain.ts';
import type { AreaUnit, VolumeUnit } from '../core/unitCodes.ts';
import { divide, DIVISIONS, type Division } from './divide.ts';

/** Input of {@link batchSizes}. */
export interface BatchSizesInput<U extends VolumeUnit | AreaUnit = VolumeUnit | AreaUnit> {
  /** What is to be mixed, or the area that is to be covered. */
  readonly total: Volume | Area;
  /** The largest batch, or the area that it covers. */
  readonly largest: Volume | Area;
  /** All batches alike, or full ones and what is left. */
  readonly division: Division;
  /** Smallest step in which the last batch can be measured; it is then also answered rounded up. */
  readonly step?: Volume | Area | undefined;
  /** Smallest batch whose parts can still be measured in ratio. Not judged where not given. */
  readonly least?: Volume | Area | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Answer of {@link batchSizes}. */
export interface BatchSizes<U extends VolumeUnit | AreaUnit = VolumeUnit | AreaUnit> {
  /** How many batches. */
  readonly count: number;
  /** Size of every batch but the last. */
  readonly each: Quantity<U>;
  /** Size of the last: with all the others it makes the total, exactly. */
  readonly last: Quantity<U>;
  /** What to measure for the last where a step was given: no less than `least`, so some of it may be left over. */
  readonly lastToMix?: FieldValue<U> | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How many batches a floor takes, and how large each is, so that none is too large and nothing is lost or invented.
 *
 * @formula
 * ```math
 * n = \left\lceil \frac{V}{V_\mathrm{max}} \right\rceil \qquad V = (n - 1)\, v + v_n
 * ```
 * @units volumes or areas; answers a number and volumes or areas.
 * @validRange all above 0, all of one kind; at most 1,000,000 batches.
 * @accuracy Worked out in decimals from 12 digits of the total; the sizes add up to it exactly.
 * No published figure: it is a division.
 * @source definition, common-practice
 * @param input - Total, largest batch, way of dividing and the unit wanted.
 * @returns The number of batches and their sizes in `input.unit`, and the cautions.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as batch from 'coating-math/batch';
 *
 * const sizes = batch.batchSizes({
 *   total: { value: 7, unit: 'usgal' },
 *   largest: { value: 2, unit: 'usgal' },
 *   division: 'equal',
 *   unit: 'usgal',
 * });
 * [sizes.count, sizes.each.value, sizes.last.value]; // => [4, 1.75, 1.75]
 * ```
 */
export function batchSizes<U extends VolumeUnit | AreaUnit>(input: BatchSizesInput<U>): BatchSizes<U> {
  const fn = 'batchSizes';
  const { total, largest, division, step, least, unit } = fields(fn, input);
  const { base, dimension } = readOneOf(fn, 'total', total, [VOLUME, AREA]);
  const wanted = (value: number) => write<U, string>(fn, value, dimension, unit);
  const alike = (key: string, quantity: Volume | Area) =>
    wanted(read<string>(fn, key, quantity, dimension, POSITIVE)).value;
  const whole = wanted(base).value;
  const most = alike('largest', largest);
  const how = readChoice(fn, 'division', division, DIVISIONS);
  const leastValue = least === undefined ? undefined : alike('least', least);
  const stepValue = step === undefined ? undefined : alike('step', step);

  const batches = divide(fn, 'largest', whole, most, how);
  const last = { value: batches.last.toNumber(), unit };
  // What 12 digits of the whole leave open in the last batch.
  const slack = 1e-11 * whole;
  const cautions: Caution[] =
    leastValue !== undefined && last.value < leastValue - slack
      ? [
          {
            code: 'batch-below-least',
            severity: 'caution',
            params: { batch: last, least: { value: leastValue, unit } },
            source: 'common-practice',
          },
        ]
      : [];
  return {
    count: batches.count,
    each: { value: batches.each.toNumber(), unit },
    last,
    ...(stepValue !== undefined && { lastToMix: toMix(last, stepValue, slack, leastValue) }),
    cautions,
    basis: [
      basis('count', 'batch.batchSizes', 'ceiling of total / largest', 'definition', {
        total,
        largest,
        division,
      }),
    ],
  };
}

/** The last batch as it can be measured. */
function toMix<U extends string>(last: Quantity<U>, step: number, slack: number, least = 0): FieldValue<U> {
  const rounded = toField(last, step, 'up');
  const enough = toField({ value: Math.max(last.value - slack, least), unit: last.unit }, step, 'up');
  return { ...rounded, field: enough.field };
}
