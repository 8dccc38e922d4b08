import type { TemperatureDifferenceUnit, TemperatureUnit } from '../core/unitCodes.ts';

/** The unit of a difference of one step on a temperature scale. */
export function differenceUnit(scale: string): TemperatureDifferenceUnit {
  return scale === 'degF' ? 'deltaF' : 'deltaC';
}

/** The scale whose steps are a difference of one. */
export function pointUnit(difference: string): TemperatureUnit {
  return difference === 'deltaF' ? 'degF' : 'degC';
}
