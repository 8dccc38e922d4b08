/**
 * Schemas of what crosses the wire, for zod and as JSON Schema. The only module that loads zod.
 * @module schema
 */
export { floorDocument } from './floorDocument.ts';
