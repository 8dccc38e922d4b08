/** What lies under a coat, and which rules and methods are for it. */
import type { InputPath } from '../core/InputError.ts';
import { refuse } from '../core/read.ts';
import { readChoice } from '../core/readPlain.ts';

/** What lies under the film. */
export type FilmSubstrate = 'steel' | 'other metal' | 'concrete';

/** Every substrate. */
export const SUBSTRATES: readonly FilmSubstrate[] = ['steel', 'other metal', 'concrete'];

/** Which substrates each rule or method is for. */
export type Fits<N extends string> = Readonly<Record<N, readonly FilmSubstrate[]>>;

/** Reads the substrate, and refuses what stands at `path` where it is not for it: the refusal names what is. */
export function readFit<N extends string>(
  fn: string,
  path: InputPath,
  name: N,
  fits: Fits<N>,
  given: FilmSubstrate,
): void {
  const substrate = readChoice(fn, 'substrate', given, SUBSTRATES);
  if (fits[name].includes(substrate)) return;
  const fitting = (Object.keys(fits) as N[]).filter((other) => fits[other].includes(substrate));
  refuse(fn, 'conflict', path, `one for ${substrate}: ${fitting.join(', ')}`, name);
}
