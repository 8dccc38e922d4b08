/**
 * What to buy.
 * @module order
 */
export { packsToBuy } from './packsToBuy.ts';
export type { PacksToBuy, PacksToBuyInput } from './packsToBuy.ts';
