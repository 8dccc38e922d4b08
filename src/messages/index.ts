/**
 * Words for cautions.
 * @module messages
 */
export { cautionText } from './cautionText.ts';
