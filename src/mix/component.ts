import { EQUIVALENT_WEIGHT, MASS } from '../core/dimensions.ts';
import type { InputPath } from '../core/InputError.ts';
import { POSITIVE } from '../core/limits.ts';
import type { EquivalentWeight, Mass } from '../core/quantity.ts';
import { read, readOptional } from '../core/read.ts';
import { readObjects } from '../core/readPlain.ts';

/** One substance of a blend that may react. */
export interface BlendComponent {
  /** How much of it is in the blend. */
  readonly mass: Mass;
  /** How much of it carries one reactive group; left out for filler, plasticiser and solvent, which carry none. */
  readonly equivalentWeight?: EquivalentWeight | undefined;
}

/** A blend in base units. */
export interface BaseBlend {
  readonly mass_kg: number;
  /** Reactive groups in all of it, in kg per g/eq: thousands of moles. */
  readonly groups: number;
}

/** Reads the components of a blend and adds them up: masses, and groups apart from them. */
export function readBlend(
  fn: string,
  key: string,
  components: readonly BlendComponent[] | undefined,
  path: InputPath = [],
): BaseBlend {
  let mass_kg = 0;
  let groups = 0;
  readObjects(fn, key, components, 1, path).forEach((component, i) => {
    const inside = [...path, key, i];
    const own_kg = read(fn, 'mass', component.mass, MASS, POSITIVE, inside);
    const { equivalentWeight } = component;
    const weight = readOptional(
      fn,
      'equivalentWeight',
      equivalentWeight,
      EQUIVALENT_WEIGHT,
      POSITIVE,
      inside,
    );
    mass_kg += own_kg;
    groups += weight === undefined ? 0 : own_kg / weight;
  });
  return { mass_kg, groups };
}
