import { counted, countedSteps } from './decimal.ts';
import type { Quantity } from './quantity.ts';

/** Which way a figure is rounded for the field: buy up, promise down, read plain. */
export type RoundingDirection = 'up' | 'down' | 'nearest';

/** An exact figure and the one a person can measure. The rounded one is for reading, never for the next step. */
export interface FieldValue<U extends string = string> {
  /** As computed. */
  readonly exact: Quantity<U>;
  /** Rounded to whole steps. */
  readonly field: Quantity<U>;
  /** Smallest step that can be measured, in the same unit. */
  readonly step: Quantity<U>;
  /** Which way it was rounded. */
  readonly direction: RoundingDirection;
}

/** Rounds a figure to whole steps, in decimals, so that a figure that is a whole number of steps stays one. */
export function toField<U extends string>(
  exact: Quantity<U>,
  step: number,
  direction: RoundingDirection,
): FieldValue<U> {
  const steps = countedSteps(exact.value, step);
  const whole = direction === 'up' ? steps.ceil() : direction === 'down' ? steps.floor() : steps.round();
  const { unit } = exact;
  const field = whole.times(counted(step)).toNumber() + 0;
  return { exact, field: { value: field, unit }, step: { value: step, unit }, direction };
}
