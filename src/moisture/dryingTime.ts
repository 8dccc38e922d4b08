import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { LENGTH, TIME } from '../core/dimensions.ts';
import type { Limits } from '../core/limits.ts';
import type { Length, Quantity } from '../core/quantity.ts';
import type { Range } from '../core/range.ts';
import { fields, read, refuse, write } from '../core/read.ts';
import { readKey, readNumber } from '../core/readPlain.ts';
import type { TimeUnit } from '../core/unitCodes.ts';
import { DEPTH_SHARE, type DryingSides } from './drying.ts';

/** Input of {@link dryingTime}. */
export interface DryingTimeInput<U extends TimeUnit = TimeUnit> {
  /** Thickness of the slab. */
  readonly slabThickness: Length;
  /** From which sides it dries. */
  readonly drying: DryingSides;
  /** Water to cement by mass, where it is known: adds the rules that ask for it, where `below` is known as well. */
  readonly waterCement?: number | undefined;
  /** What is below a slab that dries from one side; on wet ground it takes far longer. */
  readonly below?: 'vapour retarder' | 'wet ground' | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** What one published rule says. */
export interface DryingRule<U extends TimeUnit = TimeUnit> {
  /** The rule in words. */
  readonly rule: string;
  /** Its time. */
  readonly time: Quantity<U>;
  /** Whether the rule only says that it takes longer than that. */
  readonly orLonger: boolean;
  /** Id in the register of sources. */
  readonly source: string;
  /** Given where the source was not read but is quoted from memory. */
  readonly status?: 'memory' | undefined;
}

/** What the published rules say; they disagree. */
export interface DryingTime<U extends TimeUnit = TimeUnit> {
  /** From the shortest to the longest of the rules. */
  readonly range: Range<U>;
  /** Whether the range has no upper end: a rule names only the least, or the slab lies on wet ground. */
  readonly orLonger: boolean;
  /** Every rule that applies. */
  readonly rules: readonly DryingRule<U>[];
  /** What belongs with the answer; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const DAY_S = 86_400;
const INCH_M = 0.0254;
const MM_M = 0.001;
/** A twelfth of a year of 365.25 days. */
const MONTH_S = 2_629_800;

/** What a rule is asked. */
interface Slab {
  /** Thickness that dries to one side, in m. */
  readonly slab_m: number;
  readonly waterCement: number | undefined;
  readonly below: 'vapour retarder' | 'wet ground' | undefined;
}

/** Days to 3 lb/1000ft2/24h of slabs 4 in thick on a sealed base at 73 °F and 50 %, by water to cement. */
const LABORATORY: readonly (readonly [waterCement: number, days: number])[] = [
  [0.4, 46],
  [0.5, 82],
  [0.6, 117],
  [0.7, 130],
  [0.8, 148],
  [0.9, 166],
  [1, 190],
];
/** The same with water vapour below, which was published for one concrete. */
const WET_BELOW = { waterCement: 0.5, days: 144 };
/** 4 in. */
const LABORATORY_SLAB_M = 0.1016;

/** A rule answers seconds, or nothing where it does not apply. */
interface Rule {
  readonly words: string;
  readonly source: string;
  readonly status?: 'memory';
  readonly time_s: (slab: Slab) => { readonly time_s: number; readonly orLonger: boolean } | undefined;
}

const RULES: readonly Rule[] = [
  {
    words: 'a month for each inch',
    source: 'floor-trends-2023',
    time_s: ({ slab_m }) => ({ time_s: (slab_m / INCH_M) * MONTH_S, orLonger: false }),
  },
  {
    words: 'a day for each millimetre up to 50 mm, more than that above',
    source: 'bs-8203',
    status: 'memory',
    time_s: ({ slab_m }) => ({ time_s: (slab_m / MM_M) * DAY_S, orLonger: slab_m > 0.05 * (1 + 1e-12) }),
  },
  {
    words: 'more than a year for 150 mm',
    source: 'bs-8203',
    status: 'memory',
    time_s: ({ slab_m }) =>
      slab_m >= 0.15 * (1 - 1e-12) ? { time_s: 12 * MONTH_S, orLonger: true } : undefined,
  },
  {
    words: 'laboratory slabs of 4 in on a sealed base, by water to cement',
    source: 'pca-d89-1965',
    status: 'memory',
    time_s: ({ slab_m, waterCement, below }) =>
      waterCement === undefined || below !== 'vapour retarder' || slab_m < LABORATORY_SLAB_M * (1 - 1e-12)
        ? undefined
        : { time_s: interpolated(waterCement) * DAY_S, orLonger: slab_m > LABORATORY_SLAB_M * (1 + 1e-12) },
  },
  {
    words: 'laboratory slabs of 4 in with water vapour below, water to cement 0.5',
    source: 'concrete-construction-1998',
    time_s: ({ slab_m, waterCement, below }) =>
      below !== 'wet ground' ||
      waterCement === undefined ||
      waterCement < WET_BELOW.waterCement ||
      slab_m < LABORATORY_SLAB_M * (1 - 1e-12)
        ? undefined
        : {
            time_s: WET_BELOW.days * DAY_S,
            orLonger: waterCement > WET_BELOW.waterCement || slab_m > LABORATORY_SLAB_M * (1 + 1e-12),
          },
  },
];

const BELOW = { 'vapour retarder': true, 'wet ground': true } as const;
/** Slabs and screeds of floors. */
const SLAB: Limits = { above: 0.009999999999, below: 1.000000000001, words: ' from 10 mm to 1 m' };

/** Water over cement for which the rules are told. */
const WATER_CEMENT: Limits = { above: 0.399999999999, below: 1.000000000001, words: ' from 0.4 to 1' };

/**
 * How long a slab may take to dry, by published rules that disagree by a factor of two and more.
 *
 * For planning only, and never a date: it starts when the building is closed and heated, not when the concrete is
 * placed, and it is the tests that decide.
 *
 * @formula
 * ```math
 * t \in \left[\min_k t_k(h), \; \max_k t_k(h)\right]
 * ```
 * @units length; answers a range of times.
 * @validRange slabThickness from 10 mm to 1 m; waterCement from 0.4 to 1.0.
 * @accuracy The rules themselves disagree; most were seen as restatements or are remembered, see each source. A slab
 * that dries to both sides is taken as one of half its thickness.
 * @source floor-trends-2023, bs-8203, pca-d89-1965, concrete-construction-1998
 * @param input - Slab, drying sides, what is known of the concrete and of the ground, and the unit wanted.
 * @returns The range of the rules and each rule in `input.unit`.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as moisture from 'coating-math/moisture';
 *
 * const slab = moisture.dryingTime({
 *   slabThickness: { value: 4, unit: 'in' },
 *   drying: 'one side',
 *   waterCement: 0.5,
 *   below: 'vapour retarder',
 *   unit: 'd',
 * });
 * slab.rules.map((rule) => Math.round(rule.time.value)); // => [122, 102, 82]
 * slab.orLonger; // => true
 * ```
 */
export function dryingTime<U extends TimeUnit>(input: DryingTimeInput<U>): DryingTime<U> {
  const fn = 'dryingTime';
  const { slabThickness, drying, waterCement, below, unit } = fields(fn, input);
  if (drying === 'both sides' && below !== undefined) {
    refuse(fn, 'conflict', ['below'], 'nothing where the slab dries to both sides', below);
  }
  const slab: Slab = {
    slab_m:
      read(fn, 'slabThickness', slabThickness, LENGTH, SLAB) *
      (readKey(fn, 'drying', drying, DEPTH_SHARE) === 'both sides' ? 0.5 : 1),
    // The limit has room for round-off, the series of laboratory slabs has none.
    waterCement:
      waterCement === undefined
        ? undefined
        : Math.min(1, readNumber(fn, 'waterCement', waterCement, WATER_CEMENT)),
    below: below === undefined ? undefined : readKey(fn, 'below', below, BELOW),
  };
  const rules = RULES.flatMap(({ words, time_s, ...cited }): DryingRule<U>[] => {
    const answer = time_s(slab);
    if (!answer) return [];
    return [{ rule: words, time: write(fn, answer.time_s, TIME, unit), orLonger: answer.orLonger, ...cited }];
  });
  const times = rules.map((rule) => rule.time.value);
  const assumption = drying === 'both sides' ? 'half the thickness, as if it dried to one side' : undefined;
  const inputs = { slabThickness, drying, waterCement, below };
  return {
    range: { low: { value: Math.min(...times), unit }, high: { value: Math.max(...times), unit } },
    orLonger: below === 'wet ground' || rules.some((rule) => rule.orLonger),
    rules,
    cautions: [
      {
        code: 'drying-rules-disagree',
        severity: 'caution',
        params: { rules: rules.length },
        source: 'floor-trends-2023',
      },
      ...(below === 'wet ground'
        ? [
            {
              code: 'no-vapour-retarder',
              severity: 'caution',
              params: {},
              source: 'concrete-construction-1998',
            } as const,
          ]
        : []),
    ],
    basis: rules.map(({ rule, source, status }, i) =>
      basis(`rules.${i}`, `moisture.${fn}`, rule, status ? { source, status } : source, inputs, assumption),
    ),
  };
}

/** Days of the laboratory series, by straight lines between its concretes. */
function interpolated(waterCement: number): number {
  const place = LABORATORY.findIndex(([ratio]) => ratio >= waterCement);
  const [x1, y1] = LABORATORY[place] as readonly [number, number];
  const [x0, y0] = LABORATORY[Math.max(0, place - 1)] as readonly [number, number];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (waterCement - x0)) / (x1 - x0);
}
