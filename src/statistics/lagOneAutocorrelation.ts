import type { SameKind, Unit } from '../core/dimensionOf.ts';
import { TEMPERATURE } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { fields, refuse } from '../core/read.ts';
import { total } from '../units/total.ts';
import { meanOf, readKind, readReadings } from './readings.ts';

/** Input of {@link lagOneAutocorrelation}. */
export interface LagOneAutocorrelationInput<K extends Unit = Unit> {
  /** Three readings or more, in the order in which they were taken, each in its own unit. */
  readonly readings: readonly Quantity<SameKind<K>>[];
}

/** Readings that differ by less than this part of their size differ by round-off. */
const ALIKE = 1e-14;

/**
 * Whether readings drift in the order in which they were taken: how closely each follows the one before it.
 *
 * Near 1 where neighbours are alike, as from a gauge that warms up or a crew that lays thinner and thinner; near 0 where
 * each reading is on its own; near −1 where high and low ones take turns. A mean of readings that hang together is known
 * less well than their number says: `studentInterval` and `typeAUncertainty` take each as on its own.
 *
 * @formula
 * ```math
 * r_1 = \frac{\sum_{i=1}^{n-1} (x_i - \bar{x})(x_{i+1} - \bar{x})}{\sum_{i=1}^{n} (x_i - \bar{x})^2}
 * ```
 * @units any kind; answers a number from −1 to 1.
 * @validRange three readings or more, not all alike: two have −1/2 whatever they read.
 * @accuracy Within 1e-12 of the certified coefficients of NIST where the readings are exact in binary; 1e-8 for deviations
 * of a tenth about a million.
 * @source nist-strd
 * @param input - The readings in their order.
 * @returns The coefficient, not rounded.
 * @throws An `InputError` that names the field.
 * @example
 * ```ts
 * import * as statistics from 'coating-math/statistics';
 *
 * const inOrder = (...films: number[]) => ({
 *   readings: films.map((value) => ({ value, unit: 'mil' }) as const),
 * });
 * statistics.lagOneAutocorrelation(inOrder(14, 15, 15, 16, 17, 18, 18, 19)).toFixed(2); // => '0.60'
 * statistics.lagOneAutocorrelation(inOrder(14, 18, 15, 19, 16, 18, 15, 17)).toFixed(2); // => '-0.67'
 * ```
 */
export function lagOneAutocorrelation<K extends Unit>(input: LagOneAutocorrelationInput<K>): number {
  const fn = 'lagOneAutocorrelation';
  const { readings } = fields(fn, input);
  const { dimension, unit } = readKind(fn, readings);
  // In kelvin round-off stays small beside the reading, also about 0 °C.
  const values = readReadings(fn, readings, 3, dimension, dimension.kind === TEMPERATURE.kind ? 'K' : unit);
  const mean = meanOf(values);
  // Halves, and then parts of the widest: no difference and no square passes the largest double.
  const off = values.map((value) => value / 2 - mean / 2);
  const widest = greatest(off);
  if (widest <= (ALIKE * greatest(values)) / 2) {
    refuse(fn, 'out-of-range', ['readings'], 'that are not all alike', 'readings all alike');
  }
  const parts = off.map((one) => one / widest);
  const products = parts.slice(1).map((part, i) => part * (parts[i] as number));
  return total(products) / total(parts.map((part) => part * part)) + 0;
}

function greatest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}
