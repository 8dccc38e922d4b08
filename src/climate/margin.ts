import type { InputPath } from '../core/InputError.ts';
import { refuse } from '../core/read.ts';
import type { BaseErrors } from './instruments.ts';
import { dewPointOf } from './vapour.ts';

/** How far a surface lies above the dew point, and how far either way the instruments may be off with it. */
export interface Margin {
  readonly dewPoint_C: number;
  readonly margin_K: number;
  /** The true margin may be this much smaller: surface low, air and humidity high. */
  readonly down_K: number;
  /** The true margin may be this much larger. */
  readonly up_K: number;
}

/** Size of the temperatures that are subtracted, in K, for the round-off in a margin. */
export const MARGIN_SCALE = 300;

/** The margin with all instruments off against the floor at once: the worst case, not a likely one. */
export function marginOf(
  fn: string,
  air_C: number,
  humidity: number,
  surface_C: number,
  errors: BaseErrors,
  path?: InputPath,
): Margin {
  const dewPoint_C = dewPointOf(fn, air_C, humidity, path);
  const margin_K = surface_C - dewPoint_C;
  if (errors.air === 0 && errors.relativeHumidity === 0) {
    return { dewPoint_C, margin_K, down_K: errors.surface, up_K: errors.surface };
  }
  if (errors.relativeHumidity >= humidity) {
    const expected = 'smaller than the humidity that was read';
    const percent = Number((errors.relativeHumidity * 100).toPrecision(12));
    refuse(fn, 'conflict', ['relativeHumidityError'], expected, { value: percent, unit: '%' });
  }
  const wet_C = dewPointOf(fn, air_C + errors.air, Math.min(1, humidity + errors.relativeHumidity), path);
  const dry_C = dewPointOf(fn, air_C - errors.air, humidity - errors.relativeHumidity, path);
  return {
    dewPoint_C,
    margin_K,
    down_K: errors.surface + wet_C - dewPoint_C,
    up_K: errors.surface + dewPoint_C - dry_C,
  };
}
