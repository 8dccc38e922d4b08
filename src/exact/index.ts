/**
 * Conversions to as many digits as asked for.
 * @module exact
 */
export { convertExact } from './convertExact.ts';
export type { ConvertExactInput } from './convertExact.ts';
