/** A slab that follows the air around it, as if all of it had one temperature. */
import type { Temperature } from '../core/quantity.ts';
import { refuse } from '../core/read.ts';
import { readTemperature } from '../core/temperature.ts';
import { CLIMATE } from './limits.ts';

/** A way of the slab towards the temperature of the air. */
export interface SlabApproach {
  /** Temperature of the slab at the start. */
  readonly from: Temperature;
  /** Temperature later, between the start and the air. */
  readonly to: Temperature;
  /** Temperature of the air, which stays as it is. */
  readonly air: Temperature;
}

/** The time constants that a way takes; a way that never ends is refused. */
export function readApproach(fn: string, { from, to, air }: SlabApproach): number {
  const from_C = readTemperature(fn, 'from', from, CLIMATE);
  const to_C = readTemperature(fn, 'to', to, CLIMATE);
  const air_C = readTemperature(fn, 'air', air, CLIMATE);
  const constants = Math.log((air_C - from_C) / (air_C - to_C));
  // The slab may be there already but for round-off.
  if (constants > -1e-12 && constants < Infinity) return Math.max(0, constants);
  return refuse(
    fn,
    'conflict',
    ['to'],
    'on the way from the start to the air, which is never quite reached',
    to,
  );
}
