import { basis } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import { MASS } from '../core/dimensions.ts';
import { echo } from '../core/echo.ts';
import { CARBON_MONOXIDE } from '../core/hazards.ts';
import { POSITIVE } from '../core/limits.ts';
import type { Mass, Quantity } from '../core/quantity.ts';
import { fields, read, write } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import type { MassUnit } from '../core/unitCodes.ts';

/** What is burnt. Natural gas is taken as methane, kerosene and diesel as C12H23. */
export type HeaterFuel = 'propane' | 'butane' | 'natural gas' | 'kerosene' | 'diesel';

/** Input of {@link heaterExhaust}. */
export interface HeaterExhaustInput<U extends MassUnit = MassUnit> {
  /** What is burnt. */
  readonly fuel: HeaterFuel;
  /** How much of it is burnt inside the room. */
  readonly burnt: Mass;
  /** Unit of the answers. */
  readonly unit: U;
}

/** What a fired heater leaves in the room. */
export interface HeaterExhaust<U extends MassUnit = MassUnit> {
  /** Water, as vapour. */
  readonly water: Quantity<U>;
  /** Carbon dioxide. */
  readonly carbonDioxide: Quantity<U>;
  /** What belongs with the answer; never empty. */
  readonly cautions: readonly Caution[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

const CARBON = 12.011;
const HYDROGEN = 1.008;
const OXYGEN = 15.999;

/** Carbon and hydrogen atoms of a molecule. */
const ATOMS: Readonly<Record<HeaterFuel, readonly [carbon: number, hydrogen: number]>> = {
  propane: [3, 8],
  butane: [4, 10],
  'natural gas': [1, 4],
  kerosene: [12, 23],
  diesel: [12, 23],
};

/**
 * The water and carbon dioxide that a fired heater without a flue puts into the room.
 *
 * Both spoil a curing film: water condenses on it, and amine hardeners turn white and greasy with carbon dioxide.
 *
 * @formula
 * ```math
 * C_xH_y + \left(x + \tfrac{y}{4}\right) O_2 \to x\,CO_2 + \tfrac{y}{2}\,H_2O
 * ```
 * @units mass; answers masses.
 * @validRange burnt above 0; complete combustion, nothing let out through a flue.
 * @accuracy Exact for the pure fuel; natural gas, kerosene and diesel are mixtures, within about 3 %.
 * @source stoichiometry, ciaaw-atomic-weights
 * @param input - Fuel, how much is burnt, and the unit wanted.
 * @returns Water and carbon dioxide in `input.unit`, not rounded, with the cautions that go with them.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as climate from 'coating-math/climate';
 *
 * const cylinder = climate.heaterExhaust({ fuel: 'propane', burnt: { value: 20, unit: 'lb' }, unit: 'lb' });
 * cylinder.water.value.toFixed(1); // => '32.7'
 * cylinder.carbonDioxide.value.toFixed(1); // => '59.9'
 * ```
 */
export function heaterExhaust<U extends MassUnit>(input: HeaterExhaustInput<U>): HeaterExhaust<U> {
  const fn = 'heaterExhaust';
  const { fuel, burnt, unit } = fields(fn, input);
  const [carbon, hydrogen] = ATOMS[readKey(fn, 'fuel', fuel, ATOMS)];
  const burnt_kg = read(fn, 'burnt', burnt, MASS, POSITIVE);

  const perMole = burnt_kg / (carbon * CARBON + hydrogen * HYDROGEN);
  const water = write(fn, perMole * (hydrogen / 2) * (2 * HYDROGEN + OXYGEN), MASS, unit);
  const carbonDioxide = write(fn, perMole * carbon * (CARBON + 2 * OXYGEN), MASS, unit);

  const params = { fuel, burnt: echo(burnt), water, carbonDioxide };
  const assumption = `complete combustion of C${carbon}H${hydrogen}`;
  const by = (id: string, formula: string) =>
    basis(id, `climate.${fn}`, formula, 'stoichiometry', { fuel, burnt }, assumption);
  return {
    water,
    carbonDioxide,
    cautions: [
      { ...CARBON_MONOXIDE, params: { ...params, ...CARBON_MONOXIDE.params } },
      { code: 'blush-from-heater', severity: 'caution', params, source: 'sspc-blush-2005' },
    ],
    basis: [
      by('water', 'burnt · (y/2) · M(H2O) / M(CxHy)'),
      by('carbonDioxide', 'burnt · x · M(CO2) / M(CxHy)'),
    ],
  };
}
