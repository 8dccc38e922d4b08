import type { TakeOff } from '../area/index.ts';
import { batchClock, largestBatch, type BatchClock, type LargestBatch } from '../batch/index.ts';
import { attempt } from '../core/attempt.ts';
import type { Caution } from '../core/caution.ts';
import { echo } from '../core/echo.ts';
import { hazard } from '../core/hazards.ts';
import type { Area, SpreadRate, Temperature, Volume } from '../core/quantity.ts';
import type { SpreadRateUnit } from '../core/unitCodes.ts';
import { potLife, type PotLifeAnswer } from '../cure/index.ts';
import { coatVolume, spreadRate, type CoatVolume } from '../film/index.ts';
import { splitByVolume, type VolumeSplit } from '../mix/index.ts';
import { cautionsFor } from '../safety/index.ts';
import { sum } from '../units/index.ts';
import type { Coat, Crew, FloorDocument, Material, PlanUnits } from './FloorDocument.ts';

/** One coat as planned. */
export interface CoatPlan {
  /** Its name. */
  readonly name: string;
  /** Name of its material. */
  readonly material: string;
  /** Names of the zones that it covers. */
  readonly zones: readonly string[];
  /** Area of those. */
  readonly area: Area;
  /** What it takes, low, likely and high, with each loss by its cause; and its wet film. */
  readonly amount: CoatVolume;
  /** Area that a mixed volume covers, all losses included: what a batch is good for. */
  readonly spreadRate: SpreadRate;
  /** The likely volume in its parts. */
  readonly split: VolumeSplit;
  /** The batches. Missing where the instructions give no pot life at the temperature of the material. */
  readonly batches?: CoatBatches | undefined;
  /** What belongs with the coat as a whole. */
  readonly cautions: readonly Caution[];
}

/** The batches of a coat. */
export interface CoatBatches {
  /** How long a batch stays usable. */
  readonly potLife: PotLifeAnswer;
  /** The largest batch that is down in time. */
  readonly largest: LargestBatch;
  /** Batch by batch, for the likely volume. Missing where no batch is down in time. */
  readonly clock?: BatchClock | undefined;
}

/** Plans one coat. */
export function planCoat(
  coat: Coat,
  zones: readonly { readonly name: string; readonly takeOff: TakeOff }[],
  { materials, units, crew, readings }: FloorDocument,
): CoatPlan {
  const material = materials.find(({ name }) => name === coat.material) as Material;
  const covered = zones.filter(({ name }) => coat.zones?.includes(name) ?? true);
  const area = sum({ quantities: covered.map(({ takeOff }) => takeOff.net), unit: units.area });
  const amount = coatVolume({ ...coat.amount, area, unit: units.volume, thicknessUnit: units.film });
  const volume = amount.volume.likely;
  const rate = spreadRate({ area, volume, unit: RATE_FOR[units.volume] ?? 'm2/l' });
  const batches = planBatches(coat, material, { area, volume, rate }, units, crew, readings.material);
  return {
    name: coat.name,
    material: coat.material,
    zones: covered.map(({ name }) => name),
    area,
    amount,
    spreadRate: rate,
    split: splitByVolume({ total: volume, parts: material.parts, unit: units.volume }),
    ...(batches && { batches }),
    cautions: [...(batches ? [] : [outsidePotLife(material, readings.material)]), ...hazardsOf(material)],
  };
}

/** The spread rate that goes with a unit of volume; metric where there is none. */
const RATE_FOR: Readonly<Partial<Record<string, SpreadRateUnit>>> = {
  usfloz: 'ft2/usgal',
  uspt: 'ft2/usgal',
  usqt: 'ft2/usgal',
  usgal: 'ft2/usgal',
  impfloz: 'ft2/impgal',
  imppt: 'ft2/impgal',
  impqt: 'ft2/impgal',
  impgal: 'ft2/impgal',
};

/** Sizes the batches of a coat and sets their clock; nothing outside the ends of the pot life. */
function planBatches(
  coat: Coat,
  material: Material,
  { area, volume, rate }: { area: Area; volume: Volume; rate: SpreadRate },
  units: PlanUnits,
  crew: Crew,
  at: Temperature,
): CoatBatches | undefined {
  const { potLife: rule, statedFor, induction, parts, ratioTolerance } = material;
  const life = attempt(potLife, { rule, statedFor, at, induction, unit: units.time });
  if (!life.ok) return undefined;
  const { mixers, crews, mixTime, carryTime, usableShare, pail, pailCapacity, graduation, measuringStep } =
    crew;
  const pace = {
    potLife: life.value.potLife,
    statedFor,
    usableShare,
    induction,
    mixTime,
    carryTime,
    placingRate: coat.placingRate,
    pailCapacity,
    units: { volume: units.volume, area: units.area, time: units.time },
  };
  const largest = largestBatch({ ...pace, spreadRate: rate, measuringStep });
  const answer = { potLife: life.value, largest };
  if (largest.volume.field.value === 0) return answer;
  const clock = batchClock({
    ...pace,
    area,
    volume,
    batchVolume: largest.volume.field,
    division: 'equal',
    parts,
    mixers,
    crews,
    marks: { pail, graduation, ratioTolerance, unit: units.mark },
    start: coat.start,
  });
  return { ...answer, clock };
}

function outsidePotLife(material: Material, temperature: Temperature): Caution {
  return {
    code: 'no-pot-life-at-this-temperature',
    severity: 'caution',
    params: { material: material.name, temperature: echo(temperature) },
    source: 'common-practice',
  };
}

/** What hurts whoever mixes and lays it: a plan without batches is mixed too, once the material is warm. */
function hazardsOf({ name, product }: Material): readonly Caution[] {
  const { cautions } = cautionsFor({ product, tasks: ['mixing', 'laying'] });
  return product
    ? cautions
    : [hazard('product-not-named', 'common-practice', { material: name }), ...cautions];
}

/** Every caution that belongs to a coat. */
export function cautionsOf({ amount, split, batches, cautions }: CoatPlan): readonly Caution[] {
  const parts = [amount, split, batches?.potLife, batches?.largest, batches?.clock];
  return [...cautions, ...parts.flatMap((part) => part?.cautions ?? [])];
}
