import { basis, fromMemory } from '../core/basis.ts';
import type { Basis, Caution } from '../core/caution.ts';
import {
  CARBON_MONOXIDE,
  HALF_CURED_DUST,
  hazard,
  ISOCYANATE_AND_WATER,
  ISOCYANATE_IN_THE_AIR,
  MIXED_RESIN_HEATS,
  SAND_DUST,
  SILICA_DUST,
  SKIN_AND_EYES,
  THINNER_IGNITES,
} from '../core/hazards.ts';
import { fields, refuse } from '../core/read.ts';
import { readKey, readList } from '../core/readPlain.ts';

/** A class of products by what they are made of. */
export type ProductClass =
  | 'epoxy'
  | 'polyurethane'
  | 'polyurethane cement'
  | 'polyaspartic'
  | 'polyurea'
  | 'methacrylate'
  | 'solvent-borne coating'
  | 'water-borne coating'
  | 'densifier'
  | 'cementitious topping';

/** Something that is done on a floor. */
export type FloorTask =
  | 'removing old coverings'
  | 'grinding'
  | 'milling'
  | 'shot-blasting'
  | 'drilling'
  | 'cutting joints'
  | 'sweeping'
  | 'heating'
  | 'mixing'
  | 'thinning'
  | 'laying'
  | 'broadcasting'
  | 'sanding between coats'
  | 'polishing'
  | 'cleaning tools'
  | 'disposing of leftovers';

/** Input of {@link cautionsFor}: a coat by its product class and the tasks that it takes, or either alone. */
export interface CautionsForInput {
  /** What is laid. */
  readonly product?: ProductClass | undefined;
  /** What is done. */
  readonly tasks?: readonly FloorTask[] | undefined;
}

/** Answer of {@link cautionsFor}. */
export interface CautionsFor {
  /** Every standing hazard once. */
  readonly cautions: readonly Caution[];
  /** Where they come from. */
  readonly basis: readonly Basis[];
}

const METHACRYLATE_VAPOUR = /* @__PURE__ */ fromMemory(
  /* @__PURE__ */ hazard('methacrylate-vapour', 'osha-1910-1000', { limit: { value: 100, unit: 'ppm' } }),
);
const PEROXIDE_HARDENER = /* @__PURE__ */ hazard('peroxide-hardener', 'common-practice');
const ALKALINE_LIQUID = /* @__PURE__ */ hazard('alkaline-liquid', 'common-practice', { from: 11, to: 12 });
const CEMENT_DUST = /* @__PURE__ */ hazard('cement-dust', 'common-practice', { ph: 12 });
const ASBESTOS_AND_LEAD = /* @__PURE__ */ hazard('asbestos-and-lead', 'common-practice');
const SOLVENT_RAGS = /* @__PURE__ */ hazard('solvent-rags', 'common-practice');
const TOOL_NOISE = /* @__PURE__ */ fromMemory(
  /* @__PURE__ */ hazard('tool-noise', 'osha-1910-95', { level: 85 }),
);
const SLIPPERY_FLOOR = /* @__PURE__ */ hazard('slippery-floor', 'common-practice');
const HEAVY_LOADS = /* @__PURE__ */ hazard('heavy-loads', 'common-practice', {
  mass: { value: 50, unit: 'lb' },
});

const ISOCYANATE = [SKIN_AND_EYES, ISOCYANATE_IN_THE_AIR, ISOCYANATE_AND_WATER, MIXED_RESIN_HEATS];

/** The hazards of each class. */
export const BY_PRODUCT: Readonly<Record<ProductClass, readonly Caution[]>> = {
  epoxy: [SKIN_AND_EYES, MIXED_RESIN_HEATS],
  polyurethane: ISOCYANATE,
  'polyurethane cement': [
    SKIN_AND_EYES,
    ISOCYANATE_IN_THE_AIR,
    ISOCYANATE_AND_WATER,
    MIXED_RESIN_HEATS,
    CEMENT_DUST,
  ],
  polyaspartic: ISOCYANATE,
  polyurea: ISOCYANATE,
  methacrylate: [METHACRYLATE_VAPOUR, PEROXIDE_HARDENER, SKIN_AND_EYES, MIXED_RESIN_HEATS],
  'solvent-borne coating': [THINNER_IGNITES, SKIN_AND_EYES],
  'water-borne coating': [SKIN_AND_EYES],
  densifier: [ALKALINE_LIQUID, SLIPPERY_FLOOR],
  'cementitious topping': [CEMENT_DUST],
};

const BY_TASK: Readonly<Record<FloorTask, readonly Caution[]>> = {
  'removing old coverings': [ASBESTOS_AND_LEAD, SILICA_DUST, TOOL_NOISE],
  grinding: [SILICA_DUST, ASBESTOS_AND_LEAD, TOOL_NOISE],
  milling: [SILICA_DUST, ASBESTOS_AND_LEAD, TOOL_NOISE],
  'shot-blasting': [SILICA_DUST, ASBESTOS_AND_LEAD, TOOL_NOISE],
  drilling: [SILICA_DUST, TOOL_NOISE],
  'cutting joints': [SILICA_DUST, TOOL_NOISE],
  sweeping: [SILICA_DUST],
  heating: [CARBON_MONOXIDE],
  mixing: [SKIN_AND_EYES, MIXED_RESIN_HEATS, HEAVY_LOADS],
  thinning: [THINNER_IGNITES, SKIN_AND_EYES],
  laying: [SKIN_AND_EYES, SLIPPERY_FLOOR],
  broadcasting: [SAND_DUST, SLIPPERY_FLOOR, HEAVY_LOADS],
  'sanding between coats': [HALF_CURED_DUST, TOOL_NOISE],
  polishing: [SILICA_DUST, TOOL_NOISE, SLIPPERY_FLOOR],
  'cleaning tools': [THINNER_IGNITES, SOLVENT_RAGS, SKIN_AND_EYES],
  'disposing of leftovers': [MIXED_RESIN_HEATS, SOLVENT_RAGS, SKIN_AND_EYES],
};

/**
 * The standing hazards of a coat, a class of products or a task, beside those that a calculation raises by its numbers.
 *
 * A list for a start: what is not in it is not ruled out, and the safety data sheet of the product names the rest.
 *
 * @formula
 * ```math
 * \text{product} \cup \text{tasks} \to \{\text{hazards}\}
 * ```
 * @units none.
 * @validRange a product class, a list of tasks, or both.
 * @accuracy General terms. No published figure: nothing is computed.
 * @source common-practice, hse-rr079, niosh-npg-hdi, hse-isocyanates, niosh-npg-toluene, osha-1910-1053, udel-epoxy-smoke, stoichiometry
 * @param input - The product class, the tasks, or both.
 * @returns Every hazard once, those of the product first.
 * @throws An `InputError` that names the field; `missing` where neither is given.
 * @example
 * ```ts
 * import * as safety from 'coating-math/safety';
 *
 * const coat = safety.cautionsFor({ product: 'epoxy', tasks: ['mixing', 'thinning'] });
 * coat.cautions.map(({ code }) => code);
 * // => ['skin-and-eyes', 'mixed-resin-heats', 'heavy-loads', 'thinner-ignites']
 * ```
 */
export function cautionsFor(input: CautionsForInput): CautionsFor {
  const fn = 'cautionsFor';
  const { product, tasks } = fields(fn, input);
  if (product === undefined && tasks === undefined) {
    refuse(fn, 'missing', ['product'], 'a product class, or tasks', product);
  }
  const ofProduct = product === undefined ? [] : BY_PRODUCT[readKey(fn, 'product', product, BY_PRODUCT)];
  const ofTasks =
    tasks === undefined
      ? []
      : readList(fn, 'tasks', tasks, 1).flatMap(
          (task, i) => BY_TASK[readKey(fn, i, task, BY_TASK, ['tasks'])],
        );
  return {
    cautions: [...new Set([...ofProduct, ...ofTasks])],
    basis: [
      basis('cautions', 'safety.cautionsFor', 'hazards of the product and of each task', 'common-practice', {
        product,
        tasks,
      }),
    ],
  };
}
