/**
 * Everything but the schema, the words and the exact route, re-exported by name.
 * @module index
 */
export * from './climate/index.ts';
export * from './core/index.ts';
export * from './film/index.ts';
export * from './moisture/index.ts';
export * from './units/index.ts';
