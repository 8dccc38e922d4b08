/**
 * One quantity in another unit, without drift.
 * @module units
 */
export { convert } from './convert.ts';
export type { ConvertInput, SameKind } from './convert.ts';
