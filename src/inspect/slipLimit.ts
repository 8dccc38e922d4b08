import { basis } from '../core/basis.ts';
import type { Basis, Caution, Cited } from '../core/caution.ts';
import { fields } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { D2047, PENDULUM, type SlipMethod } from './slipMethods.ts';

/** What a floor is used for, in the words of the documents that have a figure for it. */
export type SlipUse =
  | 'interior, kept dry'
  | 'interior, walked on wet'
  | 'interior, walked on very wet'
  | 'exterior, walked on wet'
  | 'oils and greases'
  | 'polished and dry'
  | 'pedestrian, wet'
  | 'accessible route'
  | 'accessible ramp';

/** Input of {@link slipLimit}. */
export interface SlipLimitInput {
  /** What the floor is used for. */
  readonly use: SlipUse;
}

/** A published figure for the grip of a floor. */
export interface SlipLimit {
  /** The method that the figure is for. `static` where the document names no machine. */
  readonly method: SlipMethod | 'static';
  /** The figure, on the scale of the method; nothing where the document has none. */
  readonly limit?: number | undefined;
  /** What it is: a threshold of the document, a recommendation, declared by the maker, or not known here. */
  readonly standing: 'threshold' | 'recommendation' | 'declared by the maker' | 'not known';
  /** What belongs with it; never empty. */
  readonly cautions: readonly Caution[];
  /** Where it comes from. */
  readonly basis: readonly Basis[];
}

type Row = Pick<SlipLimit, 'method' | 'limit' | 'standing'> & {
  readonly cited: Cited;
};

const A326 = { source: 'ansi-a326-3' };
const ADAAG = { source: 'adaag-1998' } as const;
const DECLARED: Row = { method: 'ANSI A326.3 wet', standing: 'declared by the maker', cited: A326 };
const LIMITS: Readonly<Record<SlipUse, Row>> = {
  'interior, kept dry': { method: 'ANSI A326.3 wet', standing: 'not known', cited: A326 },
  'interior, walked on wet': { method: 'ANSI A326.3 wet', limit: 0.42, standing: 'threshold', cited: A326 },
  'interior, walked on very wet': DECLARED,
  'exterior, walked on wet': DECLARED,
  'oils and greases': DECLARED,
  'polished and dry': {
    method: 'ASTM D2047',
    limit: 0.5,
    standing: 'threshold',
    cited: D2047,
  },
  'pedestrian, wet': {
    method: 'pendulum wet',
    limit: 36,
    standing: 'recommendation',
    cited: PENDULUM,
  },
  'accessible route': { method: 'static', limit: 0.6, standing: 'recommendation', cited: ADAAG },
  'accessible ramp': { method: 'static', limit: 0.8, standing: 'recommendation', cited: ADAAG },
};

/**
 * Which figure a published document has for the grip of a floor in that use, if it has one.
 *
 * A figure belongs to its method and edition. The specification and local codes come first.
 *
 * @formula
 * ```math
 * \mu_{limit} = f(use)
 * ```
 * @units a choice; answers a scale without unit.
 * @validRange the uses of ANSI A326.3, the pendulum, ASTM D2047 on polish, and the advisory figures of the ADAAG.
 * @accuracy As printed, out of restatements; what is from memory is marked in the basis.
 * @source ansi-a326-3, hse-pendulum, astm-d2047, adaag-1998
 * @param input - What the floor is used for.
 * @returns The figure with its method and its standing.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const inside = inspect.slipLimit({ use: 'interior, walked on wet' });
 * [inside.limit, inside.method]; // => [0.42, 'ANSI A326.3 wet']
 * inspect.slipLimit({ use: 'oils and greases' }).standing; // => 'declared by the maker'
 * ```
 */
export function slipLimit(input: SlipLimitInput): SlipLimit {
  const fn = 'slipLimit';
  const { use } = fields(fn, input);
  const { method, limit, standing, cited } = LIMITS[readKey(fn, 'use', use, LIMITS)];
  return {
    method,
    ...(limit !== undefined && { limit }),
    standing,
    cautions: [{ code: 'slip-limit-of-document', severity: 'note', params: { method, standing }, ...cited }],
    basis: [basis('limit', `inspect.${fn}`, 'as printed in the document', cited, { use })],
  };
}
