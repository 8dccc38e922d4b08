import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import type { Area, Length } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { ruleCautions } from './filmCautions.ts';
import { readCoatedArea } from './filmLimits.ts';
import type { FilmRule } from './filmRules.ts';
import { readFilmRule } from './readFilmRule.ts';
import type { FilmSubstrate } from './substrates.ts';

/** Input of {@link filmSamplingPlan}. */
export interface FilmSamplingPlanInput {
  /** The rule that the specification names. */
  readonly rule: FilmRule;
  /** What lies under the film. */
  readonly substrate: FilmSubstrate;
  /** Area that the film lies on; for IMO MSC.215(82) its flat part. */
  readonly coatedArea: Area;
}

/** How many places of a film are measured. All numbers are whole. */
export interface FilmSamplingPlan {
  /** Areas to be measured. */
  readonly areas: number;
  /** Spots in all of them together. */
  readonly spots: number;
  /** Readings at all spots together, at least. */
  readonly readings: number;
  /** Size of one measured area, where the rule has one. */
  readonly areaSize?: Area | undefined;
  /** Circle in which the readings of one spot lie, where the rule has one. */
  readonly spotDiameter?: Length | undefined;
  /** What belongs with it. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How many areas, spots and readings a rule asks for on a film of this size.
 *
 * @formula
 * ```math
 * n_{readings} = n_{areas}(A) \; n_{spots} \; n_{each}
 * ```
 * @units area; answers counts.
 * @validRange coatedArea above 0 and up to 1e9 m². A part of an area counts as a whole one.
 * @accuracy Exact: areas of 12 equal digits are equal, so that a limit is met in every unit.
 * @source sspc-pa-2, sspc-pa-2-12500, sspc-pa-9, iso-19840, imo-msc-215-82
 * @param input - Rule, substrate and area.
 * @returns Whole numbers, with the rule they come from.
 * @throws An `InputError` that names the field, or `conflict` where the rule is not for that substrate.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const plan = inspect.filmSamplingPlan({
 *   rule: { rule: 'SSPC-PA 9:2015', level: 3, areasIn: 'ft2' },
 *   substrate: 'concrete',
 *   coatedArea: { value: 5964, unit: 'ft2' },
 * });
 * [plan.areas, plan.spots, plan.readings]; // => [8, 40, 120]
 * ```
 */
export function filmSamplingPlan(input: FilmSamplingPlanInput): FilmSamplingPlan {
  const fn = 'filmSamplingPlan';
  const { rule, substrate, coatedArea } = fields(fn, input);
  const base = readFilmRule(fn, rule, substrate);
  const { areas, spotsPerArea, readingsPerSpot } = base.countFor(readCoatedArea(fn, coatedArea));
  const spots = areas * spotsPerArea;
  return {
    areas,
    spots,
    readings: spots * readingsPerSpot,
    ...(base.size && { areaSize: base.size.area, spotDiameter: base.size.spotDiameter }),
    cautions: ruleCautions(base),
    basis: [
      basis(
        'readings',
        `inspect.${fn}`,
        base.counting,
        base.countCited,
        { rule, substrate, coatedArea },
        base.assumption,
      ),
    ],
  };
}
