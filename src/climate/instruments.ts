/** What the instruments may be off by. */
import type { Basis } from '../core/caution.ts';
import { SHARE, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import type { Share, TemperatureDifference } from '../core/quantity.ts';
import {
  halfWidthOf,
  readCoverage,
  readError,
  uncertaintyBasis,
  type BaseError,
  type Confidence,
  type Coverage,
  type ReadingError,
} from '../statistics/readingError.ts';
import { HUMIDITY_ERROR, TEMPERATURE_ERROR } from './limits.ts';

/** What the instruments may be off by, either way. A field left out is taken as exact. */
export interface InstrumentErrors extends Confidence {
  /** Of the air thermometer. */
  readonly airError?: ReadingError<TemperatureDifference> | undefined;
  /** Of the hygrometer, in points of relative humidity. */
  readonly relativeHumidityError?: ReadingError<Share> | undefined;
  /** Of the surface thermometer. */
  readonly surfaceError?: ReadingError<TemperatureDifference> | undefined;
  /** Of the thermometer in the material. */
  readonly materialError?: ReadingError<TemperatureDifference> | undefined;
}

/** The same in base units, by what is read. */
export interface BaseErrors {
  readonly air: BaseError;
  readonly relativeHumidity: BaseError;
  readonly surface: BaseError;
  readonly material: BaseError;
  /** How they are expanded; nothing where they are bounds. */
  readonly coverage: Coverage | undefined;
}

/** Reads the errors of the instruments. */
export function readErrors(fn: string, given: InstrumentErrors): BaseErrors {
  const coverage = readCoverage(fn, given);
  const temperature = (key: 'airError' | 'surfaceError' | 'materialError') =>
    readError(fn, key, given[key], coverage, TEMPERATURE_DIFFERENCE, TEMPERATURE_ERROR);
  const { relativeHumidityError: humidity } = given;
  return {
    air: temperature('airError'),
    relativeHumidity: readError(fn, 'relativeHumidityError', humidity, coverage, SHARE, HUMIDITY_ERROR),
    surface: temperature('surfaceError'),
    material: temperature('materialError'),
    coverage,
  };
}

/** Half the width that each reading has by itself. */
export function halfWidths({
  coverage,
  ...errors
}: BaseErrors): Readonly<Record<keyof typeof errors, number>> {
  const half = (of: keyof typeof errors) => halfWidthOf(errors[of], coverage);
  return {
    air: half('air'),
    relativeHumidity: half('relativeHumidity'),
    surface: half('surface'),
    material: half('material'),
  };
}

/** Says how the uncertainty of a verdict came about; `more` are errors that are none of the instruments. */
export function errorsBasis(fn: string, given: InstrumentErrors, more?: object): Basis[] {
  const { airError, relativeHumidityError, surfaceError, materialError } = given;
  return uncertaintyBasis(
    `climate.${fn}`,
    { airError, relativeHumidityError, surfaceError, materialError, ...more },
    given,
  );
}
