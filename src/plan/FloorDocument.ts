import type { Shape } from '../area/index.ts';
import type { Instant } from '../core/instant.ts';
import type {
  Area,
  Length,
  Share,
  Temperature,
  TemperatureDifference,
  Time,
  Volume,
  WorkRate,
} from '../core/quantity.ts';
import type { AreaUnit, LengthUnit, TemperatureUnit, TimeUnit, VolumeUnit } from '../core/unitCodes.ts';
import type { TimeRule } from '../cure/index.ts';
import type { CoatVolumeInput } from '../film/index.ts';
import type { Pail, VolumePart } from '../mix/index.ts';
import type { ProductClass } from '../safety/index.ts';

/** The units in which a plan answers. What goes in may be in any unit. */
export interface PlanUnits {
  /** Areas. */
  readonly area: AreaUnit;
  /** Films. */
  readonly film: LengthUnit;
  /** Volumes. */
  readonly volume: VolumeUnit;
  /** Marks on the pail. */
  readonly mark: LengthUnit;
  /** Times. */
  readonly time: TimeUnit;
  /** Temperatures. */
  readonly temperature: TemperatureUnit;
}

/** A room or a part of one. */
export interface Zone {
  /** What it is called on the drawing; no other zone has this name. */
  readonly name: string;
  /** The pieces that it is made of. */
  readonly add: readonly Shape[];
  /** What is not coated in it. */
  readonly deduct?: readonly Shape[] | undefined;
}

/** A resin as its instructions describe it. Nothing of it has a default. */
export interface Material {
  /** What the plan calls it; no other material has this name. No brand is needed. */
  readonly name: string;
  /** What it is made of, so that the plan names the hazards of it. Where not given it says that it does not know them. */
  readonly product?: ProductClass | undefined;
  /** Its parts and their ratio by volume, in pouring order. */
  readonly parts: readonly VolumePart[];
  /** Mixed volume of one pack. */
  readonly pack: Volume;
  /** Packs are sold in multiples of this many. */
  readonly multiple?: number | undefined;
  /** Share of the need to be bought on top. */
  readonly spare?: Share | undefined;
  /** How its pot life depends on temperature. */
  readonly potLife: TimeRule;
  /** Volume for which the pot life is stated. */
  readonly statedFor: Volume;
  /** Stand time after mixing that the instructions ask for before use. */
  readonly induction?: Time | undefined;
  /** How far a part may be off against the first. */
  readonly ratioTolerance?: Share | undefined;
}

/** One coat, in the order in which they are laid. */
export interface Coat {
  /** What it is called; no other coat has this name. */
  readonly name: string;
  /** Name of its material. */
  readonly material: string;
  /** Names of the zones that it covers; all of them where not given. */
  readonly zones?: readonly string[] | undefined;
  /** What it takes: the film or the rate, and the losses. */
  readonly amount: Omit<CoatVolumeInput, 'area' | 'unit' | 'thicknessUnit'>;
  /** Area that the hands on one batch place in a time. */
  readonly placingRate: WorkRate;
  /** Moment at which its first batch is mixed. */
  readonly start?: Instant | undefined;
}

/** Who mixes and places, and with what. */
export interface Crew {
  /** How many batches can be mixed at the same time. */
  readonly mixers: number;
  /** How many batches are placed at the same time, each by hands of its own. */
  readonly crews: number;
  /** Time to measure and mix one batch. */
  readonly mixTime: Time;
  /** Time to carry it to the edge and pour it. */
  readonly carryTime: Time;
  /** Share of the pot life in which a batch must be down. */
  readonly usableShare: Share;
  /** The pail in which batches are measured. */
  readonly pail: Pail;
  /** What is filled into it at most, so that it can be mixed. */
  readonly pailCapacity: Volume;
  /** Smallest step that can be read on it. */
  readonly graduation: Length;
  /** Smallest step in which the size of a batch is chosen. */
  readonly measuringStep: Volume;
}

/** What was read on the floor before laying. */
export interface Readings {
  /** Air close to the floor. */
  readonly air: Temperature;
  /** Relative humidity of that air. */
  readonly relativeHumidity: Share;
  /** The slab at its coldest place. */
  readonly surface: Temperature;
  /** The material in the pail. */
  readonly material: Temperature;
  /** What the air thermometer may be off by, either way. */
  readonly airError?: TemperatureDifference | undefined;
  /** What the hygrometer may be off by, either way, in points of relative humidity. */
  readonly relativeHumidityError?: Share | undefined;
  /** What the surface thermometer may be off by, either way. */
  readonly surfaceError?: TemperatureDifference | undefined;
}

/** A floor to be planned: what `planFloor` reads. Plain JSON. */
export interface FloorDocument {
  /** Address of the JSON Schema of this form, for editors. Nothing is done with it. */
  readonly $schema?: string | undefined;
  /** Version of this form. */
  readonly schema: 1;
  /** What the job is called. */
  readonly name: string;
  /** Units of the answers. */
  readonly units: PlanUnits;
  /** The rooms. */
  readonly zones: readonly Zone[];
  /** Size from which a single piece is deducted; every piece where not given. */
  readonly deductFrom?: Area | undefined;
  /** The resins. */
  readonly materials: readonly Material[];
  /** The coats, from the slab up. */
  readonly coats: readonly Coat[];
  /** The crew and its pail. */
  readonly crew: Crew;
  /** Temperatures and humidity. */
  readonly readings: Readings;
  /** Margin of the slab over the dew point that the instructions or the contract ask for. */
  readonly dewPointLimit: TemperatureDifference;
}
