import type { InputPath } from '../core/InputError.ts';
import { refuse } from '../core/read.ts';
import type { BaseError } from '../statistics/readingError.ts';
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

/** Steps for the slopes of the dew point, in K and as a part of the humidity. */
const STEP = 1e-3;

/**
 * The margin with its uncertainty: expanded by the GUM, or with all instruments off against the floor at once, which is
 * the worst case and not a likely one.
 */
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
  const { air, relativeHumidity, surface, coverage } = errors;
  if (coverage) {
    const off_K = coverage.expanded(
      [slope((step) => dewPointOf(fn, air_C + step, humidity, path), air, STEP), air],
      [
        slope((step) => dewPointOf(fn, air_C, humidity + step, path), relativeHumidity, STEP * humidity),
        relativeHumidity,
      ],
      [1, surface],
    );
    return { dewPoint_C, margin_K, down_K: off_K, up_K: off_K };
  }
  if (air.bound === 0 && relativeHumidity.bound === 0) {
    return { dewPoint_C, margin_K, down_K: surface.bound, up_K: surface.bound };
  }
  if (relativeHumidity.bound >= humidity) {
    const expected = 'smaller than the humidity that was read';
    const percent = Number((relativeHumidity.bound * 100).toPrecision(12));
    refuse(fn, 'conflict', ['relativeHumidityError'], expected, { value: percent, unit: '%' });
  }
  const wet_C = dewPointOf(fn, air_C + air.bound, Math.min(1, humidity + relativeHumidity.bound), path);
  const dry_C = dewPointOf(fn, air_C - air.bound, humidity - relativeHumidity.bound, path);
  return {
    dewPoint_C,
    margin_K,
    down_K: surface.bound + wet_C - dewPoint_C,
    up_K: surface.bound + dewPoint_C - dry_C,
  };
}

/** How fast the dew point moves, where that matters. */
function slope(dewPointAt: (step: number) => number, { uncertainty }: BaseError, step: number): number {
  return uncertainty > 0 ? (dewPointAt(step) - dewPointAt(-step)) / (2 * step) : 0;
}
