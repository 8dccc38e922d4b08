/**
 * The values an input may take, in base units, and the same in words for the message.
 *
 * Neither end is allowed itself, which also refuses infinity. An end that may be reached is written as a number
 * beyond it, far enough for the round-off of a reading that lies exactly on it. Plain numbers only, so that a bundler
 * can drop what is not used.
 */
export interface Limits {
  /** Every value allowed is more. */
  readonly above: number;
  /** Every value allowed is less. */
  readonly below: number;
  /** Completes "a length …". Empty where every value is allowed. */
  readonly words: string;
}

/** Any finite number. */
export const ANY: Limits = { above: -Infinity, below: Infinity, words: '' };
/** More than nothing. */
export const POSITIVE: Limits = { above: 0, below: Infinity, words: ' above 0' };
/** Nothing or more. */
export const NOT_NEGATIVE: Limits = { above: -5e-324, below: Infinity, words: ' of 0 or more' };
/** A part that leaves something of the whole. */
export const PART: Limits = { above: -5e-324, below: 0.999999999999, words: ' from 0 % to below 100 %' };
/** A part that is there, up to the whole. */
export const PART_OR_WHOLE: Limits = {
  above: 0,
  below: 1.000000000001,
  words: ' above 0 % and up to 100 %',
};
/** Just below absolute zero in °C: no temperature is lower. */
export const BELOW_ABSOLUTE_ZERO = -273.1500000003;
/** A temperature that exists. */
export const ABSOLUTE: Limits = {
  above: BELOW_ABSOLUTE_ZERO,
  below: Infinity,
  words: ' at or above absolute zero',
};
