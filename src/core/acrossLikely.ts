import { across, type AcrossAnswer, type AcrossInput } from './across.ts';
import { inside } from './inside.ts';
import { monotone, type Direction } from './monotone.ts';
import type { Quantity } from './quantity.ts';
import { isRange, middleOf, type LikelyRange, type Range } from './range.ts';

/** One value of every input that may be a range. */
export type Values<I> = { readonly [K in keyof I]: Exclude<I[K], Range> };

/** The same input where every range has a likely value; the input itself where every range has one. */
export function withMiddles<I extends object>(input: I): I {
  const middles = Object.entries(input).flatMap(([key, value]: [string, unknown]) => {
    if (!isRange(value) || value.likely !== undefined) return [];
    const { low, high } = value as Partial<Range>;
    // What is no range at all is refused where it is read.
    if (typeof low?.value !== 'number' || typeof high?.value !== 'number') return [];
    return [[key, { ...value, likely: middleOf(value) }]];
  });
  return middles.length > 0 ? { ...input, ...(Object.fromEntries(middles) as Partial<I>) } : input;
}

/** What a decision says of its likely values where it had to take the middle of a range. */
export const MIDDLE_TAKEN = 'likely is the middle of a range that gives none';

/** Runs one formula of a decision over its input after `withMiddles`; a refusal names the decision. */
export function acrossLikely<I extends object, U extends string>(
  fn: string,
  directions: Readonly<Partial<Record<keyof I, Direction>>>,
  formula: (values: Values<I>) => Quantity<U>,
  input: I,
): LikelyRange<U> & Pick<AcrossAnswer, 'driver' | 'enclosure'> {
  const declared = monotone(directions, (values: Values<I>) => formula(values));
  const answer = inside(fn, [], () =>
    across(declared, input as unknown as AcrossInput<Values<I>> & { unit?: U }),
  );
  return { ...answer, likely: answer.likely as Quantity<U> };
}
