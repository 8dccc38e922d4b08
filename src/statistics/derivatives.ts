/** How a formula answers when its inputs are off a little. */
import { attempt, type Attempt } from '../core/attempt.ts';
import type { Quantity } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';
import type { Slot } from './slots.ts';

/** The answer with some inputs moved by so much each; nothing where the formula refuses. */
export type At = (...moves: readonly (readonly [Slot, number])[]) => number | undefined;

/** Calls a formula on a copy of its input with uncertain quantities moved. */
export function moving(formula: (input: never) => Quantity, plain: object): At {
  return (...moves) => {
    for (const [slot, by] of moves) slot.quantity.value += by;
    const result: Attempt<Quantity> = attempt(formula, plain);
    for (const [slot] of moves) slot.quantity.value = slot.value;
    return result.ok ? result.value.value : undefined;
  };
}

/** Steps as a part of the value: neither lost in round-off nor where a formula bends. */
const FINEST = 1e-5;
const COARSEST = 1e-3;

/**
 * The sensitivity of the answer to one input, by central differences, or by one-sided ones at the end of its valid
 * range; two widths of step, of which the error of the wider is taken off.
 */
export function sensitivityOf(fn: string, at: At, here: number, slot: Slot): number {
  const size = Math.abs(slot.value);
  const step =
    size > 0
      ? Math.min(Math.max(slot.uncertainty, FINEST * size), COARSEST * size)
      : slot.uncertainty || 1e-3;
  const central = (h: number) => slope(at([slot, h]), at([slot, -h]), 2 * h);
  const oneSided = (h: number) => {
    const [near, far] = [at([slot, h]), at([slot, 2 * h])];
    return near === undefined || far === undefined ? undefined : (4 * near - far - 3 * here) / (2 * h);
  };
  return (
    improved(central, step) ??
    improved(oneSided, step) ??
    improved(oneSided, -step) ??
    refuse(fn, 'out-of-range', slot.path, 'with room about it in which the formula answers', slot.quantity)
  );
}

function slope(up: number | undefined, down: number | undefined, run: number): number | undefined {
  return up === undefined || down === undefined ? undefined : (up - down) / run;
}

/** Richardson's extrapolation of a difference whose error grows with the square of its step. */
function improved(difference: (h: number) => number | undefined, step: number): number | undefined {
  const [wide, narrow] = [difference(step), difference(step / 2)];
  return wide === undefined || narrow === undefined ? undefined : (4 * narrow - wide) / 3;
}

/**
 * What bending adds to the variance of the answer for independent inputs (GUM 5.1.2, note), with steps of one standard
 * uncertainty; nothing where such a step leaves the range of the formula. `parts` are the sensitivities times the
 * uncertainties.
 */
export function bendingVariance(
  at: At,
  here: number,
  slots: readonly Slot[],
  parts: readonly number[],
): number | undefined {
  const moved = (i: number, times: number): readonly [Slot, number] => {
    const slot = slots[i] as Slot;
    return [slot, times * slot.uncertainty];
  };
  let variance = 0;
  for (const i of slots.keys()) {
    for (const j of slots.keys()) {
      const term = i === j ? alone(i) : together(i, j);
      if (term === undefined) return undefined;
      variance += term;
    }
  }
  return variance;

  function alone(i: number): number | undefined {
    const [far, up, down, away] = [2, 1, -1, -2].map((times) => at(moved(i, times)));
    if (far === undefined || up === undefined || down === undefined || away === undefined) return undefined;
    const second = up + down - 2 * here;
    const third = (far - 2 * up + 2 * down - away) / 2;
    return (second * second) / 2 + (parts[i] as number) * third;
  }
  function together(i: number, j: number): number | undefined {
    const [uu, ud, du, dd] = [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ].map(([a = 0, b = 0]) => at(moved(i, a), moved(j, b)));
    const [up, down] = [at(moved(i, 1)), at(moved(i, -1))];
    if (uu === undefined || ud === undefined || du === undefined || dd === undefined) return undefined;
    if (up === undefined || down === undefined) return undefined;
    const second = (uu - ud - du + dd) / 4;
    const third = (uu + ud - 2 * up - (du + dd - 2 * down)) / 2;
    return (second * second) / 2 + (parts[i] as number) * third;
  }
}
