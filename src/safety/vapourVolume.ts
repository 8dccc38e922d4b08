import { DENSITY, MOLAR_MASS, PRESSURE, VOLUME } from '../core/dimensions.ts';
import { POSITIVE, type Limits } from '../core/limits.ts';
import { monotone } from '../core/monotone.ts';
import type { Density, MolarMass, Pressure, Quantity, Temperature, Volume } from '../core/quantity.ts';
import { fields, read, readOr, write } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';

/** Input of {@link vapourVolume}. */
export interface VapourVolumeInput<U extends VolumeUnit = VolumeUnit> {
  /** Liquid solvent that evaporates: solvent alone, not the coating that holds it. */
  readonly solvent: Volume;
  /** Density of the liquid. */
  readonly density: Density;
  /** Molar mass of the solvent. */
  readonly molarMass: MolarMass;
  /** Temperature of the air. */
  readonly temperature: Temperature;
  /** Pressure of the air. 1 atm, 101.325 kPa, where not given. */
  readonly pressure?: Pressure | undefined;
  /** Unit of the answer. */
  readonly unit: U;
}

/** Gas constant in J/(mol·K), exact since 2019. */
const R = 8.31446261815324;
const ATMOSPHERE_PA = 101325;
const AIR: Limits = { above: -100.0000000001, below: 200.0000000001, words: ' from −100 to 200 °C' };

/**
 * The vapour that a liquid solvent becomes: a gallon of it fills a closet.
 *
 * @formula
 * ```math
 * V = \frac{V_l \, \rho_l}{M} \cdot \frac{R \, T}{p}
 * ```
 * @units volume, density, molar mass, temperature, pressure; answers volume.
 * @validRange solvent, density, molarMass and pressure above 0; temperature from −100 to 200 °C; the vapour as an ideal gas,
 * thin in air.
 * @monotone solvent +, density +, molarMass -, temperature +, pressure -
 * @accuracy Exact for an ideal gas. Printed tables of solvents agree within 1.5 %; 387 ft³ to the pound-mole at 70 °F is
 * 386.79 rounded.
 * @source osha-1910-94, niosh-npg-toluene, gnu-units-2.22
 * @param input - Solvent, air, and the unit wanted.
 * @returns The volume of pure vapour in `input.unit`, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * safety
 *   .vapourVolume({
 *     solvent: { value: 1, unit: 'usgal' },
 *     density: { value: 0.87, unit: 'kg/l' },
 *     molarMass: { value: 92.1, unit: 'g/mol' },
 *     temperature: { value: 70, unit: 'degF' },
 *     unit: 'ft3',
 *   })
 *   .value.toFixed(1); // => '30.5'
 * ```
 */
export const vapourVolume = /* @__PURE__ */ monotone(
  { solvent: '+', density: '+', molarMass: '-', temperature: '+', pressure: '-' },
  <U extends VolumeUnit>(input: VapourVolumeInput<U>): Quantity<U> => {
    const fn = 'vapourVolume';
    const { solvent, density, molarMass, temperature, pressure, unit } = fields(fn, input);
    const solvent_m3 = read(fn, 'solvent', solvent, VOLUME, POSITIVE);
    const density_kgPerM3 = read(fn, 'density', density, DENSITY, POSITIVE);
    const molarMass_kgPerMol = read(fn, 'molarMass', molarMass, MOLAR_MASS, POSITIVE) / 1000;
    const air_K = readTemperature(fn, 'temperature', temperature, AIR) + 273.15;
    const pressure_Pa = readOr(ATMOSPHERE_PA, fn, 'pressure', pressure, PRESSURE, POSITIVE);
    const moles = (solvent_m3 * density_kgPerM3) / molarMass_kgPerMol;
    return write(fn, (moles * R * air_K) / pressure_Pa, VOLUME, unit);
  },
);
