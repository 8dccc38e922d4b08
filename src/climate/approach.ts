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
  // But for round-off the slab is there already.
  if (Math.abs(to_C - from_C) < 1e-9) return 0;
  const constants = Math.log((air_C - from_C) / (air_C - to_C));
  if (constants > 0 && constants < Infinity) return constants;
  return refuse(
    fn,
    'conflict',
    ['to'],
    'on the way from the start to the air, which is never quite reached',
    to,
  );
}
