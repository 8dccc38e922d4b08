/** Hazards that more than one module raises, each with its reason in numbers and where these come from. */
import { fromMemory } from './basis.ts';
import type { Caution } from './caution.ts';
import { echo } from './echo.ts';
import type { Mass, Time, Volume } from './quantity.ts';

/** A caution about what may hurt somebody. */
export function hazard(code: Caution['code'], source: string, params: Caution['params'] = {}): Caution {
  return { code, severity: 'danger', params, source };
}

/** Solvent: its vapour ignites. */
export const THINNER_IGNITES = /* @__PURE__ */ hazard('thinner-ignites', 'niosh-npg-toluene', {
  solvent: 'toluene',
  lowerExplosiveLimit: { value: 1.1, unit: '%' },
});

/** Level of respirable silica at which the US rule begins. */
const ACTION_LEVEL = { actionLevel: { value: 25, unit: 'ug/m3' } };

/** Grinding, cutting and blasting of concrete. */
export const SILICA_DUST = /* @__PURE__ */ hazard('silica-dust', 'osha-1910-1053', ACTION_LEVEL);
/** Drilling for a test. */
export const TEST_DUST = /* @__PURE__ */ hazard('silica-dust-from-testing', 'osha-1910-1053', ACTION_LEVEL);
/** Quartz sand that is poured, thrown and swept. */
export const SAND_DUST = /* @__PURE__ */ hazard('thrown-sand-dust', 'osha-1910-1053', ACTION_LEVEL);

/** Grinding and sanding of resin before it is through. */
export const HALF_CURED_DUST = /* @__PURE__ */ hazard('half-cured-dust', 'hse-rr079');

/** Resin and hardener on the skin. */
export const SKIN_AND_EYES = /* @__PURE__ */ hazard('skin-and-eyes', 'hse-rr079');

/** Isocyanates in the air. */
export const ISOCYANATE_IN_THE_AIR = /* @__PURE__ */ hazard('isocyanate-in-the-air', 'niosh-npg-hdi', {
  mean: { value: 0.005, unit: 'ppm' },
  ceiling: { value: 0.02, unit: 'ppm' },
});
/** Isocyanates and water: each mole of water becomes one of carbon dioxide, 44.009 g for 18.015 g. */
export const ISOCYANATE_AND_WATER = /* @__PURE__ */ hazard('water-foams-isocyanate', 'stoichiometry', {
  water: { value: 1, unit: 'g' },
  carbonDioxide: { value: 2.44, unit: 'g' },
});

/** A fired heater in a room. */
export const CARBON_MONOXIDE = /* @__PURE__ */ fromMemory(
  /* @__PURE__ */ hazard('carbon-monoxide', 'osha-1910-1000', { limit: { value: 50, unit: 'ppm' } }),
);

/** Mixed resin in a pail: its pot life belongs to a mass. */
export function heatInThePail(potLife: Time, statedFor: Volume | Mass): Caution {
  return hazard('heat-in-the-pail', 'ufc-3-190-06', {
    potLife: echo(potLife),
    statedFor: echo(statedFor),
  });
}

/** Mixed resin that stays together. */
export const MIXED_RESIN_HEATS = /* @__PURE__ */ hazard('mixed-resin-heats', 'udel-epoxy-smoke', {
  mass: { value: 1.5, unit: 'lb' },
  temperature: { value: 900, unit: 'degF' },
});
