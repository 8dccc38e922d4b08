import { takeOff, type TakeOffInput } from '../area/index.ts';
import { dewPointMargin } from '../climate/index.ts';
import {
  AREA,
  LENGTH,
  MOLAR_ENERGY,
  SHARE,
  SPREAD_RATE,
  TEMPERATURE,
  TEMPERATURE_DIFFERENCE,
  TIME,
  VOLUME,
  WORK_RATE,
} from '../core/dimensions.ts';
import type { InputIssue, InputPath } from '../core/InputError.ts';
import { readInstant, type Instant } from '../core/instant.ts';
import { ABSOLUTE, NOT_NEGATIVE, PART, PART_OR_WHOLE, POSITIVE } from '../core/limits.ts';
import { read } from '../core/read.ts';
import { readKey, readNumber } from '../core/readPlain.ts';
import { readTimeRule, type TimeRule } from '../cure/timeRule.ts';
import { checkFilm } from '../film/coatVolume.ts';
import { checkFits, readPail } from '../mix/pail.ts';
import { readVolumeParts, type VolumePart } from '../mix/parts.ts';
import { BY_PRODUCT, type ProductClass } from '../safety/cautionsFor.ts';
import type { Crew, Readings } from './FloorDocument.ts';
import {
  all,
  choice,
  count,
  flag,
  isObject,
  issue,
  kindOf,
  list,
  name,
  named,
  namesIn,
  object,
  quantity,
  ranged,
  reader,
  temperature,
  text,
  together,
  unitOf,
  type Guard,
} from './guards.ts';
import { shape } from './shape.ts';

const length = quantity(LENGTH, POSITIVE);
const volume = quantity(VOLUME, POSITIVE);
const time = quantity(TIME, POSITIVE);
const point = temperature(ABSOLUTE);

/** What a room deducts against what it adds is known when all its pieces can be measured. */
const zone = all(
  object({ name, add: list(shape, 1) }, { deduct: list(shape, 0) }),
  together(({ add, deduct }: TakeOffInput) => takeOff({ add, deduct, unit: 'm2' })),
);

const timePoint = { temperature: point, time };
const stated = { ...timePoint, from: point, to: point };
const timeRule = all(
  kindOf('rule', {
    table: [{ points: list(object(timePoint), 2), between: choice('linear', 'arrhenius') }],
    halving: [{ ...stated, step: quantity(TEMPERATURE_DIFFERENCE, POSITIVE) }],
    arrhenius: [{ ...stated, activationEnergy: quantity(MOLAR_ENERGY, POSITIVE) }],
  }),
  reader((fn, key, rule: TimeRule, outer) => readTimeRule(fn, key, rule, outer)),
);

const share = reader((fn, key, value: number, outer) => readNumber(fn, key, value, POSITIVE, outer));
const ratio = reader((fn, _key, parts: VolumePart[], outer) => readVolumeParts(fn, parts, outer));
const product = reader((fn, key, value: ProductClass, outer) => readKey(fn, key, value, BY_PRODUCT, outer));
const material = object(
  {
    name,
    parts: all(named(list(object({ name, parts: share }), 1)), ratio),
    pack: volume,
    potLife: timeRule,
    statedFor: volume,
  },
  {
    product,
    multiple: count,
    spare: quantity(SHARE, NOT_NEGATIVE),
    induction: quantity(TIME, NOT_NEGATIVE),
    ratioTolerance: quantity(SHARE, PART),
  },
);

const depth = ranged(LENGTH, NOT_NEGATIVE);
const lost = ranged(SHARE, PART);
const held = ranged(VOLUME, NOT_NEGATIVE);
const amount = all(
  object(
    {},
    {
      wetThickness: ranged(LENGTH, POSITIVE),
      dryThickness: ranged(LENGTH, POSITIVE),
      solidsByVolume: ranged(SHARE, PART_OR_WHOLE),
      spreadRate: ranged(SPREAD_RATE, POSITIVE),
      pulledTight: flag,
      textureDepth: depth,
      porosity: depth,
      fills: held,
      transferLoss: lost,
      residue: lost,
      toolLoad: held,
      lostBatch: held,
    },
  ),
  together(checkFilm),
);

const instant = reader((fn, key, value: Instant, outer) => readInstant(fn, key, value, outer));
const coat = object(
  { name, material: name, amount, placingRate: quantity(WORK_RATE, POSITIVE) },
  { zones: list(name, 1), start: instant },
);

const crew = all(
  object({
    mixers: count,
    crews: count,
    mixTime: time,
    carryTime: quantity(TIME, NOT_NEGATIVE),
    usableShare: quantity(SHARE, PART_OR_WHOLE),
    pail: object({ diameter: length, height: length }, { topDiameter: length }),
    pailCapacity: volume,
    graduation: length,
    measuringStep: volume,
  }),
  together(({ pail, pailCapacity }: Crew) => {
    const wanted_m3 = read('planFloor', 'pailCapacity', pailCapacity, VOLUME, POSITIVE);
    checkFits('planFloor', readPail('planFloor', pail), wanted_m3);
  }),
);

const readings = all(
  object(
    { air: point, relativeHumidity: quantity(SHARE, PART_OR_WHOLE), surface: point, material: point },
    {
      airError: quantity(TEMPERATURE_DIFFERENCE, NOT_NEGATIVE),
      relativeHumidityError: quantity(SHARE, NOT_NEGATIVE),
      surfaceError: quantity(TEMPERATURE_DIFFERENCE, NOT_NEGATIVE),
    },
  ),
  together((given: Readings) => dewPointMargin({ ...given, limit: { value: 0, unit: 'deltaC' } })),
);

/** The names of things that are not there. */
const references: Guard = (value, path, issues) => {
  if (!isObject(value)) return;
  const { zones, materials, coats } = value;
  const known = (things: unknown, one: unknown, at: InputPath) => {
    const names = namesIn(things);
    if (typeof one !== 'string' || names.includes(one)) return;
    issues.push(issue('conflict', at, `one of the names ${names.join(', ')}`, one));
  };
  (Array.isArray(coats) ? coats : []).forEach((coat: unknown, i) => {
    if (!isObject(coat)) return;
    known(materials, coat.material, [...path, 'coats', i, 'material']);
    const covered: unknown[] = Array.isArray(coat.zones) ? coat.zones : [];
    covered.forEach((zone, j) => {
      known(zones, zone, [...path, 'coats', i, 'zones', j]);
    });
  });
};

const floor = all(
  object(
    {
      schema: choice(1),
      name,
      units: object({
        area: unitOf(AREA),
        film: unitOf(LENGTH),
        volume: unitOf(VOLUME),
        mark: unitOf(LENGTH),
        time: unitOf(TIME),
        temperature: unitOf(TEMPERATURE),
      }),
      zones: named(list(zone, 1)),
      materials: named(list(material, 1)),
      coats: named(list(coat, 1)),
      crew,
      readings,
      dewPointLimit: quantity(TEMPERATURE_DIFFERENCE, NOT_NEGATIVE),
    },
    { $schema: text, deductFrom: quantity(AREA, NOT_NEGATIVE) },
  ),
  references,
);

/**
 * Everything that is wrong with a floor document, each with its path; nothing where it can be planned.
 *
 * Fields that must fit together are looked at whatever else is wrong, and then find again what is wrong with each of
 * them. So what is wrong with a value is said once: nothing more about it, nor about what stands in it.
 */
export function checkFloor(document: unknown): InputIssue[] {
  const issues: InputIssue[] = [];
  floor(document, [], issues);
  const said = new Set<string>();
  return issues.filter(({ path }) => {
    const outer = Array.from({ length: path.length + 1 }, (_, i) => JSON.stringify(path.slice(0, i)));
    if (outer.some((one) => said.has(one))) return false;
    said.add(JSON.stringify(path));
    return true;
  });
}
