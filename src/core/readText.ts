import type { InputPath } from './InputError.ts';
import { refuse } from './read.ts';

/** Reads a name or another text that must say something. */
export function readText(fn: string, key: string, text: unknown, path: InputPath = []): string {
  if (typeof text === 'string' && text.trim() !== '') return text;
  const code = text === undefined ? 'missing' : typeof text === 'string' ? 'out-of-range' : 'wrong-type';
  return refuse(fn, code, [...path, key], 'a text that is not empty', text);
}
