import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { counted, shareOut } from '../core/decimal.ts';
import { DENSITY, MASS, SHARE, VOLUME } from '../core/dimensions.ts';
import { NOT_NEGATIVE, POSITIVE } from '../core/limits.ts';
import type { Density, Quantity, Share, Volume } from '../core/quantity.ts';
import { fields, read, readOptional, refuse, write } from '../core/read.ts';
import { readNames, readObject, readObjects } from '../core/readPlain.ts';
import type { MassUnit, VolumeUnit } from '../core/unitCodes.ts';
import { readVolumeParts } from './parts.ts';
import type { DenseVolumePart } from './weightRatio.ts';

/** Pigment, thickener, thinner, filler or sand that goes into the mix. */
export interface Addition {
  /** What it is. */
  readonly name: string;
  /** Its density; of sand and powder that of the grains themselves, not of the loose heap. */
  readonly density: Density;
  /** How much of it for the mass of all parts together: 5 % of pigment, 600 % of mortar sand. */
  readonly byMass?: Share | undefined;
  /** How much of it for the volume of all parts together; either this or `byMass`. */
  readonly byVolume?: Share | undefined;
}

/** Input of {@link batchWithAdditions}. */
export interface BatchWithAdditionsInput<V extends VolumeUnit = VolumeUnit, M extends MassUnit = MassUnit> {
  /** The whole batch, additions included. */
  readonly total: Volume;
  /** The ratio by volume with the density of each part. */
  readonly parts: readonly DenseVolumePart[];
  /** What else goes in. */
  readonly additions: readonly Addition[];
  /** Units of the answer. */
  readonly units: { readonly volume: V; readonly mass: M };
}

/** How much of one part or addition. */
export interface Measured<V extends VolumeUnit = VolumeUnit, M extends MassUnit = MassUnit> {
  /** Name of the part or of the addition. */
  readonly name: string;
  /** How much of it, for marks. */
  readonly volume: Quantity<V>;
  /** How much of it, for the scale. */
  readonly mass: Quantity<M>;
}

/** Answer of {@link batchWithAdditions}. */
export interface BatchWithAdditions<V extends VolumeUnit = VolumeUnit, M extends MassUnit = MassUnit> {
  /** The parts, in the order given. */
  readonly parts: readonly Measured<V, M>[];
  /** The additions, in the order given. With the parts their volumes add up to the total exactly. */
  readonly additions: readonly Measured<V, M>[];
  /** What belongs with the answer. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * How much of each part and of pigment, thickener, thinner or sand makes a batch of a given volume.
 *
 * @formula
 * ```math
 * x = \frac{V}{\sum_i r_i + \sum_k p_k \sum_i r_i \rho_i / \rho_k} \qquad V_i = r_i \, x
 * ```
 * @units volume, numbers of parts, densities, shares; answers volumes and masses.
 * @validRange total, parts and densities above 0; shares 0 or more, by mass or by volume for each addition.
 * @accuracy Volumes in decimals, adding up exactly. Volumes are taken to add, and sand to lie without voids.
 * No published figure was found worked out.
 * @source definition, common-practice
 * @param input - Total, parts, additions and the units wanted.
 * @returns Volume and mass of every part and addition, and the cautions.
 * @throws An `InputError` that names the field; `missing` for a part without density.
 * @example
 * ```ts
 * import * as mix from 'coating-math/mix';
 *
 * const answer = mix.batchWithAdditions({
 *   total: { value: 10, unit: 'l' },
 *   parts: [
 *     { name: 'A', parts: 3, density: { value: 1.1, unit: 'kg/l' } },
 *     { name: 'B', parts: 1, density: { value: 1, unit: 'kg/l' } },
 *   ],
 *   additions: [{ name: 'sand', density: { value: 2.65, unit: 'kg/l' }, byMass: { value: 100, unit: '%' } }],
 *   units: { volume: 'l', mass: 'kg' },
 * });
 * answer.additions[0]?.mass.value.toFixed(2); // => '7.65'
 * ```
 */
export function batchWithAdditions<V extends VolumeUnit, M extends MassUnit>(
  input: BatchWithAdditionsInput<V, M>,
): BatchWithAdditions<V, M> {
  const fn = 'batchWithAdditions';
  const given = fields(fn, input);
  const { total, parts, additions } = given;
  const units = readObject(fn, 'units', given.units);
  const total_m3 = read(fn, 'total', total, VOLUME, POSITIVE);
  const ratio = readVolumeParts(fn, parts);
  const volumes = ratio.weights.map((weight) => weight.toNumber());
  const densities = parts.map(({ density }, i) =>
    read(fn, 'density', density, DENSITY, POSITIVE, ['parts', i]),
  );
  const volume = volumes.reduce((sum, one) => sum + one);
  const mass = volumes.reduce((sum, one, i) => sum + one * (densities[i] ?? 0), 0);

  const list = readObjects(fn, 'additions', additions, 0);
  const names = [...ratio.names, ...readNames(fn, list, ['additions'])];
  const added = list.map((addition, i) => {
    const path = ['additions', i];
    const density = read(fn, 'density', addition.density, DENSITY, POSITIVE, path);
    const byMass = readOptional(fn, 'byMass', addition.byMass, SHARE, NOT_NEGATIVE, path);
    const byVolume = readOptional(fn, 'byVolume', addition.byVolume, SHARE, NOT_NEGATIVE, path);
    if ((byMass === undefined) === (byVolume === undefined)) {
      refuse(fn, 'conflict', path, 'one of byMass and byVolume', addition);
    }
    return { density, volume: byMass === undefined ? (byVolume ?? 0) * volume : (byMass * mass) / density };
  });
  const whole = counted(write(fn, total_m3, VOLUME, units.volume, ['units', 'volume']).value);
  // The last part takes what rounding leaves: an addition may be 0, and stays it.
  const weights = [...added.map((one) => one.volume), ...volumes];
  const shared = shareOut(
    whole,
    weights.map((weight) => counted(finite(fn, weight))),
  ).map((share) => share.toNumber());
  const shares = [...shared.slice(added.length), ...shared.slice(0, added.length)];
  const measured = names.map((name, i): Measured<V, M> => {
    const density = i < densities.length ? densities[i] : added[i - densities.length]?.density;
    const share = shares[i] ?? 0;
    const mass_kg = (share / whole.toNumber()) * total_m3 * (density ?? 0);
    return {
      name,
      volume: { value: share, unit: units.volume },
      mass: write(fn, mass_kg, MASS, units.mass, ['units', 'mass']),
    };
  });
  const additionsMeasured = measured.slice(densities.length);
  return {
    parts: measured.slice(0, densities.length),
    additions: additionsMeasured,
    cautions: additionsMeasured.map(({ name, mass }) => ({
      code: 'only-as-instructed',
      severity: 'danger',
      params: { name, mass },
      source: 'common-practice',
    })),
    basis: [
      basis(
        'parts',
        'mix.batchWithAdditions',
        'total · parts / (sum of parts + volumes added to them)',
        'definition',
        {
          total,
          parts: ratio.given.map((part, i) => ({ ...part, density: parts[i]?.density })),
          additions: list.map(({ name, density, byMass, byVolume }) => ({ name, density, byMass, byVolume })),
        },
        'volumes add, and sand lies without voids',
      ),
    ],
  };
}

/** A volume that a number can hold. */
function finite(fn: string, volume: number): number {
  return Number.isFinite(volume) ? volume : refuse(fn, 'too-large', ['additions'], 'finite', volume);
}
