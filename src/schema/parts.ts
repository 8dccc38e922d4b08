/** The schemas of quantities, ranges and shapes, of which documents are made. */
import * as z from 'zod/mini';
import type { Dimension } from '../core/dimension.ts';
import * as kinds from '../core/dimensions.ts';

/** A quantity in the units of one kind. */
function quantity<U extends string>(dimension: Dimension<U>) {
  return z.strictObject({ value: z.number(), unit: unitOf(dimension) });
}

/** A unit code of one kind. */
export function unitOf<U extends string>({ exact }: Dimension<U>) {
  return z.enum(Object.keys(exact) as U[]);
}

/** What is wrong with one list is told so many times; a longer account helps nobody and can end the program. */
const MOST_ISSUES = 1000;
const fewIssues = z.check(({ issues }) => void issues.splice(MOST_ISSUES), { when: () => true });

/** A list that nobody may write to, as the types of the library have it. */
export function list<T extends z.core.SomeType>(entry: T) {
  const element = entry as unknown as z.core.$ZodType;
  const array = new z.ZodMiniArray({ type: 'array', element, checks: [fewIssues] });
  return z.readonly(array as unknown as z.ZodMiniArray<T>);
}

/** A quantity or a range of them. */
export function ranged<U extends string>(dimension: Dimension<U>) {
  const end = quantity(dimension);
  return z.union([end, z.strictObject({ low: end, likely: z.optional(end), high: end })]);
}

export const area = quantity(kinds.AREA);
export const length = quantity(kinds.LENGTH);
export const share = quantity(kinds.SHARE);
export const temperature = quantity(kinds.TEMPERATURE);
export const temperatureDifference = quantity(kinds.TEMPERATURE_DIFFERENCE);
export const time = quantity(kinds.TIME);
export const volume = quantity(kinds.VOLUME);
export const workRate = quantity(kinds.WORK_RATE);
const molarEnergy = quantity(kinds.MOLAR_ENERGY);

const piece = { name: z.optional(z.string()), count: z.optional(z.number()) };
const flat = {
  ...piece,
  slope: z.optional(share),
  outline: z.optional(length),
  open: z.optional(length),
};
const corners = z.strictObject({
  unit: unitOf(kinds.LENGTH),
  points: list(z.readonly(z.tuple([z.number(), z.number()]))),
});

/** A piece of a take-off, by its form. */
export const shape = z.discriminatedUnion('shape', [
  z.strictObject({ shape: z.literal('rectangle'), ...flat, length, width: length }),
  z.strictObject({ shape: z.literal('triangle'), ...flat, base: length, height: length }),
  z.strictObject({ shape: z.literal('triangle-by-sides'), ...flat, a: length, b: length, c: length }),
  z.strictObject({ shape: z.literal('trapezoid'), ...flat, base: length, top: length, height: length }),
  z.strictObject({
    shape: z.literal('quadrilateral'),
    ...flat,
    a: length,
    b: length,
    c: length,
    d: length,
    diagonal: length,
  }),
  z.strictObject({ shape: z.literal('circle'), ...flat, diameter: length }),
  z.strictObject({ shape: z.literal('ring'), ...flat, outerDiameter: length, innerDiameter: length }),
  z.strictObject({ shape: z.literal('segment'), ...flat, chord: length, rise: length }),
  z.strictObject({ shape: z.literal('polygon'), ...flat, corners, holes: z.optional(list(corners)) }),
  z.strictObject({
    shape: z.literal('stair'),
    ...piece,
    steps: z.number(),
    risers: z.optional(z.number()),
    tread: length,
    riser: length,
    nosingWrap: z.optional(length),
    landings: z.optional(z.number()),
    landing: z.optional(length),
    width: length,
  }),
  z.strictObject({ shape: z.literal('pad-sides'), ...piece, length, width: length, height: length }),
  z.strictObject({ shape: z.literal('wall'), ...piece, length, height: length, openings: z.optional(area) }),
  z.strictObject({
    shape: z.literal('cove'),
    ...piece,
    length,
    height: length,
    radius: length,
    toe: z.optional(length),
  }),
]);

const stated = { temperature, time, from: temperature, to: temperature };

/** How a time of a product depends on temperature. */
export const timeRule = z.discriminatedUnion('rule', [
  z.strictObject({
    rule: z.literal('table'),
    points: list(z.strictObject({ temperature, time })),
    between: z.enum(['linear', 'arrhenius']),
  }),
  z.strictObject({ rule: z.literal('halving'), ...stated, step: temperatureDifference }),
  z.strictObject({ rule: z.literal('arrhenius'), ...stated, activationEnergy: molarEnergy }),
]);
