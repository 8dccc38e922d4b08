import * as z from 'zod/mini';
import * as kinds from '../core/dimensions.ts';
import { attempt } from '../core/attempt.ts';
import { planFloor } from '../plan/planFloor.ts';
import { BY_PRODUCT, type ProductClass } from '../safety/cautionsFor.ts';
import {
  area,
  length,
  list,
  ranged,
  shape,
  share,
  temperature,
  temperatureDifference,
  time,
  timeRule,
  unitOf,
  volume,
  workRate,
} from './parts.ts';

const zone = z.strictObject({ name: z.string(), add: list(shape), deduct: z.optional(list(shape)) });

const material = z.strictObject({
  name: z.string(),
  product: z.optional(z.enum(Object.keys(BY_PRODUCT) as ProductClass[])),
  parts: list(z.strictObject({ name: z.string(), parts: z.number() })),
  pack: volume,
  multiple: z.optional(z.number()),
  spare: z.optional(share),
  potLife: timeRule,
  statedFor: volume,
  induction: z.optional(time),
  ratioTolerance: z.optional(share),
});

const depth = z.optional(ranged(kinds.LENGTH));
const lost = z.optional(ranged(kinds.SHARE));
const held = z.optional(ranged(kinds.VOLUME));
const coat = z.strictObject({
  name: z.string(),
  material: z.string(),
  zones: z.optional(list(z.string())),
  amount: z.strictObject({
    wetThickness: depth,
    dryThickness: depth,
    solidsByVolume: lost,
    spreadRate: z.optional(ranged(kinds.SPREAD_RATE)),
    pulledTight: z.optional(z.boolean()),
    textureDepth: depth,
    porosity: depth,
    fills: held,
    transferLoss: lost,
    residue: lost,
    toolLoad: held,
    lostBatch: held,
  }),
  placingRate: workRate,
  start: z.optional(z.string()),
});

const crew = z.strictObject({
  mixers: z.number(),
  crews: z.number(),
  mixTime: time,
  carryTime: time,
  usableShare: share,
  pail: z.strictObject({ diameter: length, topDiameter: z.optional(length), height: length }),
  pailCapacity: volume,
  graduation: length,
  measuringStep: volume,
});

const readings = z.strictObject({
  air: temperature,
  relativeHumidity: share,
  surface: temperature,
  material: temperature,
  airError: z.optional(temperatureDifference),
  relativeHumidityError: z.optional(share),
  surfaceError: z.optional(temperatureDifference),
});

/**
 * The form of a floor document, for a server or a form that checks with zod. It accepts exactly what `planFloor`
 * plans, because it asks it: behind the form of the data stand the checks of the library, each issue under its path.
 *
 * @example
 * ```ts
 * import { floorDocument } from 'coating-math/schema';
 *
 * const result = floorDocument.safeParse({ schema: 1, name: 'Hall' });
 * result.error?.issues[0]?.path; // => ['units']
 * ```
 */
export const floorDocument = z
  .strictObject({
    $schema: z.optional(z.string()),
    schema: z.literal(1),
    name: z.string(),
    units: z.strictObject({
      area: unitOf(kinds.AREA),
      film: unitOf(kinds.LENGTH),
      volume: unitOf(kinds.VOLUME),
      mark: unitOf(kinds.LENGTH),
      time: unitOf(kinds.TIME),
      temperature: unitOf(kinds.TEMPERATURE),
    }),
    zones: list(zone),
    deductFrom: z.optional(area),
    materials: list(material),
    coats: list(coat),
    crew,
    readings,
    dewPointLimit: temperatureDifference,
  })
  .check(({ value, issues }) => {
    const result = attempt(planFloor, value);
    for (const { code, path, expected, received } of result.ok ? [] : result.issues) {
      const message = `expected ${expected}, got ${received}`;
      issues.push({ code: 'custom', path: [...path], message, input: value, params: { code } });
    }
  });
