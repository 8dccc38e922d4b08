import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { SHARE } from '../core/dimensions.ts';
import type { Limits } from '../core/limits.ts';
import type { Share } from '../core/quantity.ts';
import { fields, read, refuse } from '../core/read.ts';

/** Input of {@link aggregateExposure}: what the surface shows, together 100 %. */
export interface AggregateExposureInput {
  /** Cement and fines. */
  readonly cementFines: Share;
  /** Sand. */
  readonly fineAggregate: Share;
  /** Stones. */
  readonly coarseAggregate: Share;
}

/** How deep a polished concrete was cut, by what it shows. */
export interface AggregateExposure {
  /** The class; nothing where the surface fits none. */
  readonly exposureClass?: 'A' | 'B' | 'C' | undefined;
  /** What takes most of the surface. */
  readonly dominant: keyof AggregateExposureInput;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

const SURFACE: Limits = { above: -5e-324, below: 1.000000000001, words: ' from 0 % to 100 %' };
/** Least and greatest share of what dominates. */
const CLASSES: Readonly<
  Record<keyof AggregateExposureInput, readonly ['A' | 'B' | 'C', least: number, most: number]>
> = {
  cementFines: ['A', 0.85, 0.95],
  fineAggregate: ['B', 0.85, 0.95],
  coarseAggregate: ['C', 0.8, 0.9],
};

/**
 * Which class of exposure a polished concrete has, by the shares of its surface that show fines, sand and stones.
 *
 * @formula
 * ```math
 * A: 0.85 \le s_{fines} \le 0.95, \quad B: 0.85 \le s_{sand} \le 0.95, \quad C: 0.80 \le s_{stones} \le 0.90
 * ```
 * @units shares; answers a class.
 * @validRange shares from 0 to 100 %, together 100 %.
 * @accuracy Exact, ends included. Classes of the chart of 2017; older charts with four classes and depths still circulate.
 * @source polished-concrete-2017
 * @param input - The three shares.
 * @returns The class, and what dominates.
 * @throws An `InputError` that names the field, or `conflict` where the shares do not add up.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const percent = (value: number) => ({ value, unit: '%' }) as const;
 * inspect.aggregateExposure({
 *   cementFines: percent(7),
 *   fineAggregate: percent(88),
 *   coarseAggregate: percent(5),
 * }).exposureClass; // => 'B'
 * ```
 */
export function aggregateExposure(input: AggregateExposureInput): AggregateExposure {
  const fn = 'aggregateExposure';
  const given = fields(fn, input);
  const keys = Object.keys(CLASSES) as (keyof AggregateExposureInput)[];
  const shares = keys.map((key) => ({ key, share: read(fn, key, given[key], SHARE, SURFACE) }));
  const sum = shares.reduce((all, { share }) => all + share, 0);
  if (Math.abs(sum - 1) > 1e-9) {
    refuse(fn, 'conflict', ['cementFines'], 'shares that add up to 100 %', `${sum * 100} %`);
  }
  const { key: dominant, share } = shares.reduce((a, b) => (b.share > a.share ? b : a));
  const [name, least, most] = CLASSES[dominant];
  const fits = share >= least - 1e-12 && share <= most + 1e-12;
  const { cementFines, fineAggregate, coarseAggregate } = given;
  return {
    ...(fits && { exposureClass: name }),
    dominant,
    cautions: fits
      ? []
      : [
          {
            code: 'exposure-between-classes',
            severity: 'note',
            params: {},
            source: 'polished-concrete-2017',
          },
        ],
    basis: [
      basis(
        'exposureClass',
        `inspect.${fn}`,
        'share of what dominates, between its ends',
        'polished-concrete-2017',
        {
          cementFines,
          fineAggregate,
          coarseAggregate,
        },
      ),
    ],
  };
}
