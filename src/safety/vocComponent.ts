/** One component of a mix, brought into masses and volumes so that these can be summed. */
import { DENSITY, MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { NOT_NEGATIVE, POSITIVE, type Limits } from '../core/limits.ts';
import type { Density, Mass, Share, Volume } from '../core/quantity.ts';
import { read, readOptional, refuse } from '../core/read.ts';
import { readName } from '../core/readPlain.ts';

/** A part, a thinner or water that goes into a mix, as its data sheet describes it. */
export interface VocComponent {
  /** Name. */
  readonly name: string;
  /** How much of it, by volume. */
  readonly volume?: Volume | undefined;
  /** How much of it, by mass. */
  readonly mass?: Mass | undefined;
  /** Density, where volume or mass is not given, or anything in it is given by mass. */
  readonly density?: Density | undefined;
  /** Solvent in a volume of it, without water and exempt solvent. */
  readonly voc?: Density | undefined;
  /** Share by mass of all that evaporates, water and exempt solvent with it; instead of `voc`. */
  readonly volatiles?: Share | undefined;
  /** Water in it, by volume. */
  readonly waterByVolume?: Share | undefined;
  /** Water in it, by mass; instead of `waterByVolume`. */
  readonly waterByMass?: Share | undefined;
  /** Solvent in it that the rule does not count, by volume. */
  readonly exemptByVolume?: Share | undefined;
  /** Solvent in it that the rule does not count, by mass; instead of `exemptByVolume`. */
  readonly exemptByMass?: Share | undefined;
  /** Density of that solvent, where it is given by mass or beside `volatiles`. */
  readonly exemptDensity?: Density | undefined;
  /** Solids by volume; given for every component where solvent for a volume of solids is wanted. */
  readonly solidsByVolume?: Share | undefined;
}

/** A component in kg and m³. */
export interface BaseVocComponent {
  readonly volume_m3: number;
  readonly voc_kg: number;
  /** Water and exempt solvent. */
  readonly excluded_m3: number;
  readonly exempt_m3: number;
  readonly solids_m3: number | undefined;
}

/** Nothing, a part or all of it. */
const UP_TO_WHOLE: Limits = { above: -5e-324, below: 1.000000000001, words: ' from 0 % to 100 %' };

/** Reads one component. */
export function readVocComponent(
  fn: string,
  component: VocComponent,
  water_kgPerM3: number | undefined,
  path: InputPath,
): BaseVocComponent {
  const missing = (key: string, why: string) => refuse(fn, 'missing', [...path, key], why, undefined);
  const density = (key: 'density' | 'exemptDensity') =>
    readOptional(fn, key, component[key], DENSITY, POSITIVE, path);
  const share = (key: `${'water' | 'exempt'}By${'Volume' | 'Mass'}` | 'volatiles' | 'solidsByVolume') =>
    readOptional(fn, key, component[key], SHARE, UP_TO_WHOLE, path);

  readName(fn, 'name', component.name, path);
  const { volume_m3, mass_kg } = amountOf(fn, component, density('density'), path);
  const wholeMass = () => mass_kg ?? missing('density', 'a density, as something is given by mass');

  /** Volume and mass of water or of exempt solvent. */
  const excluded = (what: 'water' | 'exempt', kgPerM3: number | undefined) => {
    const byVolume = share(`${what}ByVolume`);
    const byMass = share(`${what}ByMass`);
    if (byVolume !== undefined && byMass !== undefined) {
      const key = `${what}ByMass` as const;
      refuse(fn, 'conflict', [...path, key], `nothing beside ${what}ByVolume`, component[key]);
    }
    const where = what === 'water' ? ['waterDensity'] : [...path, 'exemptDensity'];
    const own = () => kgPerM3 ?? refuse(fn, 'missing', where, `the density of ${what}`, kgPerM3);
    if (byMass !== undefined) {
      const kg = byMass * wholeMass();
      return { m3: kg / own(), kg: () => kg };
    }
    const m3 = (byVolume ?? 0) * volume_m3;
    return { m3, kg: () => (m3 > 0 ? m3 * own() : 0) };
  };
  const water = excluded('water', water_kgPerM3);
  const exempt = excluded('exempt', density('exemptDensity'));
  const excluded_m3 = water.m3 + exempt.m3;
  if (excluded_m3 > volume_m3 * (1 + 1e-9)) {
    refuse(fn, 'conflict', path, 'water and exempt solvent within its volume', component);
  }

  const volatiles = share('volatiles');
  const voc_kgPerM3 = readOptional(fn, 'voc', component.voc, DENSITY, NOT_NEGATIVE, path);
  if (volatiles !== undefined && voc_kgPerM3 !== undefined) {
    refuse(fn, 'conflict', [...path, 'volatiles'], 'nothing beside voc', component.volatiles);
  }
  const left_kg = () => {
    const all_kg = (volatiles ?? missing('voc', 'solvent as voc or volatiles')) * wholeMass();
    const kg = all_kg - water.kg() - exempt.kg();
    if (kg >= -1e-9 * all_kg) return Math.max(0, kg);
    const why = 'no less than its water and exempt solvent';
    return refuse(fn, 'conflict', [...path, 'volatiles'], why, component.volatiles);
  };
  const voc_kg = voc_kgPerM3 === undefined ? left_kg() : voc_kgPerM3 * volume_m3;
  if (mass_kg !== undefined && voc_kg > mass_kg * (1 + 1e-9)) {
    refuse(fn, 'conflict', [...path, 'voc'], 'no more than the density of the whole', component.voc);
  }
  const solids = share('solidsByVolume');
  const solids_m3 = solids === undefined ? undefined : solids * volume_m3;
  if (solids_m3 !== undefined && solids_m3 + excluded_m3 > volume_m3 * (1 + 1e-9)) {
    const why = 'no more than water and exempt solvent leave room for';
    refuse(fn, 'conflict', [...path, 'solidsByVolume'], why, component.solidsByVolume);
  }
  return {
    volume_m3,
    voc_kg,
    excluded_m3,
    exempt_m3: exempt.m3,
    solids_m3,
  };
}

/** Volume and mass out of two of volume, mass and density; the volume alone will do. */
function amountOf(
  fn: string,
  { volume, mass, density }: VocComponent,
  kgPerM3: number | undefined,
  path: InputPath,
): { readonly volume_m3: number; readonly mass_kg: number | undefined } {
  const mass_kg = readOptional(fn, 'mass', mass, MASS, POSITIVE, path);
  if (mass_kg !== undefined && volume === undefined) {
    const known = kgPerM3 ?? read(fn, 'density', density, DENSITY, POSITIVE, path);
    return { volume_m3: mass_kg / known, mass_kg };
  }
  const volume_m3 = read(fn, 'volume', volume, VOLUME, POSITIVE, path);
  if (mass_kg !== undefined && kgPerM3 !== undefined) {
    refuse(fn, 'conflict', [...path, 'density'], 'nothing beside volume and mass', density);
  }
  return { volume_m3, mass_kg: mass_kg ?? (kgPerM3 === undefined ? undefined : kgPerM3 * volume_m3) };
}
