/**
 * Everything but the schema, the words and the exact route, re-exported by name.
 * @module index
 */
export * from './aggregate/index.ts';
export * from './area/index.ts';
export * from './batch/index.ts';
export * from './climate/index.ts';
export * from './core/index.ts';
export * from './cure/index.ts';
export * from './film/index.ts';
export * from './inspect/index.ts';
export * from './mix/index.ts';
export * from './moisture/index.ts';
export * from './order/index.ts';
export * from './plan/index.ts';
export * from './statistics/index.ts';
export * from './units/index.ts';
