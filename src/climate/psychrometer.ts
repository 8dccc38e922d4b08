/** What reading a wet bulb and foretelling it share: how the air moves past the wick, and the pressure of that air. */
import { LENGTH, PRESSURE } from '../core/dimensions.ts';
import type { Length, Pressure } from '../core/quantity.ts';
import { read, refuse } from '../core/read.ts';
import { readKey } from '../core/readPlain.ts';
import { standardPressure, TROPOSPHERE } from './atmosphere.ts';
import { AIR_PRESSURE } from './limits.ts';

/**
 * How the air moves past the wet wick: drawn by a fan at about 5 m/s, swung by hand, by natural draught of about
 * 1 m/s, or hardly at all.
 */
export type Psychrometer = 'aspirated' | 'sling' | 'natural draught' | 'still air';

/** The instrument and the place where it is read. */
export interface WickConditions {
  /** How the air moves past the wick; between the first and the last lie 8 % of humidity. */
  readonly psychrometer: Psychrometer;
  /** Air pressure by a barometer, not reduced to sea level. Either this or the altitude. */
  readonly pressure?: Pressure | undefined;
  /** Height above sea level, for the usual pressure there. Either this or the pressure. */
  readonly altitude?: Length | undefined;
}

/** The psychrometer coefficient per kelvin, at a wet bulb in °C. */
const COEFFICIENT: Readonly<Record<Psychrometer, (wetBulb_C: number) => number>> = {
  aspirated: () => 0.000662,
  sling: (wetBulb_C) => 0.00066 * (1 + 0.00115 * wetBulb_C),
  'natural draught': () => 0.0008,
  'still air': () => 0.0012,
};

/** By how much the vapour pressure of the air lies below saturation at the wet bulb, in Pa. */
export type PressureDeficit = (air_C: number, wetBulb_C: number) => number;

/** Reads the instrument and the pressure of the air. */
export function readDeficit(
  fn: string,
  { psychrometer, pressure, altitude }: WickConditions,
): PressureDeficit {
  const coefficient = COEFFICIENT[readKey(fn, 'psychrometer', psychrometer, COEFFICIENT)];
  if (pressure !== undefined && altitude !== undefined) {
    refuse(fn, 'conflict', ['altitude'], 'nothing where the pressure is given', altitude);
  }
  const pressure_Pa =
    altitude === undefined
      ? read(fn, 'pressure', pressure, PRESSURE, AIR_PRESSURE)
      : standardPressure(read(fn, 'altitude', altitude, LENGTH, TROPOSPHERE));
  return (air_C, wetBulb_C) => coefficient(wetBulb_C) * pressure_Pa * (air_C - wetBulb_C);
}
