import { takeOff, type TakeOff } from '../area/index.ts';
import { dewPoint, dewPointMargin } from '../climate/index.ts';
import type { Assessment } from '../core/assessment.ts';
import { attempt } from '../core/attempt.ts';
import { basis } from '../core/basis.ts';
import type { Basis } from '../core/caution.ts';
import { echo } from '../core/echo.ts';
import type { InputIssue } from '../core/InputError.ts';
import { refuseAll } from '../core/read.ts';
import type { Area, Share, Temperature } from '../core/quantity.ts';
import type { LikelyRange } from '../core/range.ts';
import type { VolumeUnit } from '../core/unitCodes.ts';
import { packsToBuy, type PacksToBuy } from '../order/index.ts';
import { sum } from '../units/index.ts';
import { checkFloor } from './checkFloor.ts';
import { cautionsOf, planCoat, type CoatPlan } from './coatPlan.ts';
import type { FloorDocument, Material, Readings } from './FloorDocument.ts';
import { gathered, type PlanCaution } from './planCaution.ts';
import { tooEarly, uncovered } from './sequence.ts';

/** A room as measured. */
export interface ZonePlan {
  /** Its name. */
  readonly name: string;
  /** Its area, piece by piece. */
  readonly takeOff: TakeOff;
}

/** What to buy of one material. */
export interface Purchase {
  /** Its name. */
  readonly material: string;
  /** What all its coats take. */
  readonly need: LikelyRange<VolumeUnit>;
  /** Share of the need that is bought on top, where the material asks for any. */
  readonly spare?: Share | undefined;
  /** The packs. */
  readonly packs: PacksToBuy;
}

/** A whole floor. */
export interface FloorPlan {
  /** Version of this form. */
  readonly schema: 1;
  /** Name of the job. */
  readonly name: string;
  /** The rooms as measured. */
  readonly zones: readonly ZonePlan[];
  /** Area of all rooms. */
  readonly area: Area;
  /** The coats, from the slab up. */
  readonly coats: readonly CoatPlan[];
  /** What to buy. */
  readonly purchases: readonly Purchase[];
  /** What was read on the floor. */
  readonly readings: Readings;
  /** Dew point of the air. */
  readonly dewPoint: Temperature;
  /** Whether the slab is far enough above it. */
  readonly dewPointMargin: Assessment;
  /** Every caution once, the gravest first. */
  readonly cautions: readonly PlanCaution[];
  /** Where the figures that stand in the plan itself come from; each part has its own. */
  readonly basis: readonly Basis[];
}

/**
 * Plans a floor: measures its rooms, finds what each coat takes and what to buy, splits it into parts, sizes the
 * batches to the pot life, and looks at the dew point.
 *
 * The hazards of mixing and laying are named for the product class of each material; where a material names none, the
 * plan says that it does not know them. Preparing the slab is not part of it: see `cautionsFor` for its dust.
 *
 * It composes the other modules and computes nothing of its own. Packs are bought for the highest need; parts and
 * batches are for the likely one.
 *
 * @formula
 * ```math
 * \text{rooms} \to A \to V \to n, \quad V \to v_A, v_B, \quad t_p(T) \to v_{max} \to \text{clock}
 * ```
 * @units whatever the document gives; answers in the units of the document.
 * @validRange as each function that it calls; see the floor document.
 * @accuracy As each function that it calls.
 * @source common-practice
 * @param document - A floor document; anything else is refused with everything that is wrong with it.
 * @returns The plan as plain data.
 * @throws An `InputError` with every issue of the document, each with its path.
 * @example
 * ```ts
 * import { attempt } from 'coating-math/core';
 * import { planFloor } from 'coating-math/plan';
 *
 * const result = attempt(planFloor, { schema: 1, name: 'Hall', zones: [] });
 * result.ok ? [] : result.issues.slice(0, 2).map(({ path, expected }) => [path.join('.'), expected]);
 * // => [['units', 'an object'], ['zones', 'a list of 1 or more']]
 * ```
 */
export function planFloor(document: unknown): FloorPlan {
  refuseAll(checkFloor(document));
  const floor = document as FloorDocument;
  const { units, readings } = floor;

  const zones = forEach('zones', floor.zones, ({ name, add, deduct }) => ({
    name,
    takeOff: takeOff({ add, deduct, deductFrom: floor.deductFrom, unit: units.area }),
  }));
  const coats = forEach('coats', floor.coats, (coat) => planCoat(coat, zones, floor));
  const purchases = forEach('materials', floor.materials, (material) =>
    purchase(material, coats, units.volume),
  ).flat();
  const { air, relativeHumidity, surface } = readings;
  const margin = dewPointMargin({ ...readings, surface, limit: floor.dewPointLimit });
  const areas = zones.map((zone) => zone.takeOff.net);
  return {
    schema: 1,
    name: floor.name,
    zones,
    area: sum({ quantities: areas, unit: units.area }),
    coats,
    purchases,
    readings: echo(readings),
    dewPoint: dewPoint({ air, relativeHumidity, unit: units.temperature }),
    dewPointMargin: margin,
    cautions: gathered([
      ...zones.map(({ name, takeOff }) => [name, [...uncovered(name, coats), ...takeOff.cautions]] as const),
      ...coats.map((coat, i) => [coat.name, [...tooEarly(coats, i), ...cautionsOf(coat)]] as const),
      ...purchases.map(({ material, packs }) => [material, packs.cautions] as const),
      ['readings', margin.cautions] as const,
    ]),
    basis: [
      basis('area', 'units.sum', 'area = sum of the zones', 'definition', { areas }),
      basis(
        'dewPoint',
        'climate.dewPoint',
        'p_s(dewPoint) = relativeHumidity · p_s(air)',
        'murphy-koop-2005',
        {
          air,
          relativeHumidity,
        },
      ),
    ],
  };
}

/** What to buy of a material for all its coats; nothing where no coat uses it. */
function purchase(material: Material, coats: readonly CoatPlan[], unit: VolumeUnit): Purchase[] {
  const volumes = coats.filter((coat) => coat.material === material.name).map(({ amount }) => amount.volume);
  if (volumes.length === 0) return [];
  const all = (end: 'low' | 'likely' | 'high') =>
    sum({ quantities: volumes.map((range) => range[end]), unit });
  const need = { low: all('low'), likely: all('likely'), high: all('high') };
  const { name, pack, spare, multiple } = material;
  const packs = packsToBuy({ name, need, pack, spare, multiple, unit });
  return [{ material: name, need, ...(spare && { spare: echo(spare) }), packs }];
}

/** Takes a step of the plan for each; what is still refused, such as a batch for every square inch, is laid to that one. */
function forEach<T, A>(
  key: 'zones' | 'coats' | 'materials',
  things: readonly T[],
  step: (thing: T) => A,
): A[] {
  const issues: InputIssue[] = [];
  const answers = things.flatMap((thing, i) => {
    const result = attempt(() => step(thing), undefined);
    if (result.ok) return [result.value];
    issues.push({ ...result.issues[0], function: 'planFloor', path: [key, i] });
    return [];
  });
  refuseAll(issues);
  return answers;
}
