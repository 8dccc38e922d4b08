import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { DENSITY, MASS, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE } from '../core/limits.ts';
import type { Density, Quantity, Volume } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readName, readObjects } from '../core/readPlain.ts';
import type { MassUnit } from '../core/unitCodes.ts';
import { solventInTheAir } from './solventInTheAir.ts';

/** A coat, or anything else that is laid or used up and gives off solvent. */
export interface EmittingCoat {
  /** Name. */
  readonly name: string;
  /** Solvent in a volume of what is laid: the actual figure, never the one less water. */
  readonly voc: Density;
  /** Volume laid. */
  readonly volume: Volume;
}

/** Input of {@link vocEmitted}. */
export interface VocEmittedInput<U extends MassUnit = MassUnit> {
  /** Everything on the floor that gives off solvent; solvent for cleaning tools with it. */
  readonly coats: readonly EmittingCoat[];
  /** Unit of the answers. */
  readonly unit: U;
}

/** Answer of {@link vocEmitted}. */
export interface VocEmitted<U extends MassUnit = MassUnit> {
  /** What each gives off. */
  readonly coats: readonly { readonly name: string; readonly emitted: Quantity<U> }[];
  /** What all of them give off together. */
  readonly emitted: Quantity<U>;
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
}

/**
 * How much solvent a whole floor puts into the air.
 *
 * @formula
 * ```math
 * m = \sum_i C_i \, V_i
 * ```
 * @units densities, volumes; answers masses.
 * @validRange every voc and volume 0 or more.
 * @accuracy Exact up to round-off; all of the solvent is taken to leave the film.
 * @source metal-finishing-2013
 * @param input - The coats and the unit wanted.
 * @returns The solvent of each coat and of all in `input.unit`, not rounded, and the caution.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * safety.vocEmitted({
 *   coats: [
 *     { name: 'primer', voc: { value: 50, unit: 'g/l' }, volume: { value: 40, unit: 'l' } },
 *     { name: 'top coat', voc: { value: 250, unit: 'g/l' }, volume: { value: 20, unit: 'l' } },
 *   ],
 *   unit: 'kg',
 * }).emitted; // => { value: 7, unit: 'kg' }
 * ```
 */
export function vocEmitted<U extends MassUnit>(input: VocEmittedInput<U>): VocEmitted<U> {
  const fn = 'vocEmitted';
  const { coats, unit } = fields(fn, input);
  const each = readObjects(fn, 'coats', coats, 1).map(({ name, voc, volume }, i) => {
    const path = ['coats', i];
    return {
      name: readName(fn, 'name', name, path),
      emitted_kg:
        read(fn, 'voc', voc, DENSITY, NOT_NEGATIVE, path) *
        read(fn, 'volume', volume, VOLUME, NOT_NEGATIVE, path),
    };
  });
  const mass = (kg: number) => write(fn, kg, MASS, unit);
  const emitted = mass(each.reduce((sum, { emitted_kg }) => sum + emitted_kg, 0));
  return {
    coats: each.map(({ name, emitted_kg }) => ({ name, emitted: mass(emitted_kg) })),
    emitted,
    cautions: emitted.value > 0 ? [solventInTheAir(emitted)] : [],
    basis: [basis('emitted', 'safety.vocEmitted', 'sum of voc · volume', 'metal-finishing-2013', { coats })],
  };
}
