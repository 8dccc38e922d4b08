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
import { readNumber } from '../core/readPlain.ts';
import { readTimeRule, type TimeRule } from '../cure/timeRule.ts';
import { coatVolume } from '../film/index.ts';
import { checkFits, readPail, type Pail } from '../mix/pail.ts';
import { readVolumeParts, type VolumePart } from '../mix/parts.ts';
import type { Coat, Crew, Readings } from './FloorDocument.ts';
import {
  choice,
  count,
  flag,
  isObject,
  issue,
  kindOf,
  list,
  name,
  object,
  quantity,
  ranged,
  reader,
  refusals,
  temperature,
  inTurn,
  unitOf,
  unknownFields,
  type Guard,
} from './guards.ts';

const length = quantity(LENGTH, POSITIVE);
const volume = quantity(VOLUME, POSITIVE);
const time = quantity(TIME, POSITIVE);
const point = temperature(ABSOLUTE);

/** A list of shapes; what each needs is known to the take-off, which looks at them next. */
const shapes: Guard = (value, path, issues) => {
  if (Array.isArray(value)) return;
  issues.push(issue(value === undefined ? 'missing' : 'wrong-type', path, 'a list of shapes', value));
};

const zone = inTurn(object({ name, add: shapes }, { deduct: shapes }), (value, path, issues) => {
  const { add, deduct } = value as TakeOffInput;
  refusals(path, issues, () => takeOff({ add, deduct, unit: 'm2' }));
});

const timePoint = { temperature: point, time };
const stated = { ...timePoint, from: point, to: point };
const timeRule = inTurn(
  kindOf('rule', {
    table: object({
      rule: choice('table'),
      points: list(object(timePoint), 2),
      between: choice('linear', 'arrhenius'),
    }),
    halving: object({
      rule: choice('halving'),
      ...stated,
      step: quantity(TEMPERATURE_DIFFERENCE, POSITIVE),
    }),
    arrhenius: object({
      rule: choice('arrhenius'),
      ...stated,
      activationEnergy: quantity(MOLAR_ENERGY, POSITIVE),
    }),
  }),
  reader((fn, key, rule: TimeRule, outer) => readTimeRule(fn, key, rule, outer)),
);

/** A ratio by volume; its reader knows the list by the name of its field. */
const share = reader((fn, key, value: number, outer) => readNumber(fn, key, value, POSITIVE, outer));
const ratio = inTurn(
  list(object({ name, parts: share }), 1),
  reader((fn, _, parts: readonly VolumePart[], outer) => readVolumeParts(fn, parts, outer)),
);

const material = object(
  { name, parts: ratio, pack: volume, potLife: timeRule, statedFor: volume },
  {
    multiple: count,
    spare: quantity(SHARE, NOT_NEGATIVE),
    induction: quantity(TIME, NOT_NEGATIVE),
    ratioTolerance: quantity(SHARE, PART),
  },
);

const depth = ranged(LENGTH, NOT_NEGATIVE);
const lost = ranged(SHARE, PART);
const held = ranged(VOLUME, NOT_NEGATIVE);
const amount = inTurn(
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
  (value, path, issues) => {
    const area = { value: 1, unit: 'm2' } as const;
    refusals(path, issues, () =>
      coatVolume({ ...(value as Coat['amount']), area, unit: 'l', thicknessUnit: 'um' }),
    );
  },
);

const instant = reader((fn, key, value: Instant, outer) => readInstant(fn, key, value, outer));
const coat = object(
  { name, material: name, amount, placingRate: quantity(WORK_RATE, POSITIVE) },
  { zones: list(name, 1), start: instant },
);

const pail = inTurn(
  object({ diameter: length, height: length }, { topDiameter: length }),
  reader((fn, _, value: Pail, outer) => readPail(fn, value, outer)),
);
const crew = inTurn(
  object({
    mixers: count,
    crews: count,
    mixTime: time,
    carryTime: quantity(TIME, NOT_NEGATIVE),
    usableShare: quantity(SHARE, PART_OR_WHOLE),
    pail,
    pailCapacity: volume,
    graduation: length,
    measuringStep: volume,
  }),
  (value, path, issues) => {
    const { pail, pailCapacity } = value as Crew;
    const wanted_m3 = read('planFloor', 'pailCapacity', pailCapacity, VOLUME, POSITIVE);
    refusals(path, issues, () => {
      checkFits('planFloor', readPail('planFloor', pail), wanted_m3);
    });
  },
);

const readings = inTurn(
  object(
    { air: point, relativeHumidity: quantity(SHARE, PART_OR_WHOLE), surface: point, material: point },
    {
      airError: quantity(TEMPERATURE_DIFFERENCE, NOT_NEGATIVE),
      relativeHumidityError: quantity(SHARE, NOT_NEGATIVE),
      surfaceError: quantity(TEMPERATURE_DIFFERENCE, NOT_NEGATIVE),
    },
  ),
  (value, path, issues) => {
    const limit = { value: 0, unit: 'deltaC' } as const;
    refusals(path, issues, () => dewPointMargin({ ...(value as Readings), limit }));
  },
);

const fieldsOfFloor = object(
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
    zones: list(zone, 1),
    materials: list(material, 1),
    coats: list(coat, 1),
    crew,
    readings,
    dewPointLimit: quantity(TEMPERATURE_DIFFERENCE, NOT_NEGATIVE),
  },
  { deductFrom: quantity(AREA, NOT_NEGATIVE) },
);

/** The names of a list of things, wherever they have one. */
function namesIn(things: unknown): unknown[] {
  return Array.isArray(things)
    ? things.map((thing: unknown) => (isObject(thing) ? thing.name : undefined))
    : [];
}

/** Names that stand twice, and names of things that are not there; whatever else may be wrong. */
const references: Guard = (value, path, issues) => {
  if (!isObject(value)) return;
  const { zones, materials, coats } = value;
  for (const [key, things] of Object.entries({ zones, materials, coats })) {
    const names = namesIn(things);
    names.forEach((one, i) => {
      if (one === undefined || names.indexOf(one) === i) return;
      issues.push(issue('conflict', [...path, key, i, 'name'], 'a name of its own', one));
    });
  }
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

/** The fields of what is read by others: a quantity, a list of corners. */
const KNOWN_TO_READERS = [
  ['value', 'unit'],
  ['points', 'unit'],
];

/** Whatever else stands beside them, anywhere in the document. */
const strayFields: Guard = (value, path, issues) => {
  if (typeof value !== 'object' || value === null) return;
  if (isObject(value)) {
    const known = KNOWN_TO_READERS.find((fields) => fields.every((field) => field in value));
    if (known) {
      unknownFields(value, known, path, issues);
      return;
    }
  }
  for (const [key, inner] of Object.entries(value)) {
    strayFields(inner, [...path, Array.isArray(value) ? Number(key) : key], issues);
  }
};

/** Everything that is wrong with a floor document, each with its path; nothing where it can be planned. */
export function checkFloor(document: unknown): InputIssue[] {
  const issues: InputIssue[] = [];
  // What the second finds stands inside fields that the first knows; what it does not know may go on without end.
  inTurn(fieldsOfFloor, strayFields)(document, [], issues);
  references(document, [], issues);
  return issues;
}
