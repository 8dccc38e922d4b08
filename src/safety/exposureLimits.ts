import { basis, fromMemory } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { ISOCYANATE_IN_THE_AIR, SILICA_DUST, SKIN_AND_EYES } from '../core/hazards.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';

/** Substances in the air of a floor for which limits are on record. Chemical names only. */
export type AirborneSubstance =
  | 'methylene diphenyl diisocyanate'
  | 'hexamethylene diisocyanate'
  | 'isophorone diisocyanate'
  | 'toluene diisocyanate'
  | 'isocyanates, all, as NCO'
  | 'diethylenetriamine'
  | 'ethylenediamine'
  | 'm-xylylenediamine'
  | 'respirable crystalline silica';

/** Input of {@link exposureLimits}. */
export interface ExposureLimitsInput {
  /** The substance. */
  readonly substance: AirborneSubstance;
}

/** One limit of one body. */
export interface ExposureLimit {
  /** Who sets or recommends it. */
  readonly agency: 'OSHA' | 'NIOSH' | 'ACGIH' | 'HSE';
  /** Where: ISO 3166 code. */
  readonly country: 'US' | 'GB';
  /** A mean over a shift (TWA), one over some minutes (STEL), a ceiling, or the level from which measures are due. */
  readonly kind: 'TWA' | 'STEL' | 'ceiling' | 'action level';
  /** Time over which it is taken. Missing for a ceiling that holds at every moment. */
  readonly over?: Quantity<'h' | 'min'> | undefined;
  /** The limit by volume in air. */
  readonly byVolume?: Quantity<'ppm'> | undefined;
  /** The limit by mass in air. */
  readonly byMass?: Quantity<'mg/m3'> | undefined;
  /** Edition or year in which it was seen. */
  readonly edition: string;
  /** Whether it is law: a recommendation is not, nor is a limit that a court has set aside. */
  readonly binding: boolean;
  /** Id in the register of sources. */
  readonly source: string;
  /** Given where the source was not read but is quoted from memory. */
  readonly status?: 'memory' | undefined;
}

/** Answer of {@link exposureLimits}. */
export interface ExposureLimits {
  /** The substance. */
  readonly substance: AirborneSubstance;
  /** Its limits. No entry for a body means that none is on record here, not that it sets none. */
  readonly limits: readonly ExposureLimit[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const SHIFT = { value: 8, unit: 'h' } as const;
/** The shift of a recommendation, which may be one of ten hours in a week of forty. */
const LONG_SHIFT = { value: 10, unit: 'h' } as const;
const TEN_MINUTES = { value: 10, unit: 'min' } as const;
const QUARTER = { value: 15, unit: 'min' } as const;
const ppm = (value: number) => ({ value, unit: 'ppm' }) as const;
const mg = (value: number) => ({ value, unit: 'mg/m3' }) as const;

const OSHA = { agency: 'OSHA', country: 'US', binding: true } as const;
const NIOSH = { agency: 'NIOSH', country: 'US', binding: false } as const;
const HSE = { agency: 'HSE', country: 'GB', binding: true } as const;
const EH40 = { edition: 'EH40/2005, restated', source: 'eh40-2005' } as const;
const OSHA_TABLE = { edition: 'table Z-1', source: 'osha-1910-1000', status: 'memory' } as const;
const GUIDE_MEMORY = { edition: 'pocket guide', source: 'niosh-npg', status: 'memory' } as const;
const MDI = { edition: 'pocket guide', source: 'niosh-npg-mdi' } as const;
const HDI = { edition: 'pocket guide of 2005', source: 'niosh-npg-hdi' } as const;
const DETA = { edition: 'comments on the rule of 1989', source: 'osha-1989-deta' } as const;

/** The record; built when it is asked for, so that an app that does not ask does not carry it. */
const onRecord = (): Readonly<Record<AirborneSubstance, readonly ExposureLimit[]>> => ({
  'methylene diphenyl diisocyanate': [
    { ...OSHA, kind: 'ceiling', byVolume: ppm(0.02), byMass: mg(0.2), ...MDI },
    { ...NIOSH, kind: 'TWA', over: LONG_SHIFT, byVolume: ppm(0.005), ...MDI },
    { ...NIOSH, kind: 'ceiling', over: TEN_MINUTES, byVolume: ppm(0.02), ...MDI },
  ],
  'hexamethylene diisocyanate': [
    { ...NIOSH, kind: 'TWA', over: LONG_SHIFT, byVolume: ppm(0.005), byMass: mg(0.035), ...HDI },
    { ...NIOSH, kind: 'ceiling', over: TEN_MINUTES, byVolume: ppm(0.02), byMass: mg(0.14), ...HDI },
    {
      agency: 'ACGIH',
      country: 'US',
      kind: 'TWA',
      over: SHIFT,
      byVolume: ppm(0.005),
      binding: false,
      ...HDI,
    },
  ],
  'isophorone diisocyanate': [
    { ...NIOSH, kind: 'TWA', over: LONG_SHIFT, byVolume: ppm(0.005), byMass: mg(0.045), ...GUIDE_MEMORY },
    { ...NIOSH, kind: 'STEL', over: TEN_MINUTES, byVolume: ppm(0.02), byMass: mg(0.18), ...GUIDE_MEMORY },
  ],
  'toluene diisocyanate': [
    { ...OSHA, kind: 'ceiling', byVolume: ppm(0.02), byMass: mg(0.14), ...OSHA_TABLE },
  ],
  'isocyanates, all, as NCO': [
    { ...HSE, kind: 'TWA', over: SHIFT, byMass: mg(0.02), ...EH40 },
    { ...HSE, kind: 'STEL', over: QUARTER, byMass: mg(0.07), ...EH40 },
  ],
  diethylenetriamine: [
    { ...NIOSH, kind: 'TWA', over: LONG_SHIFT, byVolume: ppm(1), ...DETA },
    { ...OSHA, kind: 'TWA', over: SHIFT, byVolume: ppm(1), ...DETA, binding: false },
  ],
  ethylenediamine: [
    { ...OSHA, kind: 'TWA', over: SHIFT, byVolume: ppm(10), byMass: mg(25), ...OSHA_TABLE },
    { ...NIOSH, kind: 'TWA', over: LONG_SHIFT, byVolume: ppm(10), byMass: mg(25), ...GUIDE_MEMORY },
  ],
  'm-xylylenediamine': [{ ...NIOSH, kind: 'ceiling', byMass: mg(0.1), ...GUIDE_MEMORY }],
  'respirable crystalline silica': [
    {
      ...OSHA,
      kind: 'action level',
      over: SHIFT,
      byMass: mg(0.025),
      edition: '29 CFR 1910.1053',
      source: 'osha-1910-1053',
    },
    {
      ...OSHA,
      kind: 'TWA',
      over: SHIFT,
      byMass: mg(0.05),
      edition: '29 CFR 1926.1153',
      source: 'osha-1926-1153',
      status: 'memory',
    },
    { ...HSE, kind: 'TWA', over: SHIFT, byMass: mg(0.1), ...EH40 },
  ],
});

/**
 * Limits for what people breathe on a floor: how much of a substance the air of a place of work may hold.
 *
 * None of them is a level below which nobody falls ill. Polymeric forms often have no limit of their own and are not the
 * less harmful for that.
 *
 * @formula
 * ```math
 * \text{substance} \to \{\text{agency}, \text{kind}, \text{limit}, \text{edition}\}
 * ```
 * @units answers shares and densities.
 * @validRange the substances named.
 * @accuracy As printed; no figure is converted from ppm to mg/m³ or back. Entries that were not read are marked.
 * @source niosh-npg-mdi, niosh-npg-hdi, eh40-2005, osha-1989-deta, osha-1910-1053, osha-1926-1153, osha-1910-1000, niosh-npg
 * @param input - The substance.
 * @returns Its limits with country, kind, edition and whether they bind, and the cautions.
 * @throws An `InputError` for a substance that is not on record.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const { limits } = safety.exposureLimits({ substance: 'hexamethylene diisocyanate' });
 * limits.map(({ agency, kind, byVolume }) => [agency, kind, byVolume?.value]);
 * // => [['NIOSH', 'TWA', 0.005], ['NIOSH', 'ceiling', 0.02], ['ACGIH', 'TWA', 0.005]]
 * ```
 */
export function exposureLimits(input: ExposureLimitsInput): ExposureLimits {
  const fn = 'exposureLimits';
  const { substance } = fields(fn, input);
  const record = onRecord();
  const limits = record[readKey(fn, 'substance', substance, record)];
  return {
    substance,
    limits,
    cautions: [
      hazardOf(substance),
      {
        code: 'limits-differ-by-place',
        severity: 'caution',
        params: { substance },
        source: 'common-practice',
      },
    ],
    basis: limits.map(({ agency, country, kind, edition, source, status }) => {
      const said = basis(
        'limits',
        'safety.exposureLimits',
        `${agency}, ${country}, ${kind}: ${edition}`,
        source,
        { substance },
      );
      return status === 'memory' ? fromMemory(said) : said;
    }),
  };
}

/** What the substance does. */
function hazardOf(substance: AirborneSubstance): Caution {
  if (substance === 'respirable crystalline silica') return SILICA_DUST;
  return substance.includes('isocyanate') ? ISOCYANATE_IN_THE_AIR : SKIN_AND_EYES;
}
