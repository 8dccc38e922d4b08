import { basis, fromMemory } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { hazard } from '../core/hazards.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';

/** Solvents on record. */
export type Solvent =
  | 'acetone'
  | 'n-butyl acetate'
  | 'ethyl acetate'
  | 'ethyl alcohol'
  | 'methyl alcohol'
  | 'toluene'
  | 'o-xylene'
  | 'naphtha';

/** Input of {@link solventData}. */
export interface SolventDataInput {
  /** The solvent; naphtha is the varnish makers' and painters' cut (VM&P). */
  readonly solvent: Solvent;
}

/** What one source says of a solvent. */
export interface SolventReading {
  /** Lower explosive limit, by volume in air. */
  readonly lowerExplosiveLimit: Quantity<'%'>;
  /** Vapour of a US gallon of liquid at 70 °F. */
  readonly vapourOfUsgal?: Quantity<'ft3'> | undefined;
  /** Id in the register of sources. */
  readonly source: string;
  /** Given where the source was not read but is quoted from memory. */
  readonly status?: 'memory' | undefined;
}

/** Answer of {@link solventData}. */
export interface SolventData {
  /** The solvent. */
  readonly solvent: Solvent;
  /** What each source says; sources differ. */
  readonly readings: readonly SolventReading[];
  /** The lowest explosive limit of them: the one that asks for most air. */
  readonly lowestExplosiveLimit: Quantity<'%'>;
  /** Molar mass. Missing for a cut of many substances. */
  readonly molarMass?: Quantity<'g/mol'> | undefined;
  /** Density of the liquid at 20 °C, from memory of handbooks. Missing for a cut of many substances. */
  readonly density?: Quantity<'g/ml'> | undefined;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/** A line of 29 CFR 1910.94 Table G-11. */
const tableG11 = (vapour: number, lel: number): SolventReading => ({
  lowerExplosiveLimit: { value: lel, unit: '%' },
  vapourOfUsgal: { value: vapour, unit: 'ft3' },
  source: 'osha-1910-94',
  status: 'memory',
});
/** An entry of the pocket guide to chemical hazards. */
const guide = (lel: number): SolventReading => ({
  lowerExplosiveLimit: { value: lel, unit: '%' },
  source: 'niosh-npg-toluene',
});
/** Molar mass in g/mol and density of the liquid in g/ml. */
const liquid = (molarMass: number, density: number) =>
  ({ molarMass: { value: molarMass, unit: 'g/mol' }, density: { value: density, unit: 'g/ml' } }) as const;

/** The record; built when it is asked for, so that an app that does not ask does not carry it. */
const onRecord = (): Readonly<
  Record<Solvent, { readonly readings: readonly SolventReading[] } & Partial<ReturnType<typeof liquid>>>
> => ({
  acetone: { readings: [tableG11(44, 2.6)], ...liquid(58.08, 0.79) },
  'n-butyl acetate': { readings: [tableG11(24.8, 1.7)], ...liquid(116.16, 0.8825) },
  'ethyl acetate': { readings: [tableG11(32.8, 2.5)], ...liquid(88.106, 0.9006) },
  'ethyl alcohol': { readings: [tableG11(55.2, 4.3)], ...liquid(46.069, 0.7893) },
  'methyl alcohol': { readings: [tableG11(80.8, 7.3)], ...liquid(32.042, 0.7913) },
  toluene: { readings: [tableG11(30.4, 1.4), guide(1.1)], ...liquid(92.141, 0.8669) },
  'o-xylene': { readings: [tableG11(26.4, 1)], ...liquid(106.168, 0.8802) },
  naphtha: { readings: [tableG11(22.4, 0.9)] },
});

/**
 * What is on record of common solvents: how little of their vapour can explode, and how much vapour they make.
 *
 * The safety data sheet of the solvent at hand comes first; old tables have limits that are too high by a quarter.
 *
 * @formula
 * ```math
 * \text{solvent} \to \{L, V_v / V_l, M, \rho_l\}
 * ```
 * @units answers shares, volumes, molar mass and density.
 * @validRange the solvents named.
 * @accuracy As printed or remembered: the vapour of the table agrees with an ideal gas within 1.5 %.
 * @source osha-1910-94, niosh-npg-toluene, atomic-weights, solvent-handbooks
 * @param input - The solvent.
 * @returns What each source says, with its status, the lowest explosive limit, and the caution.
 * @throws An `InputError` for a solvent that is not on record.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const toluene = safety.solventData({ solvent: 'toluene' });
 * toluene.readings.map(({ lowerExplosiveLimit }) => lowerExplosiveLimit.value); // => [1.4, 1.1]
 * toluene.lowestExplosiveLimit; // => { value: 1.1, unit: '%' }
 * ```
 */
export function solventData(input: SolventDataInput): SolventData {
  const fn = 'solventData';
  const { solvent } = fields(fn, input);
  const record = onRecord();
  const found = record[readKey(fn, 'solvent', solvent, record)];
  const lowest = found.readings.reduce((a, b) => (limitOf(b) < limitOf(a) ? b : a));
  const said = <S extends Basis | Caution>(one: S, status: SolventReading['status']) =>
    status === 'memory' ? fromMemory(one) : one;
  const from = (id: string, source: string) => basis(id, `safety.${fn}`, 'as on record', source, { solvent });
  return {
    solvent,
    ...found,
    lowestExplosiveLimit: lowest.lowerExplosiveLimit,
    cautions: [
      said(
        hazard('thinner-ignites', lowest.source, {
          solvent,
          lowerExplosiveLimit: lowest.lowerExplosiveLimit,
        }),
        lowest.status,
      ),
    ],
    basis: [
      ...found.readings.map(({ source, status }) => said(from('readings', source), status)),
      ...(found.density
        ? [from('molarMass', 'atomic-weights'), fromMemory(from('density', 'solvent-handbooks'))]
        : []),
    ],
  };
}

function limitOf({ lowerExplosiveLimit }: SolventReading): number {
  return lowerExplosiveLimit.value;
}
