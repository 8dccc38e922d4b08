/** What the instruments may be off by. */
import { SHARE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import type { Share, TemperatureDifference } from '../core/quantity.ts';
import { readOr } from '../core/read.ts';
import { HUMIDITY_ERROR, TEMPERATURE_ERROR } from './limits.ts';

/** What the instruments may be off by, either way. A field left out is taken as exact. */
export interface InstrumentErrors {
  /** Of the air thermometer. */
  readonly airError?: TemperatureDifference | undefined;
  /** Of the hygrometer, in points of relative humidity. */
  readonly relativeHumidityError?: Share | undefined;
  /** Of the surface thermometer. */
  readonly surfaceError?: TemperatureDifference | undefined;
  /** Of the thermometer in the material. */
  readonly materialError?: TemperatureDifference | undefined;
}

/** The same in base units, by what is read. */
export interface BaseErrors {
  readonly air: number;
  readonly relativeHumidity: number;
  readonly surface: number;
  readonly material: number;
}

/** Reads the errors of the instruments. */
export function readErrors(fn: string, given: InstrumentErrors): BaseErrors {
  const temperature = (key: 'airError' | 'surfaceError' | 'materialError') =>
    readOr(0, fn, key, given[key], TEMPERATURE_DIFFERENCE, TEMPERATURE_ERROR);
  const { relativeHumidityError } = given;
  return {
    air: temperature('airError'),
    relativeHumidity: readOr(0, fn, 'relativeHumidityError', relativeHumidityError, SHARE, HUMIDITY_ERROR),
    surface: temperature('surfaceError'),
    material: temperature('materialError'),
  };
}
