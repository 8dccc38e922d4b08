import { worstOf, type Assessment } from '../core/assessment.ts';
import { basis } from '../core/basis.ts';
import type { Basis, Caution, CautionCode } from '../core/caution.ts';
import { LENGTH, SHARE } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Area, Length, Quantity, Share } from '../core/quantity.ts';
import { fields, readOr, refuse, write } from '../core/read.ts';
import { readOneOf } from '../core/readOneOf.ts';
import type { LengthUnit } from '../core/unitCodes.ts';
import { ruleCautions } from './filmCautions.ts';
import { findingsOf, type BaseFinding, type FilmCriterion, type GaugeError } from './filmFindings.ts';
import { missingOf, readFilmAreas, type FilmArea, type MissingReadings } from './filmReadings.ts';
import { readCoatedArea, readFilmLimits, type SpecifiedFilm } from './filmLimits.ts';
import type { FilmRule } from './filmRules.ts';
import { citedOf, readFilmRule } from './readFilmRule.ts';
import type { FilmSubstrate } from './substrates.ts';
import { worstFinding } from './worstFinding.ts';
import {
  halfWidthOf,
  readCoverage,
  readErrorBy,
  uncertaintyBasis,
  type Confidence,
  type ReadingError,
} from '../statistics/readingError.ts';

/** Input of {@link dryFilmCheck}. */
export interface DryFilmCheckInput<U extends LengthUnit = LengthUnit> extends Confidence {
  /** The rule that the specification names. */
  readonly rule: FilmRule;
  /** What lies under the film. */
  readonly substrate: FilmSubstrate;
  /** The film that the specification asks for. */
  readonly specified: SpecifiedFilm;
  /** Area that the film lies on: it says how many readings the rule asks for. */
  readonly coatedArea: Area;
  /** What was measured, area by area. */
  readonly areas: readonly FilmArea[];
  /** What the gauge may be off by, as a thickness or as a share of each reading. Taken as exact where not given. */
  readonly gaugeError?: ReadingError<Length | Share> | undefined;
  /** Taken off every reading for the roughness of a metal, see `roughnessCorrection`. Nothing where not given. */
  readonly correction?: Length | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** The worst place of the film by one criterion of the rule. A share of low spots is answered in per cent. */
export interface FilmFinding<U extends LengthUnit = LengthUnit> extends Omit<
  Assessment<U | '%'>,
  'cautions' | 'basis'
> {
  /** What the rule holds the film to. */
  readonly criterion: FilmCriterion;
  /** Where that stands: rule, edition, clause. */
  readonly clause: string;
  /** The area of the worst place; all of them where the rule takes their mean or share together. */
  readonly area: string;
  /** Place of the spot in the list of its area, where the criterion is one of spots. */
  readonly spot?: number | undefined;
}

/** What was measured on one area. */
export interface FilmAreaMeans<U extends LengthUnit = LengthUnit> {
  /** Where it lies. */
  readonly name: string;
  /** Mean of the spots. */
  readonly mean: Quantity<U>;
  /** Mean of each spot, corrected for roughness. */
  readonly spots: readonly Quantity<U>[];
}

/** A dry film judged by a rule. The figures are those of the finding that governs. */
export interface DryFilmAssessment<U extends LengthUnit = LengthUnit> extends FilmFinding<U> {
  /** Name of the rule with edition and level. */
  readonly rule: string;
  /** One for each criterion of the rule. */
  readonly findings: readonly FilmFinding<U>[];
  /** What was measured, area by area. */
  readonly areas: readonly FilmAreaMeans<U>[];
  /** What is missing of what the rule asks for; all 0 where nothing is. */
  readonly missing: MissingReadings;
  /** What belongs with the verdict. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const FAILED: Readonly<Record<FilmCriterion, CautionCode>> = {
  'spot-least': 'spot-too-thin',
  'spot-most': 'spot-too-thick',
  'mean-least': 'mean-too-thin',
  'mean-most': 'mean-too-thick',
  'low-share': 'too-many-thin-spots',
};

/**
 * Whether a cured film is accepted by the rule that the specification names.
 *
 * Spots are judged by the mean of their readings, areas by the mean of their spots; by ISO 19840 and IMO MSC.215(82) all
 * areas of the call have one mean and one share of low readings. The worst place governs and is named with its clause. Too few readings never make a film meet its rule, and means that lack readings never make it fail.
 * With the error of the gauge, what lies closer to a limit than that is undecided: rules of a contract judge the plain
 * reading, so leave the error out where the contract does. A reading of 0 counts as a bare place and is named.
 *
 * @formula
 * ```math
 * \bar d_{spot} \ge k_1 d_{least}, \quad \bar d_{spot} \le k_2 d_{most}, \quad
 * d_{least} \le \bar d_{area} \le d_{most}, \quad \frac{n(d < d_{least})}{n} \le p
 * ```
 * @units lengths in any mix of units, area, share; answers lengths, shares.
 * @validRange thicknesses above 0, readings 0 or more; coatedArea up to 1e9 m²; ISO 19840 from 40 µm. SSPC-PA 2 on
 * metal, SSPC-PA 9 on concrete, ISO 19840 and IMO MSC.215(82) on steel. Concrete has no correction for roughness.
 * @accuracy Exact up to round-off: round-off is kept out of the means, and a reading exactly on a limit meets it in every unit.
 * @source sspc-pa-2, sspc-pa-9, iso-19840, imo-msc-215-82
 * @param input - Rule, substrate, specified film, readings and the unit wanted.
 * @returns The verdict with the governing place and its clause, every criterion, and what is missing.
 * @throws An `InputError` that names the field, or `conflict` where the rule is not for that substrate.
 * @example
 * ```ts
 * import * as inspect from 'coating-math/inspect';
 *
 * const mils = (...values: number[]) => values.map((value) => ({ value, unit: 'mil' }) as const);
 * const film = inspect.dryFilmCheck({
 *   rule: { rule: 'SSPC-PA 9:2015', level: 3, areasIn: 'ft2' },
 *   substrate: 'concrete',
 *   specified: { least: { value: 16, unit: 'mil' }, most: { value: 24, unit: 'mil' } },
 *   coatedArea: { value: 96, unit: 'ft2' },
 *   areas: [
 *     {
 *       name: 'dock',
 *       spots: [mils(17, 18, 16), mils(11, 10, 12), mils(22, 21, 20), mils(19, 19, 20), mils(18, 17, 19)],
 *     },
 *   ],
 *   unit: 'mil',
 * });
 * // The mean of the area is 17.3 mil. One spot is below 75 % of 16 mil.
 * [film.verdict, film.criterion, film.spot, film.measured.value]; // => ['fails', 'spot-least', 1, 11]
 * film.clause; // => 'SSPC-PA 9:2015, level 3, section 9, Table 1'
 * ```
 */
export function dryFilmCheck<U extends LengthUnit>(input: DryFilmCheckInput<U>): DryFilmAssessment<U> {
  const fn = 'dryFilmCheck';
  const { rule, substrate, specified, coatedArea, areas, gaugeError, correction, unit } = fields(fn, input);
  const base = readFilmRule(fn, rule, substrate);
  const limits = readFilmLimits(fn, base, specified);
  const asked = base.countFor(readCoatedArea(fn, coatedArea));
  const correction_m = readOr(0, fn, 'correction', correction, LENGTH, NOT_NEGATIVE);
  if (substrate === 'concrete' && correction !== undefined) {
    refuse(fn, 'conflict', ['correction'], 'nothing on concrete: it is for rough metal', correction);
  }
  const error = readGaugeError(fn, input);
  const measured = readFilmAreas(fn, areas, correction_m);
  const { missing, complete } = missingOf(base, measured, asked);
  const together = base.counted === 'together';
  const film = {
    areas: measured,
    complete,
    readingsPerSpot: asked.readingsPerSpot,
    together,
    missing: together ? missing.spots : 0,
    error,
  };

  const thickness = (value_m: number) => write(fn, value_m, LENGTH, unit);
  const found = findingsOf(film, limits, base.terms);
  const findings = found.map((finding) => answered(finding));
  const governing = worstFinding(found);
  if (!governing) {
    return refuse(
      fn,
      'missing',
      ['specified', 'most'],
      'a film, as the rule has upper limits only',
      specified,
    );
  }
  const lacking = missing.readings > 0;
  const verdict = worstOf([governing.verdict, lacking ? 'undecided' : 'meets']);

  /** A finding in the units of the answer. */
  function answered(finding: BaseFinding): FilmFinding<U> {
    const { criterion, area, spot, uncertainty } = finding;
    const figure = (value: number) =>
      criterion === 'low-share' ? write(fn, value, SHARE, '%') : thickness(value);
    return {
      criterion,
      clause: `${base.name}, ${base.clause}`,
      verdict: finding.verdict,
      measured: figure(finding.measured),
      limit: figure(finding.limit),
      gap: figure(finding.gap),
      ...(uncertainty > 0 && { uncertainty: figure(uncertainty) }),
      area: (area === undefined ? measured : measured.slice(area, area + 1))
        .map(({ name }) => name)
        .join(', '),
      ...(spot !== undefined && { spot }),
    };
  }

  const about = (code: CautionCode, params: Caution['params'], cited = base.cited): Caution => ({
    code,
    severity: 'caution',
    params,
    ...cited,
  });
  const paramsOf = ({ clause, measured: value, limit, area, spot }: FilmFinding<U>) => ({
    clause,
    measured: value,
    limit,
    place: spot === undefined ? area : `${area}, spot ${spot + 1}`,
  });
  const bare = measured.filter((area) => area.bare !== undefined);
  return {
    ...answered(governing),
    verdict,
    rule: base.name,
    findings,
    areas: measured.map(({ name, mean_m, spots_m }) => ({
      name,
      mean: thickness(mean_m),
      spots: spots_m.map(thickness),
    })),
    missing,
    cautions: [
      ...findings.flatMap((finding, i) => {
        if (finding.verdict === 'meets') return [];
        if (finding.verdict === 'fails') return [about(FAILED[finding.criterion], paramsOf(finding))];
        const reason = found[i]?.doubt ?? 'the gauge cannot tell';
        return [about('film-undecided', { ...paramsOf(finding), reason })];
      }),
      ...(lacking ? [about('too-few-film-readings', { rule: base.name, ...missing }, base.countCited)] : []),
      ...bare.map(({ name, bare: spot = 0 }) => about('bare-spot', { place: `${name}, spot ${spot + 1}` })),
      ...ruleCautions(base),
    ],
    basis: [
      basis(
        'measured',
        `inspect.${fn}`,
        'worst of spots, means of areas and share of low spots against their limits',
        citedOf(base),
        {
          rule,
          substrate,
          specified,
          coatedArea,
          gaugeError,
          correction,
          areas: measured.length,
          spots: measured.reduce((sum, { spots_m }) => sum + spots_m.length, 0),
        },
        base.assumption,
      ),
      ...uncertaintyBasis(`inspect.${fn}`, { gaugeError }, input),
    ],
  };
}

/** Reads what the gauge may be off by: so much, or so much of each reading. It moves every mean as it moves a reading. */
function readGaugeError(fn: string, input: DryFilmCheckInput): GaugeError {
  const coverage = readCoverage(fn, input);
  let ofReading = false;
  const size = (key: string, given: Length | Share, path: InputPath) => {
    const { base, dimension } = readOneOf(fn, key, given, [LENGTH, SHARE], NOT_NEGATIVE, path);
    ofReading = dimension.kind === SHARE.kind;
    return base;
  };
  const half = halfWidthOf(readErrorBy(fn, 'gaugeError', input.gaugeError, coverage, size), coverage);
  return (thickness_m) => (ofReading ? half * thickness_m : half);
}
