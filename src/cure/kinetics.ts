import { MOLAR_ENERGY, RATE_CONSTANT, TEMPERATURE_DIFFERENCE } from '../core/dimensions.ts';
import { ABSOLUTE, NOT_NEGATIVE, POSITIVE, type Limits } from '../core/limits.ts';
import type { MolarEnergy, RateConstant, Temperature, TemperatureDifference } from '../core/quantity.ts';
import { read, readOr } from '../core/read.ts';
import { readNumber, readObject } from '../core/readPlain.ts';
import { readTemperature } from '../core/temperature.ts';
import { arrheniusFactor } from './arrheniusFactor.ts';

/** The rate equation of a cure: dα/dt = (k1 + k2·αᵐ)·(1 − α)ⁿ. Without k2 it is a reaction of the order n. */
export interface Kinetics {
  /** Rate constant of the start. */
  readonly k1: RateConstant;
  /** Rate constant of what the products of the reaction speed up. None where not given. */
  readonly k2?: RateConstant | undefined;
  /** Order in what has reacted, of the part with k2. 1 where not given. */
  readonly m?: number | undefined;
  /** Order in what is left. */
  readonly n: number;
  /** Heat that stays in the mix. The temperature stays as it is where not given. */
  readonly heating?: SelfHeating | undefined;
}

/** A mix that keeps all its heat: its temperature rises with the degree of cure. */
export interface SelfHeating {
  /** Temperature at the start, for which the rate constants are stated. */
  readonly start: Temperature;
  /** How much it warms by complete reaction: the answer of `adiabaticRise`. */
  readonly rise: TemperatureDifference;
  /** How strongly the reaction speeds up with temperature. */
  readonly activationEnergy: MolarEnergy;
}

const ORDER: Limits = { above: -5e-324, below: 20.0000000001, words: ' from 0 to 20' };

/** The degree of cure that belongs to u = −ln(1 − α), in which the curve has no steep end. */
export function degreeOf(u: number): number {
  return -Math.expm1(-u);
}

/** Reads a rate equation; answers du/dt over u = −ln(1 − α), in 1/s. */
export function readKinetics(fn: string, kinetics: Kinetics): (u: number) => number {
  const k1 = read(fn, 'k1', kinetics.k1, RATE_CONSTANT, POSITIVE);
  const k2 = readOr(0, fn, 'k2', kinetics.k2, RATE_CONSTANT, NOT_NEGATIVE);
  const m = kinetics.m === undefined ? 1 : readNumber(fn, 'm', kinetics.m, ORDER);
  const n = readNumber(fn, 'n', kinetics.n, ORDER);
  const faster = kinetics.heating === undefined ? () => 1 : readHeating(fn, kinetics.heating);
  return (u) => {
    const degree = degreeOf(u);
    return (k1 + k2 * degree ** m) * Math.exp((1 - n) * u) * faster(degree);
  };
}

/** How many times faster than at the start the mix reacts at a degree of cure. */
function readHeating(fn: string, heating: SelfHeating): (degree: number) => number {
  const path = ['heating'];
  const { start, rise, activationEnergy } = readObject(fn, 'heating', heating);
  const start_C = readTemperature(fn, 'start', start, ABSOLUTE, path);
  const rise_K = read(fn, 'rise', rise, TEMPERATURE_DIFFERENCE, NOT_NEGATIVE, path);
  const energy = read(fn, 'activationEnergy', activationEnergy, MOLAR_ENERGY, POSITIVE, path);
  return (degree) => arrheniusFactor(energy, start_C, start_C + rise_K * degree);
}
