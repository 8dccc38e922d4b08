import { echo } from '../core/echo.ts';
import type { Caution } from '../core/caution.ts';
import { SHARE } from '../core/dimensions.ts';
import type { Quantity } from '../core/quantity.ts';
import { write } from '../core/read.ts';

/** The caution for a part whose ratio a misread step moves by more than the tolerance; nothing where it does not. */
export function readingCaution(
  fn: string,
  name: string,
  graduation: Quantity,
  off: number,
  tolerance: number | undefined,
): Caution[] {
  if (tolerance === undefined || off <= tolerance * (1 + 1e-12)) return [];
  const percent = (share: number) => write(fn, share, SHARE, '%');
  const params = { name, graduation: echo(graduation), off: percent(off), tolerance: percent(tolerance) };
  return [{ code: 'reading-moves-ratio', severity: 'caution', params, source: 'common-practice' }];
}
