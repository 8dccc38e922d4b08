/**
 * The values an input may take, in base units, both ends included, and the same in words for the message.
 *
 * An end that must not be reached is written as a number just beside it, and a closed end leaves room for the
 * round-off of a reading that lies exactly on it. Plain numbers only, so that a bundler can drop what is not used.
 */
export interface Limits {
  /** Least value allowed. */
  readonly least: number;
  /** Greatest value allowed. */
  readonly most: number;
  /** Completes "a length …". Empty where every value is allowed. */
  readonly words: string;
}

/** Any finite number. */
export const ANY: Limits = { least: -1.7976931348623157e308, most: 1.7976931348623157e308, words: '' };
/** More than nothing. */
export const POSITIVE: Limits = { least: 5e-324, most: 1.7976931348623157e308, words: ' above 0' };
/** Nothing or more. */
export const NOT_NEGATIVE: Limits = { least: 0, most: 1.7976931348623157e308, words: ' of 0 or more' };
/** A part that leaves something of the whole. */
export const PART: Limits = { least: 0, most: 0.999999999999, words: ' from 0 % to below 100 %' };
/** A part that is there, up to the whole. */
export const PART_OR_WHOLE: Limits = {
  least: 5e-324,
  most: 1.000000000001,
  words: ' above 0 % and up to 100 %',
};
/** A temperature that exists. */
export const ABSOLUTE: Limits = {
  least: -273.1500000003,
  most: 1.7976931348623157e308,
  words: ' at or above absolute zero',
};
