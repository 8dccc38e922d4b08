import { SHARE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import type { Share, TemperatureDifference } from '../core/quantity.ts';
import { readOr, refuse } from '../core/read.ts';
import { HUMIDITY_ERROR, TEMPERATURE_ERROR } from './limits.ts';
import { dewPointOf } from './vapour.ts';

/** What the instruments may be off by, either way. A field left out is taken as exact. */
export interface InstrumentErrors {
  /** Of the air thermometer. */
  readonly airError?: TemperatureDifference | undefined;
  /** Of the hygrometer, in points of relative humidity. */
  readonly relativeHumidityError?: Share | undefined;
  /** Of the surface thermometer. */
  readonly surfaceError?: TemperatureDifference | undefined;
}

/** The same in base units. */
export interface BaseErrors {
  readonly air_K: number;
  readonly humidity: number;
  readonly surface_K: number;
}

/** Reads the errors of the instruments. */
export function readErrors(fn: string, given: InstrumentErrors): BaseErrors {
  const temperature = (key: 'airError' | 'surfaceError') =>
    readOr(0, fn, key, given[key], TEMPERATURE_DIFFERENCE, TEMPERATURE_ERROR);
  return {
    air_K: temperature('airError'),
    humidity: readOr(0, fn, 'relativeHumidityError', given.relativeHumidityError, SHARE, HUMIDITY_ERROR),
    surface_K: temperature('surfaceError'),
  };
}

/** How far a surface lies above the dew point, in K, and how far either way the instruments may be off with it. */
export interface Margin {
  readonly dewPoint_C: number;
  readonly margin_K: number;
  /** The true margin may be this much smaller: surface low, air and humidity high. */
  readonly down_K: number;
  /** The true margin may be this much larger. */
  readonly up_K: number;
}

/** The margin with all instruments off against each other at once: the worst case, not a likely one. */
export function marginOf(
  fn: string,
  air_C: number,
  humidity: number,
  surface_C: number,
  errors: BaseErrors,
): Margin {
  const dewPoint_C = dewPointOf(fn, air_C, humidity);
  const margin_K = surface_C - dewPoint_C;
  if (errors.air_K === 0 && errors.humidity === 0) {
    return { dewPoint_C, margin_K, down_K: errors.surface_K, up_K: errors.surface_K };
  }
  if (errors.humidity >= humidity) {
    refuse(fn, 'conflict', ['relativeHumidityError'], 'smaller than the humidity read', errors.humidity);
  }
  const wet_C = dewPointOf(fn, air_C + errors.air_K, Math.min(1, humidity + errors.humidity));
  const dry_C = dewPointOf(fn, air_C - errors.air_K, humidity - errors.humidity);
  return {
    dewPoint_C,
    margin_K,
    down_K: errors.surface_K + wet_C - dewPoint_C,
    up_K: errors.surface_K + dewPoint_C - dry_C,
  };
}
